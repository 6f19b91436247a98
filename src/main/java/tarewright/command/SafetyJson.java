package tarewright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tarewright.derivation.Figure;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.PotWaste;
import tarewright.procedure.bench.WasteContainer;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.safety.AirEstimate;
import tarewright.safety.Statement;
import tarewright.safety.Unknown;
import tarewright.safety.Verdict;
import tarewright.safety.WasteAdvice;
import tarewright.safety.WasteRule;

/** What can be reckoned of the dangers of a procedure, for other programs. */
final class SafetyJson {
    private static final Unit GRAM = Units.symbol("g").orElseThrow();
    /** A pH of a mixture is an estimate: activities are taken as concentrations. */
    private static final double PH_STEPS = 100;

    private SafetyJson() {
    }

    static void into(ObjectNode node, BenchSafety safety) {
        ObjectNode hazards = node.putObject("hazards");
        safety.verdicts().forEach((name, verdict) -> verdict(hazards.putObject(name), verdict));
        ObjectNode air = node.putObject("air");
        safety.air().forEach((name, estimate) -> air(air.putObject(name), estimate));
        node.put("hood", word(safety.hood()));
        ObjectNode waste = node.putObject("waste");
        safety.waste().forEach(w -> waste(waste.putObject(w.name()), w));
        ObjectNode containers = node.putObject("waste containers");
        safety.containers().forEach(c -> container(containers.putObject(c.into()), c));
    }

    private static void verdict(ObjectNode node, Verdict verdict) {
        verdict.signalWord().ifPresent(w -> node.put("signal word", w.name().charAt(0) + w.name().substring(1).toLowerCase(Locale.ROOT)));
        list(node.putArray("statements"), verdict.statements().stream().map(Statement::code).toList());
        list(node.putArray("supplemental"), verdict.supplemental().stream().map(Statement::code).toList());
        list(node.putArray("pictograms"), verdict.pictograms());
        String bases = verdict.bases().stream().map(SafetyJson::word).collect(Collectors.joining(", "));
        node.put("basis", verdict.ruleSet().title() + (bases.isEmpty() ? "" : ": " + bases));
        node.put("known", verdict.known());
        if (verdict instanceof Unknown unknown) {
            list(node.putArray("not known"), unknown.parts());
        }
    }

    private static void air(ObjectNode node, AirEstimate estimate) {
        estimate.oneVessel().ifPresent(f -> node.put("one vessel", FiguresJson.clean(f.shownValue())));
        estimate.allVessels().ifPresent(f -> node.put("all vessels", FiguresJson.clean(f.shownValue())));
        node.put("around a face", FiguresJson.clean(estimate.aroundFace().shownValue()));
        node.put("unit", estimate.aroundFace().unit().symbol());
        ArrayNode limits = node.putArray("limits");
        estimate.checks().forEach(c -> {
            ObjectNode each = limits.addObject();
            each.put("scene", word(c.scene()));
            each.put("kind", word(c.kind()));
            each.put("limit", FiguresJson.clean(c.limit()));
            each.put("found", FiguresJson.clean(c.found()));
            each.put("over", c.over());
        });
    }

    private static void waste(ObjectNode node, PotWaste waste) {
        ObjectNode left = node.putObject("left");
        waste.moles().forEach((formula, figure) -> left.set(formula, FiguresJson.figure(figure)));
        waste.volume().ifPresent(v -> node.set("volume", FiguresJson.figure(v)));
        waste.pH().ifPresent(pH -> node.put("pH", Math.round(pH * PH_STEPS) / PH_STEPS));
        WasteAdvice advice = waste.advice();
        node.put("sink", advice.sink() == WasteRule.Sink.NEVER ? "never" : "by local rules");
        list(node.putArray("containers"), advice.containers());
        advice.neutralising().ifPresent(recipe -> {
            ObjectNode neutralise = node.putObject("neutralise");
            neutralise.put("with", recipe.with().substance());
            neutralise.set("for a pot", mass(recipe.mass(), 1));
            neutralise.set("for a group", mass(recipe.mass(), waste.potsPerGroup()));
            neutralise.set("class total", mass(recipe.mass(), waste.inClass()));
            neutralise.put("until pH from", WasteAdvice.STOP_FROM);
            neutralise.put("until pH to", WasteAdvice.STOP_TO);
        });
    }

    /** All that the class pours into one container. */
    private static void container(ObjectNode node, WasteContainer container) {
        list(node.putArray("of"), Stream.concat(container.pots().stream().map(PotWaste::name), container.bottles().stream().map(b -> b.source().name())).toList());
        container.pH().ifPresent(pH -> node.put("pH", Math.round(pH * PH_STEPS) / PH_STEPS));
        container.putIn().ifPresent(pH -> {
            node.put("lowest pH put in", Math.round(pH.lowest() * PH_STEPS) / PH_STEPS);
            node.put("highest pH put in", Math.round(pH.highest() * PH_STEPS) / PH_STEPS);
        });
        node.put("sink", container.advice().sink() == WasteRule.Sink.NEVER ? "never" : "by local rules");
        verdict(node.putObject("hazards"), container.advice().hazards());
        ObjectNode total = node.putObject("class total");
        container.volume().ifPresent(v -> total.set("volume", FiguresJson.figure(v)));
        container.advice().neutralising().ifPresent(recipe -> {
            node.put("neutralise with", recipe.with().substance());
            node.put("until pH from", WasteAdvice.STOP_FROM);
            node.put("until pH to", WasteAdvice.STOP_TO);
            total.set("neutraliser", mass(recipe.mass(), 1));
            total.put("a pinch", recipe.isPinch(1));
        });
    }

    private static ObjectNode mass(Figure mass, double times) {
        ObjectNode node = FiguresJson.bare(mass.in(GRAM));
        node.put("value", FiguresJson.clean(mass.in(GRAM).shownValue() * times));
        return node;
    }

    private static void list(ArrayNode array, List<String> values) {
        values.forEach(array::add);
    }

    private static String word(Enum<?> each) {
        return each.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
