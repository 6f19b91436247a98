package tarewright.procedure.expression;

/** What the characters of a formula are. */
final class Letters {
    private static final String HYPHENS = "-\u2010\u2011";
    private static final String CHARGE_SIGNS = "\u207A\u207B";

    private Letters() {
    }

    static boolean isBlank(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** A part of a word wherever it stands: letters, digits, raised and lowered digits, marks, apostrophes. */
    static boolean isWord(char c) {
        return Character.isLetterOrDigit(c) || Character.isSurrogate(c) || c == '\'' || c == '\u2019' || c == '_'
                || CHARGE_SIGNS.indexOf(c) >= 0
                || switch (Character.getType(c)) {
                    case Character.OTHER_NUMBER, Character.NON_SPACING_MARK, Character.COMBINING_SPACING_MARK -> true;
                    default -> false;
                };
    }

    /** A sign that joins two parts of one word. */
    static boolean isHyphen(char c) {
        return HYPHENS.indexOf(c) >= 0;
    }

    static int skipBlanks(String text, int from) {
        int at = from;
        while (at < text.length() && isBlank(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /** Whether a quantity ends in a name: {@code mol}, {@code °C}, {@code %}; then a further letter would be part of it. */
    static boolean insideWord(String text, int at) {
        return at > 0 && at < text.length() && isWord(text.charAt(at - 1)) && isWord(text.charAt(at));
    }

    /** At most so many characters, with an ellipsis where some are left out. */
    static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 59) + "…";
    }
}
