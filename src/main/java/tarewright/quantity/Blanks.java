package tarewright.quantity;

/** Blanks within a quantity: white space, and the spaces at which a line does not break or that are narrower. */
final class Blanks {
    /** One such space, as a character class of a regular expression. */
    static final String ONE = "[\\s\\u00A0\\u202F\\u2009\\u2007]";

    private Blanks() {
    }

    static boolean is(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    /** Where the first character at or after {@code from} stands that is no blank; the length if there is none. */
    static int skip(String text, int from) {
        int at = from;
        while (at < text.length() && is(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /** Without the blanks at both ends. */
    static String strip(String text) {
        int from = skip(text, 0);
        int to = text.length();
        while (to > from && is(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }
}
