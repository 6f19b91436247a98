package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
            fill |= row.stream().anyMatch(this::isOpen);
            rows.add(row(row, head));
        }
        List<Boolean> right = table.alignments().stream().map(a -> a == Part.Alignment.RIGHT).toList();
        boolean rowHeads = head.size() > 1 && !rows.isEmpty() && table.rows().stream().noneMatch(r -> isOpen(r.get(0)));
        return new Piece.Table(List.of(), head, rows, right, rowHeads, fill ? Piece.Use.FILL : Piece.Use.READ);
    }

    /** A reading that is taken several times and stands once spreads over the empty cells behind it. */
    private List<List<Text>> row(List<Part.Cell> row, List<List<Text>> head) {
        List<List<Text>> cells = new ArrayList<>();
        while (cells.size() < row.size()) {
            int at = cells.size();
            Part.Cell cell = row.get(at);
            String unit = unitHead(at, head, cells);
            int free = 1;
            while (at + free < row.size() && row.get(at + free).inlines().isEmpty()) {
                free++;
            }
            Optional<Referent.Blank> repeated = repeated(cell).filter(b -> text.standsOnce(b));
            if (repeated.isPresent() && repeated.get().expected().size() <= free) {
                cells.addAll(text.each(repeated.get(), unit));
            } else {
                cells.add(text.of(cell.inlines(), unit));
            }
        }
        return cells;
    }

    /** The head that names the unit: of the column, else of the row. */
    private static String unitHead(int column, List<List<Text>> head, List<List<Text>> cells) {
        String above = column < head.size() ? Plain.of(head.get(column)) : "";
        return HeadUnit.of(above).isPresent() || cells.isEmpty() ? above : Plain.of(cells.get(0));
    }

    private Optional<Referent.Blank> repeated(Part.Cell cell) {
        return cell.inlines().size() == 1 && cell.inlines().get(0) instanceof Inline.Reference r
                && draft.procedure().referent(r) instanceof Referent.Blank blank && blank.expected().size() > 1
                ? Optional.of(blank) : Optional.empty();
    }

    private boolean isOpen(Part.Cell cell) {
        List<Inline> all = new ArrayList<>();
        cell.inlines().forEach(i -> Inline.walk(i, all::add));
        return all.isEmpty() || all.stream()
                .anyMatch(i -> i instanceof Inline.Reference r && draft.procedure().referent(r) instanceof Referent.Blank);
    }
}
