package tarewright.text;

/**
 * How wide text stands on a screen of fixed-width letters: combining marks take no room, East Asian wide letters and
 * pictographs two columns, a tab goes on to the next multiple of 4.
 */
public final class Columns {
    /** The distance of tab stops. */
    public static final int TAB = 4;

    private Columns() {
    }

    /** Columns that {@code text} takes when it starts behind {@code before} others. */
    public static int width(String text, int before) {
        int column = before;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            column += c == '\t' ? TAB - column % TAB : width(c);
        }
        return column - before;
    }

    private static int width(int c) {
        switch (Character.getType(c)) {
            case Character.NON_SPACING_MARK:
            case Character.ENCLOSING_MARK:
            case Character.FORMAT:
            case Character.CONTROL:
                return 0;
            default:
                boolean wide = c >= 0x1100 && c <= 0x115F || c >= 0x2E80 && c <= 0xA4CF || c >= 0xAC00 && c <= 0xD7A3
                        || c >= 0xF900 && c <= 0xFAFF || c >= 0xFE30 && c <= 0xFE6F || c >= 0xFF00 && c <= 0xFF60
                        || c >= 0x1F300 && c <= 0x1FAFF;
                return wide ? 2 : 1;
        }
    }
}
