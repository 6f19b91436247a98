package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tarewright.procedure.bench.Stock;
import tarewright.procedure.bench.WasteContainer;
import tarewright.procedure.declare.LabelPaper;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.safety.Assigned;
import tarewright.safety.Form;
import tarewright.safety.Matter;
import tarewright.safety.Rulebook;
import tarewright.safety.SmallLabel;
import tarewright.safety.Statement;
import tarewright.safety.Unknown;
import tarewright.safety.Verdict;

/**
 * A label for each bottle that the students take from, each stock that is diluted for them, and each container for waste. Students read them, so
 * they keep the same secrets as the handout; the hazards are those of what is really inside.
 */
final class BottleLabels {
    private static final String WATER = "H2O";

    private final Draft draft;
    private final Resolved whole;
    private final Rulebook rules;
    private final String version;
    private final Hazards hazards;

    /**
     * @param draft of the hand that could hurt most
     * @param whole with all that is dealt
     * @param version the code of the print, which each label bears
     */
    BottleLabels(Draft draft, Resolved whole, Rulebook rules, String version) {
        this.draft = draft;
        this.whole = whole;
        this.rules = rules;
        this.version = version;
        this.hazards = new Hazards(draft);
    }

    /** One piece, or none where there is nothing to label. */
    List<Piece> pieces(LabelPaper paper) {
        Bench bench = Bench.of(draft, rules);
        List<Piece.Label> labels = new ArrayList<>();
        bench.bottles().stream().filter(b -> b.verdict().matter().form() != Form.GAS && !isWater(b.verdict().matter()))
                .map(this::bottle).forEach(labels::add);
        Stock.of(draft.procedure(), rules).stream().map(this::stock).forEach(labels::add);
        Disposal disposal = Disposal.of(draft, whole, rules);
        disposal.jars().stream().flatMap(this::waste).forEach(labels::add);
        disposal.made(draft, bench).forEach((into, verdict) -> labels.add(waste(into, List.of(), verdict, List.of())));
        disposal.bottles(draft, rules).stream().map(this::neutraliser).forEach(labels::add);
        Piece.LabelGrid grid = new Piece.LabelGrid(paper.columns(), paper.rows(), paper.marginTop(), paper.marginLeft());
        return labels.isEmpty() ? List.of() : List.of(new Piece.Labels(grid, labels));
    }

    private static boolean isWater(Matter matter) {
        return matter.parts().size() == 1 && matter.parts().get(0).formula().filter(WATER::equals).isPresent();
    }

    private Piece.Label bottle(Bottle bottle) {
        Optional<String> keeps = bottle.uses().stream().map(u -> new Labels(draft).bottle(u.block())).flatMap(b -> b.keeps().stream()).findFirst();
        List<String> foot = new ArrayList<>(List.of(draft.say("label.made")));
        foot.add(keeps.map(k -> draft.say("label.use-by-keeps", "keeps", k)).orElseGet(() -> draft.say("label.use-by")));
        foot.add(draft.say("label.maker"));
        List<Text> detail = Typeset.joined(Stream.of(bottle.strength(), bottle.formula()).filter(d -> !d.isEmpty()).toList(), "; ");
        Piece.Label label = label(bottle.name(), detail, bottle.verdict(), v -> hazards.unknown(bottle), foot);
        if (!bottle.solventUnknown()) {
            return label;
        }
        List<String> statements = new ArrayList<>(List.of(draft.say("hazard.indicator")));
        statements.addAll(bottle.verdict().harmless() ? List.of() : label.statements());
        return new Piece.Label(label.name(), label.detail(), label.pictograms(), label.signalWord(), statements, label.foot(), false);
    }

    private Piece.Label stock(Stock stock) {
        Verdict verdict = stock.verdict();
        String makes = stock.makes().stream().map(ResolvedQuantity::block).filter(b -> !new Labels(draft).isMasked(b)).map(new Labels(draft)::plain).distinct().collect(Collectors.joining(", "));
        List<List<Text>> detail = new ArrayList<>();
        stock.strength().ifPresent(s -> detail.add(Text.words(draft.say("label.stock-at", "strength", s))));
        if (!makes.isEmpty()) {
            detail.add(Text.words(draft.say("label.stock", "makes", makes)));
        }
        return label(draft.prose().of(stock.name()), Typeset.joined(detail, "; "), verdict, v -> unknown(v, stock.name()),
                List.of(draft.say("label.opened"), draft.say("label.use-by"), draft.say("label.maker")));
    }

    /** One for each vessel. */
    private Stream<Piece.Label> waste(WasteContainer container) {
        return Disposal.names(container, draft).stream().map(n -> waste(container, n));
    }

    private Piece.Label neutraliser(Verdict verdict) {
        return label(Text.words(verdict.matter().name()), Text.words(draft.say("prep.for-waste")), verdict, v -> unknown(v, v.matter().name()),
                List.of(draft.say("label.opened"), draft.say("label.use-by"), draft.say("label.maker")));
    }

    private Piece.Label waste(WasteContainer container, String into) {
        List<List<Text>> detail = new ArrayList<>();
        if (container.falselyNeutral()) {
            detail.add(List.of(new Text.Strong(Text.words(draft.say("waste.not-neutral")))));
        }
        Verdict hazards = container.advice().hazards();
        List<String> foot = new ArrayList<>();
        if (hazards.assigned().stream().anyMatch(a -> a.ground() == Assigned.Ground.EXTREME_PH)) {
            foot.add(draft.say("label.by-its-ph"));
        }
        if (container.worst().isEmpty()) {
            foot.add(draft.say("label.ph-unknown"));
        }
        return waste(into, detail, hazards, foot);
    }

    private Piece.Label waste(String into, List<List<Text>> more, Verdict hazards, List<String> why) {
        List<Text> name = draft.compose("label.waste", Map.of("into", draft.prose().of(into)));
        List<List<Text>> detail = new ArrayList<>(List.of(Text.words(draft.say("label.waste-of", "title", draft.procedure().procedure().front().title().map(t -> t.value())
                .orElse(draft.procedure().name())))));
        detail.addAll(more);
        List<String> foot = new ArrayList<>(why);
        foot.addAll(List.of(draft.say("label.begun"), draft.say("label.maker"), draft.say("waste.local-rules")));
        return label(name, Typeset.joined(detail, "; "), hazards, v -> unknown(v, Plain.of(name)), foot);
    }

    private Piece.Label label(List<Text> name, List<Text> detail, Verdict verdict, Function<Verdict, String> unknown, List<String> foot) {
        OptionalDouble litres = verdict.matter().litres();
        SmallLabel small = SmallLabel.of(verdict, litres.orElse(Double.POSITIVE_INFINITY), rules);
        List<String> statements = new ArrayList<>(Stream.concat(small.statements().stream(), verdict.supplemental().stream())
                .map(this::sentence).toList());
        if (!verdict.known()) {
            statements.add(0, unknown.apply(verdict));
        } else if (verdict.harmless()) {
            statements.add(draft.say("hazard.basis-harmless", "rules", draft.tables().phrase(rules.ruleSet().title())));
        }
        List<String> lines = new ArrayList<>(foot);
        if (!small.omitted().isEmpty()) {
            lines.add(draft.say("label.reduced", "clauses", small.omitted().stream().map(o -> draft.tables().phrase(o.by().clause())).distinct()
                    .collect(Collectors.joining("; "))));
        }
        lines.add(Stream.of(draft.procedure().procedure().front().code(), version).filter(c -> !c.isBlank()).collect(Collectors.joining(" · ")));
        return new Piece.Label(name, detail, verdict.pictograms(), hazards.signalWord(verdict), statements,
                lines.stream().filter(l -> !l.isBlank()).toList(), verdict.known());
    }

    /** What is not known by its own name, unless that could tell what the students find out. */
    private String unknown(Verdict verdict, String instead) {
        boolean masked = draft.procedure().quantities().stream().anyMatch(q -> new Labels(draft).isMasked(q.block()));
        String parts = verdict instanceof Unknown unknown && !masked
                ? unknown.parts().stream().map(draft::called).collect(Collectors.joining(", ")) : instead;
        return draft.say("hazard.unknown", "parts", parts);
    }

    private String sentence(Statement statement) {
        return draft.say("hazard.statement", "code", statement.code(), "text", statement.printed());
    }
}
