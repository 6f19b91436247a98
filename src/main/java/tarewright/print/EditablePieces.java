package tarewright.print;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xwpf.usermodel.Borders;
import org.apache.poi.xwpf.usermodel.BreakType;
import org.apache.poi.xwpf.usermodel.ParagraphAlignment;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFNumbering;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableCell;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTNum;
import tarewright.document.Piece;
import tarewright.document.Sheet;
import tarewright.document.Text;

/** The pieces of a handout as paragraphs and tables of an editable copy. */
final class EditablePieces {
    private static final int INDENT = 720;
    private static final int RULE_SPACE = 300;
    private static final double PICTOGRAM = 13;

    private final XWPFDocument document;
    private final Sheet sheet;
    private int indent;

    EditablePieces(XWPFDocument document, Sheet sheet) {
        this.document = document;
        this.sheet = sheet;
    }

    void add(List<Piece> pieces) {
        pieces.forEach(this::add);
    }

    private void add(Piece piece) {
        if (piece instanceof Piece.Heading p) {
            XWPFParagraph heading = document.createParagraph();
            heading.setStyle("Heading" + Math.max(1, Math.min(3, p.level() - 1)));
            new EditableText(heading).add(p.text());
        } else if (piece instanceof Piece.Paragraph p) {
            new EditableText(paragraph()).add(p.text());
        } else if (piece instanceof Piece.Bullets p) {
            p.items().forEach(item -> item(item, EditableFrame.BULLETS));
        } else if (piece instanceof Piece.Steps p) {
            BigInteger numbers = counting(p.first());
            p.steps().forEach(step -> item(step, numbers));
        } else if (piece instanceof Piece.Question p) {
            question(p);
        } else if (piece instanceof Piece.RuledLines p) {
            for (int i = 0; i < p.lines(); i++) {
                rule();
            }
        } else if (piece instanceof Piece.Choices p) {
            for (int i = 0; i < p.options().size(); i++) {
                boolean right = p.right().isPresent() && p.right().get() == i;
                new EditableText(paragraph()).add(Text.words(right ? "☒ " : "☐ ")).add(p.options().get(i));
            }
        } else if (piece instanceof Piece.Table p) {
            table(p);
        } else if (piece instanceof Piece.Caution p) {
            caution(p);
        } else if (piece instanceof Piece.Working p) {
            p.lines().forEach(line -> new EditableText(paragraph()).add(line.left()).add(Text.words(" ")).add(line.right())
                    .add(Text.words(line.remark().isEmpty() ? "" : " (" + line.remark() + ")")));
        } else if (piece instanceof Piece.Display p) {
            XWPFParagraph display = paragraph();
            display.setAlignment(ParagraphAlignment.CENTER);
            new EditableText(display).add(p.text());
        } else if (piece instanceof Piece.Note p) {
            if (!p.label().isEmpty()) {
                new EditableText(paragraph()).bold(Text.words(p.label()));
            }
            add(p.inside());
        } else if (piece instanceof Piece.Hazard p) {
            hazard(p);
        } else if (piece instanceof Piece.Signs p) {
            for (Piece.Sign sign : p.signs()) {
                XWPFParagraph line = paragraph();
                EditablePicture.packed(line, sign.code(), general(sign.code()), sign.words(), PICTOGRAM * 0.6);
                new EditableText(line).add(Text.words("  " + sign.words()));
            }
        } else if (piece instanceof Piece.Drawing p) {
            EditablePicture.put(paragraph(), p.svg(), p.spoken(), p.widthMillimetres(), p.heightMillimetres());
        } else if (piece instanceof Piece.Photograph p) {
            EditablePicture.photograph(paragraph(), p);
        } else if (piece instanceof Piece.Graph p) {
            graph(p);
        } else if (piece instanceof Piece.Together p) {
            add(p.inside());
        } else if (piece instanceof Piece.FormLine p) {
            List<Text> line = new ArrayList<>();
            p.fields().forEach(f -> {
                line.add(new Text.Words(f.label() + " "));
                line.add(new Text.Blank(5 * Math.max(1, f.share()), f.label()));
                line.add(new Text.Words("  "));
            });
            new EditableText(paragraph()).add(line);
        } else if (piece instanceof Piece.NewPage) {
            document.createParagraph().createRun().addBreak(BreakType.PAGE);
        } else if (piece instanceof Piece.NextSheet) {
            document.createParagraph().createRun().addBreak(BreakType.PAGE);
            EditableFrame.top(document, sheet);
        } else {
            throw new IllegalArgumentException("not in a handout: " + piece.getClass());
        }
    }

    private XWPFParagraph paragraph() {
        XWPFParagraph paragraph = document.createParagraph();
        if (indent > 0) {
            paragraph.setIndentationLeft(indent);
        }
        return paragraph;
    }

    /** The library needs a place for properties to be there first. */
    private static void keepWithNext(XWPFParagraph paragraph) {
        if (!paragraph.getCTP().isSetPPr()) {
            paragraph.getCTP().addNewPPr();
        }
        paragraph.setKeepNext(true);
    }

    /** A count of its own for each list of steps, so that a step more or less moves the numbers after it. */
    private BigInteger counting(int first) {
        XWPFNumbering numbering = document.getNumbering();
        BigInteger id = numbering.addNum(EditableFrame.STEPS);
        CTNum count = numbering.getNum(id).getCTNum();
        count.addNewLvlOverride().setIlvl(BigInteger.ZERO);
        count.getLvlOverrideArray(0).addNewStartOverride().setVal(BigInteger.valueOf(first));
        return id;
    }

    /** Cautions stand before the words of their step; what follows the words stands below them. */
    private void item(List<Piece> pieces, BigInteger numbers) {
        int before = indent;
        indent += INDENT;
        boolean open = true;
        for (Piece piece : pieces) {
            if (open && !(piece instanceof Piece.Caution)) {
                XWPFParagraph words = document.createParagraph();
                words.setNumID(numbers);
                open = false;
                if (piece instanceof Piece.Paragraph p) {
                    new EditableText(words).add(p.text());
                    continue;
                }
            }
            add(piece);
        }
        indent = before;
    }

    private void question(Piece.Question question) {
        List<Text> first = new ArrayList<>(List.of(new Text.Strong(Text.words(question.number() + "  "))));
        List<Piece> asked = new ArrayList<>(question.asked());
        if (!asked.isEmpty() && asked.get(0) instanceof Piece.Paragraph p) {
            first.addAll(p.text());
            asked.remove(0);
        }
        if (!question.marks().isEmpty()) {
            first.add(new Text.Words(" [" + question.marks() + "]"));
        }
        XWPFParagraph line = paragraph();
        keepWithNext(line);
        new EditableText(line).add(first);
        add(asked);
        add(question.space());
        question.parts().forEach(this::question);
    }

    private void rule() {
        XWPFParagraph rule = paragraph();
        rule.setBorderBottom(Borders.SINGLE);
        rule.setBorderBetween(Borders.SINGLE);
        rule.setSpacingBefore(RULE_SPACE);
        rule.setSpacingAfter(0);
    }

    private void table(Piece.Table p) {
        if (!p.caption().isEmpty()) {
            XWPFParagraph caption = paragraph();
            keepWithNext(caption);
            new EditableText(caption).bold(p.caption());
        }
        List<List<List<Text>>> rows = new ArrayList<>();
        if (!p.head().isEmpty()) {
            rows.add(p.head());
        }
        rows.addAll(p.rows());
        int columns = rows.stream().mapToInt(List::size).max().orElse(0);
        if (columns == 0) {
            return;
        }
        XWPFTable table = document.createTable(rows.size(), columns);
        table.setWidth("100%");
        for (int row = 0; row < rows.size(); row++) {
            boolean head = row == 0 && !p.head().isEmpty();
            table.getRow(row).setRepeatHeader(head);
            table.getRow(row).setCantSplitRow(true);
            for (int column = 0; column < rows.get(row).size(); column++) {
                XWPFTableCell cell = table.getRow(row).getCell(column);
                EditableText text = new EditableText(cell.getParagraphArray(0));
                boolean bold = head || p.rowHeads() && column == 0;
                if (bold) {
                    text.bold(rows.get(row).get(column));
                } else {
                    text.add(rows.get(row).get(column));
                }
                if (column < p.right().size() && p.right().get(column)) {
                    cell.getParagraphArray(0).setAlignment(ParagraphAlignment.RIGHT);
                }
            }
        }
        document.createParagraph();
    }

    private void caution(Piece.Caution p) {
        XWPFParagraph box = paragraph();
        keepWithNext(box);
        box.setBorderLeft(Borders.THICK);
        box.setBorderTop(Borders.THICK);
        box.setBorderBottom(Borders.THICK);
        box.setBorderRight(Borders.THICK);
        EditableText text = new EditableText(box).bold(Text.words((p.level() < 3 ? "⚠ " : "") + p.word() + ": ")).bold(p.hazard());
        if (!p.consequence().isEmpty()) {
            text.add(Text.words(" – ")).add(p.consequence());
        }
        if (!p.avoid().isEmpty()) {
            text.add(List.of(new Text.Break())).add(p.avoid());
        }
    }

    private void hazard(Piece.Hazard p) {
        XWPFParagraph line = paragraph();
        List<String> codes = p.known() || !p.pictograms().isEmpty() ? p.pictograms() : List.of("W001");
        codes.forEach(code -> EditablePicture.packed(line, code, "ghs00", code, PICTOGRAM));
        EditableText text = new EditableText(line).bold(p.name());
        if (!p.detail().isEmpty()) {
            text.add(Text.words(", ")).add(p.detail());
        }
        text.bold(Text.words(p.signalWord().isEmpty() ? "" : ". " + p.signalWord()));
        p.statements().forEach(s -> text.add(List.of(new Text.Break(), new Text.Words(s))));
        if (!p.basis().isEmpty()) {
            text.add(List.of(new Text.Break(), new Text.Emphasis(Text.words(p.basis()))));
        }
    }

    /** The numbers of an axis stand beside the picture, as they do on paper, here in a line of their own. */
    private void graph(Piece.Graph p) {
        Piece.Drawing drawing = new GraphDrawing(p).drawing();
        new EditableText(paragraph()).add(Text.words("↑ " + p.y().name() + ": " + String.join(" | ", p.y().numbers())));
        EditablePicture.put(paragraph(), drawing.svg(), drawing.spoken(), drawing.widthMillimetres(), drawing.heightMillimetres());
        new EditableText(paragraph()).add(Text.words("→ " + p.x().name() + ": " + String.join(" | ", p.x().numbers())));
    }

    private static String general(String code) {
        return switch (code.isEmpty() ? ' ' : code.charAt(0)) {
            case 'W' -> "w001";
            case 'P' -> "p001";
            case 'E' -> "e000";
            case 'F' -> "f000";
            default -> "m001";
        };
    }
}
