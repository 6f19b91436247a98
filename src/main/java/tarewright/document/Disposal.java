package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tarewright.procedure.bench.WasteContainer;
import tarewright.procedure.declare.Notes.WasteBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.quantity.Digits;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.safety.Classification;
import tarewright.safety.Content;
import tarewright.safety.Form;
import tarewright.safety.Matter;
import tarewright.safety.Part;
import tarewright.safety.Rulebook;
import tarewright.safety.SubstanceHazards;
import tarewright.safety.Verdict;
import tarewright.safety.WasteAdvice;
import tarewright.tables.Practice;

/**
 * Where waste stands until somebody who knows takes care of it: a jar for each container on the front bench, with what neutralises it and what tests it. Students pour into the jar and neutralise nothing.
 *
 * @param containers of the whole class
 */
record Disposal(List<WasteContainer> containers) {
    private static final int FIGURES = 2;
    private static final Unit MILLILITRE = Units.symbol("mL").orElseThrow();
    private static final Unit GRAM = Units.symbol("g").orElseThrow();

    Disposal {
        containers = List.copyOf(containers);
    }

    /** @param whole with all that is dealt */
    static Disposal of(Draft draft, Resolved whole, Rulebook rules) {
        return new Disposal(Bench.containers(draft, whole, rules));
    }

    /** Whether what the author sends there waits in a jar first. @param into the author's words */
    boolean heldBack(String into) {
        return containers.stream().anyMatch(c -> c.said() && c.into().equals(into) && c.heldBack());
    }

    /** Those that stand on the bench: all but what goes down the sink as it is. */
    List<WasteContainer> jars() {
        return containers.stream().filter(c -> !c.drain() || c.heldBack()).toList();
    }

    /** What its vessels are called: an author names two with a semicolon between them. */
    static List<String> names(WasteContainer container, Draft draft) {
        String into = container.heldBack() ? draft.say("waste.jar-for-sink") : container.said() ? container.into() : draft.say("waste.container." + container.into());
        return Stream.of(into.split(";")).map(String::strip).filter(n -> !n.isEmpty()).toList();
    }

    /** Where the author sends what is made, by itself, such as a solid on its filter: what it is classified as, by the author's words. */
    Map<String, Verdict> made(Draft draft, Bench bench) {
        Map<String, Verdict> all = new LinkedHashMap<>();
        for (WasteBlock block : draft.procedure().procedure().wastes()) {
            boolean told = block.into().isBlank() || WasteContainer.isDrain(block.into()) || containers.stream().anyMatch(c -> c.into().equals(block.into()));
            if (!told) {
                bench.made().stream().filter(m -> block.of().filter(o -> m.uses().stream().anyMatch(u -> u.name().equals(o.value()))).isPresent()).findFirst()
                        .ifPresent(m -> all.putIfAbsent(block.into(), m.verdict()));
            }
        }
        return all;
    }

    /** Each vessel with how many of them hold what the class leaves, then what neutralises and what tests. */
    List<Map.Entry<String, String>> frontBench(Draft draft, Bench bench, Rulebook rules) {
        List<Map.Entry<String, String>> rows = new ArrayList<>();
        for (WasteContainer jar : jars()) {
            List<String> names = names(jar, draft);
            rows.add(jar(jar, names.get(0), draft));
            names.stream().skip(1).forEach(name -> rows.add(Map.entry(draft.say("prep.waste-jar", "into", name), "1")));
        }
        made(draft, bench).keySet().forEach(into -> rows.add(Map.entry(draft.say("prep.waste-jar", "into", into), "1")));
        neutralisers(draft, rules).forEach((with, recipes) -> rows.add(Map.entry(draft.say("prep.neutraliser", "substance", with), amount(recipes, draft))));
        if (tested()) {
            rows.add(Map.entry(draft.say("prep.ph-paper"), "1"));
        }
        return rows;
    }

    /** Of its size where the volume is known; where it will froth it stays half empty. */
    private static Map.Entry<String, String> jar(WasteContainer jar, String name, Draft draft) {
        Practice practice = draft.procedure().tables().practice();
        double full = jar.advice().neutralising().isPresent() ? practice.froth() : practice.fullest();
        double volume = jar.volume().filter(v -> v.dimension().equals(Dimension.VOLUME)).map(v -> v.value() / full).orElse(0.0);
        if (volume <= 0) {
            return Map.entry(draft.say("prep.waste-jar", "into", name), "1");
        }
        double largest = practice.bottles().get(practice.bottles().size() - 1);
        double size = practice.bottles().stream().filter(b -> b >= volume).findFirst().orElse(largest);
        return Map.entry(draft.say("prep.waste-jar-of", "into", name, "size", draft.numbers().printedNumber(Math.round(MILLILITRE.fromSi(size))) + "\u202F" + MILLILITRE.symbol()),
                Long.toString((long) Math.ceil(volume / size - 1e-9)));
    }

    private boolean tested() {
        return jars().stream().anyMatch(c -> c.advice().neutralising().isPresent() || c.pH().isEmpty() && c.putIn().isEmpty() && c.neutralised() || c.heldBack());
    }

    /** Of all jars together; where it cannot be reckoned for one of them, until the pH paper says so. */
    private static String amount(List<Optional<WasteAdvice.Recipe>> recipes, Draft draft) {
        if (recipes.stream().anyMatch(Optional::isEmpty)) {
            return draft.say("prep.as-needed");
        }
        double mass = recipes.stream().flatMap(Optional::stream).mapToDouble(r -> r.mass().value()).sum();
        return recipes.stream().flatMap(Optional::stream).allMatch(r -> r.isPinch(1)) ? draft.say("prep.a-pinch")
                : draft.numbers().localised(Digits.significant(GRAM.fromSi(mass), FIGURES)) + "\u202F" + GRAM.symbol();
    }

    /** By name: those that the tables or the author ask for. */
    private Map<String, List<Optional<WasteAdvice.Recipe>>> neutralisers(Draft draft, Rulebook rules) {
        Map<String, List<Optional<WasteAdvice.Recipe>>> all = new LinkedHashMap<>();
        for (WasteContainer jar : jars()) {
            Optional<String> with = jar.advice().neutralising().map(r -> name(r.with().substance(), draft, rules)).or(() -> draft.procedure().procedure().wastes().stream()
                    .filter(w -> w.into().equals(jar.into())).flatMap(w -> w.neutraliseWith().stream()).map(m -> draft.called(m.value())).findFirst());
            with.ifPresent(w -> all.computeIfAbsent(w, k -> new ArrayList<>()).add(jar.advice().neutralising()));
        }
        return all;
    }

    /** What stands beside the jars in a bottle of its own, undiluted. */
    List<Verdict> bottles(Draft draft, Rulebook rules) {
        Classification classification = new Classification(rules);
        Map<String, Verdict> all = new LinkedHashMap<>();
        for (WasteContainer jar : jars()) {
            jar.advice().neutralising().ifPresent(r -> {
                String name = name(r.with().substance(), draft, rules);
                all.putIfAbsent(name, classification.of(Matter.pure(name, Form.SOLID, r.with().substance())));
            });
        }
        draft.procedure().procedure().wastes().stream().filter(w -> jars().stream().anyMatch(c -> c.into().equals(w.into()))).flatMap(w -> w.neutraliseWith().stream())
                .forEach(m -> all.computeIfAbsent(draft.called(m.value()), name -> classification.of(Matter.of(name, Form.SOLID,
                        List.of(Part.of(m.value().name(), m.value().formula().plain(), Content.pure()))))));
        return List.copyOf(all.values());
    }

    private static String name(String substance, Draft draft, Rulebook rules) {
        return rules.substances().byId(substance).map(SubstanceHazards::name).map(draft::called).orElse(substance);
    }
}
