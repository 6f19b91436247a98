package tarewright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import tarewright.document.Piece;
import tarewright.document.Text;

/** A table as a template sees it: each cell with its text and how it stands, and how narrow its column may get. */
final class TableFacts {
    private static final int SHORT = 7;
    private static final double LETTER_IN_EM = 0.52;
    /** What heads a row is bold, and of a formula mostly capital letters. */
    private static final double BOLD_LETTER_IN_EM = 0.63;

    /** In letters: a wish for more is none, so that the columns together never grow wider than the page. */
    private static final int WIDEST_COLUMN = 18;
    private static final int WIDEST_TABLE = 60;

    /**
     * A table of three columns that is read, such as that of substances: its names may wrap, the columns behind them
     * need not.
     */
    private static final int NARROWEST = 7;
    private static final int PADDING = 2;
    private static final int NAMES_NEED = 26;
    private static final int WIDEST_LEAF = 66;

    private final Piece.Table table;
    private final Function<Object, Object> asValue;
    private final List<Integer> letters = new ArrayList<>();
    private final List<Optional<Aligned>> aligned = new ArrayList<>();

    TableFacts(Piece.Table table, Function<Object, Object> asValue) {
        this.table = table;
        this.asValue = asValue;
        for (int column = 0; column < table.head().size(); column++) {
            letters.add(longest(column));
            aligned.add(isRight(column) ? Aligned.of(column(column)) : Optional.empty());
        }
        if (table.use() == Piece.Use.READ && table.rowHeads() && table.head().size() == 3
                && whole(1) + whole(2) + NAMES_NEED <= WIDEST_LEAF) {
            letters.set(1, whole(1));
            letters.set(2, whole(2));
        }
    }

    Map<String, Object> facts() {
        return Map.of("length", table.rows().size() <= SHORT ? "short" : "long", "head", cells(table.head(), true),
                "rows", table.rows().stream().map(row -> cells(row, false)).toList());
    }

    private List<Object> cells(List<List<Text>> row, boolean head) {
        List<Object> cells = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            List<Text> cell = row.get(i);
            List<Text> text = head || i >= aligned.size() ? cell : aligned.get(i).map(a -> a.cell(cell)).orElse(cell);
            cells.add(Map.of("text", asValue.apply(text), "right", isRight(i), "heads", table.rowHeads() && i == 0, "none", cell.isEmpty(),
                    "atLeast", head ? atLeast(i) : "", "share", head && table.use() == Piece.Use.FILL ? share(i) : ""));
        }
        return cells;
    }

    private boolean isRight(int column) {
        return column < table.right().size() && table.right().get(column);
    }

    private List<List<Text>> column(int column) {
        return table.rows().stream().filter(row -> column < row.size()).map(row -> row.get(column)).toList();
    }

    /**
     * A width in em, or nothing. The layout engine knows how wide a word is, but takes a formula for no wider than its widest
     * part.
     */
    private String atLeast(int column) {
        boolean fits = letters.stream().mapToInt(Integer::intValue).sum() <= WIDEST_TABLE;
        double letter = table.rowHeads() && column == 0 ? BOLD_LETTER_IN_EM : LETTER_IN_EM;
        return fits && letters.get(column) > 0 ? String.format(Locale.ROOT, "%.1f", letters.get(column) * letter) : "";
    }

    /**
     * What a column takes of a table to be filled in, in per cent: by its head and its row heads, whatever is filled in.
     */
    private String share(int column) {
        double all = 0;
        for (int i = 0; i < table.head().size(); i++) {
            all += headLetters(i);
        }
        return String.format(Locale.ROOT, "%.1f", 100 * headLetters(column) / all);
    }

    private int headLetters(int column) {
        int head = PlainText.bare(table.head().get(column)).length();
        int rows = column == 0 && table.rowHeads() ? whole(0) : 0;
        return Math.max(NARROWEST, Math.min(Math.max(head, rows), WIDEST_COLUMN + NARROWEST)) + PADDING;
    }

    /** The longest cell of a column, uncut. */
    private int whole(int column) {
        return table.rows().stream().filter(row -> column < row.size()).mapToInt(row -> PlainText.bare(row.get(column)).length())
                .max().orElse(0);
    }

    private int longest(int column) {
        int longest = 0;
        for (List<List<Text>> row : table.rows()) {
            for (Object part : column < row.size() ? Glue.of(row.get(column)) : List.of()) {
                if (part instanceof Glue.Whole whole) {
                    longest = Math.max(longest, PlainText.bare(whole.inside()).length());
                } else if (part instanceof Text.Chemical chemical) {
                    longest = Math.max(longest, PlainText.bare(List.of(chemical)).length());
                }
            }
        }
        return Math.min(longest, WIDEST_COLUMN);
    }
}
