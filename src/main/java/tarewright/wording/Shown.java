package tarewright.wording;

import java.util.ArrayList;
import java.util.List;
import tarewright.text.Columns;

/** A line of the author's text as a terminal shows it: tabs as spaces, nothing that a terminal would obey. */
final class Shown {
    private static final int REPLACEMENT = 0xFFFD;
    private static final String ELLIPSIS = "…";

    private Shown() {
    }

    /** Control characters, and signs that turn the direction of writing, replaced by the sign for what cannot be shown. */
    static String clean(String text) {
        StringBuilder clean = new StringBuilder();
        text.codePoints().forEach(c -> clean.appendCodePoint(isObeyed(c) ? REPLACEMENT : c));
        return clean.toString();
    }

    private static boolean isObeyed(int c) {
        return Character.getType(c) == Character.CONTROL || Character.getType(c) == Character.SURROGATE
                || c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069 || c == 0x2028 || c == 0x2029;
    }

    /**
     * A line, cut to a width around a stretch of it, with carets under that stretch.
     *
     * @param from start of the stretch, an offset in {@code line}
     * @param to its end; where it equals {@code from}, one caret stands there
     * @param widest columns that the line may take
     * @return the line and, if wanted, the line of carets
     */
    static List<String> pointed(String line, int from, int to, int widest) {
        List<Cell> cells = cells(line);
        int first = index(cells, from);
        int last = Math.max(first + 1, index(cells, to));
        int start = 0;
        while (start < first && cells.get(start).text.isBlank()) {
            start++;
        }
        int end = cells.size();
        int width = width(cells, start, end);
        boolean cutLeft = false;
        // Half of what is left over stands before the stretch; what does not fit goes, farthest away first.
        while (width > widest && start < first && width(cells, start, first) > widest / 2) {
            width -= cells.get(start++).width;
            cutLeft = true;
        }
        boolean cutRight = false;
        while (width > widest && end > first + 1) {
            width -= cells.get(--end).width;
            cutRight = true;
        }
        String shown = (cutLeft ? ELLIPSIS : "") + text(cells, start, end).stripTrailing() + (cutRight ? ELLIPSIS : "");
        int before = (cutLeft ? 1 : 0) + width(cells, start, first);
        int under = Math.max(1, width(cells, first, Math.min(last, end)));
        return List.of(shown, " ".repeat(before) + "^".repeat(under));
    }

    /** A character with the marks on it. @param from its offset in the line */
    private record Cell(String text, int from, int width) {
    }

    private static List<Cell> cells(String line) {
        List<Cell> cells = new ArrayList<>();
        int column = 0;
        for (int i = 0; i < line.length(); ) {
            int next = i + Character.charCount(line.codePointAt(i));
            String character = line.substring(i, next);
            int width = Columns.width(character, column);
            String text = character.equals("\t") ? " ".repeat(width) : clean(character);
            boolean unseen = width == 0 && !text.equals(character);
            cells.add(new Cell(text, i, unseen ? 1 : width));
            column += width;
            i = next;
        }
        return cells;
    }

    private static int index(List<Cell> cells, int offset) {
        int index = 0;
        while (index < cells.size() && cells.get(index).from < offset) {
            index++;
        }
        return index;
    }

    private static int width(List<Cell> cells, int from, int to) {
        return cells.subList(Math.min(from, to), Math.min(to, cells.size())).stream().mapToInt(Cell::width).sum();
    }

    private static String text(List<Cell> cells, int from, int to) {
        StringBuilder text = new StringBuilder();
        cells.subList(from, to).forEach(cell -> text.append(cell.text));
        return text.toString();
    }
}
