package tarewright.document;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tarewright.chemistry.AcidConstant;
import tarewright.chemistry.Acidity;
import tarewright.procedure.resolve.ResolvedGraph;
import tarewright.procedure.resolve.ResolvedGraph.Curve;
import tarewright.procedure.resolve.ResolvedGraph.Point;

/** How the lines that the key draws on its graphs were found: beside the sheet filled in, which has room for nothing that the handout has not. */
final class Curves {
    private static final int DIGITS = 4;

    private final Draft draft;

    Curves(Draft draft) {
        this.draft = draft;
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (ResolvedGraph graph : draft.procedure().graphs()) {
            graph.curve().ifPresent(c -> pieces.addAll(titration(graph, c)));
            if (graph.block().mixedAt().isPresent() && !graph.expected().isEmpty()) {
                pieces.add(mixing(graph));
            }
        }
        if (!pieces.isEmpty()) {
            pieces.add(0, draft.heading(2, "heading.curves"));
        }
        return pieces;
    }

    private List<Piece> titration(ResolvedGraph graph, Curve curve) {
        int decimals = graph.x().scale().orElseThrow().decimals() + 2;
        List<List<Text>> head = new ArrayList<>();
        head.add(Text.words(draft.say("curve.run-in", "unit", graph.x().unit().symbol())));
        head.add(Text.words(draft.say("curve.in-all", "unit", graph.x().unit().symbol())));
        curve.dissolved().forEach(f -> {
            List<Text> strength = new ArrayList<>(List.of(new Text.Symbol("c"), new Text.Words("("), draft.formula(f)));
            strength.add(new Text.Words(") " + draft.say("curve.strength")));
            head.add(strength);
        });
        head.add(Text.words(draft.say("curve.ph")));
        List<List<List<Text>>> rows = new ArrayList<>();
        for (Curve.Stage stage : curve.stages()) {
            List<List<Text>> row = new ArrayList<>(List.of(Text.words(fixed(stage.runIn(), decimals)), Text.words(fixed(stage.inAll(), decimals))));
            stage.strengths().forEach(c -> row.add(Text.words(number(c))));
            row.add(Text.words(fixed(stage.pH(), 2)));
            rows.add(row);
        }
        List<Boolean> right = Collections.nCopies(head.size(), true);
        List<Text> caption = draft.prose().of(draft.say("curve.caption", "graph", graph.name()));
        return List.of(draft.paragraph("curve.how"), new Piece.Table(caption, head, rows, right, false, Piece.Use.READ), constants(curve));
    }

    private Piece constants(Curve curve) {
        Grid grid = new Grid(draft, "").words("curve.what").numbers("curve.value").words("curve.source");
        for (AcidConstant row : curve.constants()) {
            grid.row(Text.words(draft.say("curve.constant", "name", row.name())), Text.words(draft.numbers().localised(BigDecimal.valueOf(row.pKa()).toPlainString())),
                    Text.words(row.provenance().source()));
        }
        grid.row(Text.words(draft.say("curve.water")), Text.words(draft.numbers().localised(BigDecimal.valueOf(Acidity.AT_25_C.pKw()).toPlainString())),
                Text.words(Acidity.SOURCE));
        return grid.pieces().get(0);
    }

    private Piece mixing(ResolvedGraph graph) {
        Point after = graph.expected().get(0);
        String unit = "\u202F" + graph.y().unit().symbol();
        String time = fixed(after.x(), 1) + "\u202F" + graph.x().unit().symbol();
        String words = graph.block().drift().isPresent() ? "curve.drifting" : "curve.mixing";
        return new Piece.Paragraph(draft.prose().of(draft.say(words, "graph", graph.name(), "time", time, "before",
                fixed(graph.line().get(0).y(), 1) + unit, "after", fixed(after.y(), 1) + unit)));
    }

    private String number(double value) {
        return draft.numbers().localised(new BigDecimal(value).round(new MathContext(DIGITS)).toPlainString());
    }

    private String fixed(double value, int decimals) {
        return draft.numbers().localised(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString());
    }
}
