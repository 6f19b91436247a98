package tarewright.print;

import java.util.ArrayList;
import java.util.List;
import tarewright.document.Piece;
import tarewright.document.Sheet;
import tarewright.document.Text;

/**
 * A whole document as readable text, for golden files and for places that hold no markup. Marks: {@code **bold**}, {@code
 * «amount»}, {@code [____ what goes here]}, {@code [=the key's value]}, {@code ~struck~}.
 */
public final class PlainText {
    private PlainText() {
    }

    /** The sheet line by line, each piece on lines of its own, without line wrapping. Ends with a line feed. */
    public static String of(Sheet sheet) {
        Lines lines = new Lines();
        lines.add(sheet.kindName() + ": " + sheet.title());
        List<String> facts = new ArrayList<>(List.of(sheet.kind().word(), sheet.code(), sheet.version(), sheet.language(),
                sheet.paper().name(), sheet.footer()));
        facts.removeIf(String::isEmpty);
        lines.add("(" + String.join("; ", facts) + ")");
        pieces(sheet.pieces(), lines);
        return lines.text();
    }

    /** Text as a person would read it out of a line, without any marks. */
    static String bare(List<Text> texts) {
        return PlainInline.BARE.of(texts);
    }

    private static String inline(List<Text> texts) {
        return PlainInline.MARKED.of(texts);
    }

    private static void pieces(List<Piece> pieces, Lines lines) {
        pieces.forEach(piece -> piece(piece, lines));
    }

    private static void piece(Piece piece, Lines lines) {
        if (piece instanceof Piece.Heading p) {
            lines.gap();
            lines.add("#".repeat(p.level()) + " " + inline(p.text()));
        } else if (piece instanceof Piece.Paragraph p) {
            lines.add(inline(p.text()));
        } else if (piece instanceof Piece.Bullets p) {
            p.items().forEach(item -> lines.under("- ", "  ", () -> pieces(item, lines)));
        } else if (piece instanceof Piece.Steps p) {
            for (int i = 0; i < p.steps().size(); i++) {
                List<Piece> step = p.steps().get(i);
                lines.under((p.first() + i) + ". [ ] ", "   ", () -> pieces(step, lines));
            }
        } else if (piece instanceof Piece.Question p) {
            question(p, lines);
        } else if (piece instanceof Piece.RuledLines p) {
            lines.add("____ x " + p.lines() + " (" + p.says() + ")");
        } else if (piece instanceof Piece.Written p) {
            lines.add("____ x " + p.lines() + " filled in: " + inline(p.text()));
        } else if (piece instanceof Piece.Leaf p) {
            lines.add("---- " + p.kindName() + " " + p.code());
            piece(p.title(), lines);
            pieces(p.inside(), lines);
            lines.add("---- end of it");
        } else if (piece instanceof Piece.Choices p) {
            for (int i = 0; i < p.options().size(); i++) {
                lines.add((p.right().isPresent() && p.right().get() == i ? "[x] " : "[ ] ") + inline(p.options().get(i)));
            }
        } else if (piece instanceof Piece.Table p) {
            table(p, lines);
        } else if (piece instanceof Piece.Caution p) {
            lines.add("!! " + p.word() + " (" + p.level() + ")");
            lines.under("   hazard: ", "   ", () -> lines.add(inline(p.hazard())));
            lines.under("   then: ", "   ", () -> lines.add(inline(p.consequence())));
            lines.under("   avoid: ", "   ", () -> lines.add(inline(p.avoid())));
        } else if (piece instanceof Piece.Working p) {
            p.lines().forEach(line -> lines.add(inline(line.left()) + " " + inline(line.right())
                    + (line.remark().isEmpty() ? "" : "   (" + line.remark() + ")")));
        } else if (piece instanceof Piece.Display p) {
            lines.add("    " + inline(p.text()));
        } else if (piece instanceof Piece.Note p) {
            lines.add("[" + p.label() + "]");
            lines.under("  ", "  ", () -> pieces(p.inside(), lines));
        } else if (piece instanceof Piece.Hazard p) {
            hazard(p, lines);
        } else if (piece instanceof Piece.Labels p) {
            lines.add("labels, " + p.grid().columns() + " x " + p.grid().rows());
            p.labels().forEach(label -> label(label, lines));
        } else if (piece instanceof Piece.Signs p) {
            p.signs().forEach(sign -> lines.add("<" + sign.code() + "> " + sign.words()));
        } else if (piece instanceof Piece.Wall p) {
            lines.add("on the wall: " + p.word());
            p.marks().forEach(mark -> lines.add("<" + mark.code() + "> " + mark.names()));
            p.signs().forEach(sign -> lines.add("<" + sign.code() + "> " + sign.words()));
        } else if (piece instanceof Piece.Drawing p) {
            lines.add("<drawing> " + p.spoken());
        } else if (piece instanceof Piece.Photograph p) {
            lines.add("<photograph> " + p.spoken());
        } else if (piece instanceof Piece.Graph p) {
            lines.add("<graph> " + p.spoken() + (p.line().isEmpty() ? "" : " line of " + p.line().size() + " corners"));
        } else if (piece instanceof Piece.Together p) {
            pieces(p.inside(), lines);
        } else if (piece instanceof Piece.FormLine p) {
            lines.add(String.join("  ", p.fields().stream().map(f -> f.label() + " " + "_".repeat(Math.max(1, f.share()) * 4))
                    .toList()));
        } else if (piece instanceof Piece.NewPage) {
            lines.add("---- new page");
        } else if (piece instanceof Piece.NextSheet) {
            lines.add("==== next sheet, from its page 1");
        } else {
            throw new IllegalStateException("a piece without plain text: " + piece.getClass());
        }
    }

    private static void question(Piece.Question question, Lines lines) {
        lines.under(question.number() + ") ", "   ", () -> {
            pieces(question.asked(), lines);
            if (!question.marks().isEmpty()) {
                lines.add("(" + question.marks() + ")");
            }
            pieces(question.space(), lines);
            question.parts().forEach(part -> question(part, lines));
        });
    }

    private static void table(Piece.Table table, Lines lines) {
        lines.add("table" + (table.use() == Piece.Use.FILL ? " to fill" : "")
                + (table.caption().isEmpty() ? "" : ": " + inline(table.caption())));
        if (!table.head().isEmpty()) {
            lines.add("| " + String.join(" | ", table.head().stream().map(PlainText::inline).toList()) + " |");
        }
        table.rows().forEach(row -> lines.add("| " + String.join(" | ", row.stream().map(PlainText::inline).toList()) + " |"));
    }

    private static void label(Piece.Label label, Lines lines) {
        bottle("label: ", label.name(), label.detail(), label.known(), lines);
        signal(label.pictograms(), label.signalWord(), label.statements(), lines);
        label.foot().forEach(line -> lines.add("  (" + line + ")"));
    }

    private static void bottle(String lead, List<Text> name, List<Text> detail, boolean known, Lines lines) {
        lines.add(lead + inline(name) + (detail.isEmpty() ? "" : ", " + inline(detail)) + (known ? "" : " NOT KNOWN"));
    }

    private static void signal(List<String> pictograms, String signalWord, List<String> statements, Lines lines) {
        List<String> top = new ArrayList<>(pictograms);
        top.add(signalWord);
        top.removeIf(String::isEmpty);
        if (!top.isEmpty()) {
            lines.add("  " + String.join(" ", top));
        }
        statements.forEach(statement -> lines.add("  " + statement));
    }

    private static void hazard(Piece.Hazard hazard, Lines lines) {
        bottle("hazard: ", hazard.name(), hazard.detail(), hazard.known(), lines);
        signal(hazard.pictograms(), hazard.signalWord(), hazard.statements(), lines);
        if (!hazard.basis().isEmpty()) {
            lines.add("  basis: " + hazard.basis());
        }
    }
}
