package tarewright.procedure.syntax;

import tarewright.text.Span;

/** Finds the table that has too many cells, in a text of which the parser said only that one has. */
final class LargeTable {
    private LargeTable() {
    }

    /** The line under the head of the table with the most cells; the first line of the text if none looks like it. */
    static Span in(Places places, String text) {
        String[] lines = text.split("\r\n|\r|\n", -1);
        int widest = 0;
        long most = 0;
        int below = 0;
        for (int i = lines.length - 1; i >= 0; i--) {
            if (isUnderHead(lines[i])) {
                long columns = lines[i].chars().filter(c -> c == '|').count() + 1;
                if (columns * (below + 1) > most) {
                    most = columns * (below + 1);
                    widest = i;
                }
            }
            below = lines[i].isBlank() ? 0 : below + 1;
        }
        return places.line(widest);
    }

    private static boolean isUnderHead(String line) {
        return line.indexOf('|') >= 0 && line.indexOf('-') >= 0 && line.chars().allMatch(c -> "|:-> \t".indexOf(c) >= 0);
    }
}
