package tarewright.document;

import java.util.ArrayList;
import java.util.List;

/** Builds a table to be read, its heads from keys. */
final class Grid {
    private final Draft draft;
    private final List<Text> caption;
    private final List<List<Text>> heads = new ArrayList<>();
    private final List<Boolean> right = new ArrayList<>();
    private final List<List<List<Text>>> rows = new ArrayList<>();

    Grid(Draft draft, String caption) {
        this.draft = draft;
        this.caption = caption.isEmpty() ? List.of() : Text.words(draft.say(caption));
    }

    Grid words(String... keys) {
        return columns(false, keys);
    }

    /** Columns set flush right. */
    Grid numbers(String... keys) {
        return columns(true, keys);
    }

    private Grid columns(boolean flush, String... keys) {
        for (String key : keys) {
            heads.add(Text.words(draft.say(key)));
            right.add(flush);
        }
        return this;
    }

    @SafeVarargs
    final void row(List<Text>... cells) {
        if (cells.length != heads.size()) {
            throw new IllegalArgumentException(cells.length + " cells under " + heads.size() + " heads");
        }
        rows.add(List.of(cells));
    }

    /** A column set flush right under a head that is no key. */
    Grid number(String head) {
        return number(Text.words(head));
    }

    Grid number(List<Text> head) {
        heads.add(head);
        right.add(true);
        return this;
    }

    /** A row of a head and a cell for each column behind it. */
    void row(List<Text> head, List<List<Text>> cells) {
        List<List<Text>> all = new ArrayList<>(List.of(head));
        all.addAll(cells);
        if (all.size() != heads.size()) {
            throw new IllegalArgumentException(all.size() + " cells under " + heads.size() + " heads");
        }
        rows.add(List.copyOf(all));
    }

    /** Nothing if it has no row. */
    List<Piece> pieces() {
        return rows.isEmpty() ? List.of() : List.of(new Piece.Table(caption, heads, rows, right, true, Piece.Use.READ));
    }

    /** The table under a heading; nothing if it has no row. */
    List<Piece> under(int level, String heading) {
        if (rows.isEmpty()) {
            return List.of();
        }
        List<Piece> pieces = new ArrayList<>(List.of(draft.heading(level, heading)));
        pieces.addAll(pieces());
        return pieces;
    }
}
