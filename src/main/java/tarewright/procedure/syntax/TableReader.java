package tarewright.procedure.syntax;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.node.Node;
import tarewright.text.Span;

/** Turns a table as the parser left it into a {@link Part.Table}. */
final class TableReader {
    private final Places places;
    private final StrayBraces braces;
    private final Findings findings;

    TableReader(Places places, StrayBraces braces, Findings findings) {
        this.places = places;
        this.braces = braces;
        this.findings = findings;
    }

    Part.Table read(TableBlock table) {
        List<Part.Cell> head = new ArrayList<>();
        List<Part.Alignment> alignments = new ArrayList<>();
        List<List<Part.Cell>> rows = new ArrayList<>();
        for (Node section = table.getFirstChild(); section != null; section = section.getNext()) {
            for (Node row = section.getFirstChild(); row != null; row = row.getNext()) {
                List<Part.Cell> cells = cells(row);
                if (section instanceof TableHead) {
                    head.addAll(cells);
                    alignments.addAll(alignments(row));
                } else if (section instanceof TableBody) {
                    rows.add(cells);
                }
            }
        }
        return new Part.Table(head, rows, alignments, places.of(table));
    }

    private List<Part.Cell> cells(Node row) {
        Span rowSpan = places.of(row);
        List<Part.Cell> cells = new ArrayList<>();
        int end = rowSpan.start();
        for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
            if (cell.getSourceSpans().isEmpty()) {
                cells.add(new Part.Cell(List.of(), rowSpan.source().span(rowSpan.end(), rowSpan.end())));
            } else {
                Span span = places.of(cell);
                InlinePlaces within = new CellPlaces(places, cell.getSourceSpans().get(0));
                cells.add(new Part.Cell(new InlineReader(within, rowSpan.source(), span.start(), braces,
                        findings).read(cell), span));
                end = span.end();
            }
        }
        tellLeftOver(rowSpan, end, cells.size());
        return cells;
    }

    private void tellLeftOver(Span row, int end, int columns) {
        Fields.Piece rest = new Fields.Piece(row.text(), row).part(end - row.start(), row.text().length()).trimmed();
        if (rest.text().startsWith("|")) {
            Fields.Piece beyond = rest.part(1, rest.text().length()).trimmed();
            if (!beyond.text().isEmpty()) {
                findings.add(new SyntaxFinding.CellLeftOver(columns, beyond.span()));
            }
        }
    }

    private static List<Part.Alignment> alignments(Node row) {
        List<Part.Alignment> alignments = new ArrayList<>();
        for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
            alignments.add(alignment(((TableCell) cell).getAlignment()));
        }
        return alignments;
    }

    private static Part.Alignment alignment(TableCell.Alignment alignment) {
        if (alignment == null) {
            return Part.Alignment.NONE;
        }
        return switch (alignment) {
            case LEFT -> Part.Alignment.LEFT;
            case CENTER -> Part.Alignment.CENTRE;
            case RIGHT -> Part.Alignment.RIGHT;
        };
    }
}
