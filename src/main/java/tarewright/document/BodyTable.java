package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import tarewright.procedure.resolve.Referent;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.Part;

/** The author's tables. One with a blank in it, or with nothing in some cell, is to be filled in. */
final class BodyTable {
    private final Draft draft;
    private final RunningText text;

    BodyTable(Draft draft, RunningText text) {
        this.draft = draft;
        this.text = text;
    }

    Piece.Table of(Part.Table table) {
        List<List<Text>> head = table.head().stream().map(c -> text.of(c.inlines(), "")).toList();
        List<List<List<Text>>> rows = new ArrayList<>();
        boolean fill = false;
        for (List<Part.Cell> row : table.rows()) {
            List<List<Text>> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                fill |= isOpen(row.get(i));
                cells.add(text.of(row.get(i).inlines(), i < head.size() ? Plain.of(head.get(i)) : ""));
            }
            rows.add(cells);
        }
        List<Boolean> right = table.alignments().stream().map(a -> a == Part.Alignment.RIGHT).toList();
        return new Piece.Table(List.of(), head, rows, right, false, fill ? Piece.Use.FILL : Piece.Use.READ);
    }

    private boolean isOpen(Part.Cell cell) {
        List<Inline> all = new ArrayList<>();
        cell.inlines().forEach(i -> Inline.walk(i, all::add));
        return all.isEmpty() || all.stream()
                .anyMatch(i -> i instanceof Inline.Reference r && draft.procedure().referent(r) instanceof Referent.Blank);
    }
}
