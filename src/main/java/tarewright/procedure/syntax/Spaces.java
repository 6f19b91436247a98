package tarewright.procedure.syntax;

/** White space as the notation sees it: Java's, and the spaces that do not break a line. */
final class Spaces {
    private Spaces() {
    }

    static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    /** The text trimmed, with each run of white space made one space. */
    static String single(String text) {
        StringBuilder single = new StringBuilder(text.length());
        boolean pending = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (isSpace(c)) {
                pending = single.length() > 0;
            } else {
                if (pending) {
                    single.append(' ');
                }
                single.append(c);
                pending = false;
            }
        }
        return single.toString();
    }
}
