package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tarewright.procedure.bench.PotWaste;
import tarewright.procedure.bench.WasteContainer;
import tarewright.quantity.Digits;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.safety.Rulebook;
import tarewright.safety.SubstanceHazards;
import tarewright.safety.WasteAdvice;
import tarewright.safety.WasteRule;

/** What the tables say of what is left, for each container: how much, how sour, what must not go to the sink, how to neutralise it. */
final class LeftOvers {
    private static final int FIGURES = 2;
    private static final Unit GRAM = Units.symbol("g").orElseThrow();
    private static final Unit LITRE = Units.symbol("L").orElseThrow();

    private final Draft draft;
    private final Rulebook rules;

    LeftOvers(Draft draft, Rulebook rules) {
        this.draft = draft;
        this.rules = rules;
    }

    /** A piece for each container; the local rules go before all of them. */
    List<List<Piece>> sentences(Bench bench) {
        List<PotWaste> wastes = PotWaste.of(draft.procedure(), bench.things(), rules);
        return WasteContainer.of(draft.procedure(), bench.things(), wastes, rules).stream()
                .map(c -> List.<Piece>of(new Piece.Paragraph(container(c)))).toList();
    }

    private List<Text> container(WasteContainer container) {
        Set<String> said = new LinkedHashSet<>();
        amount(container).ifPresent(said::add);
        rules(container.advice(), said);
        recipe(container).ifPresent(said::add);
        if (container.advice().keepAlkaline()) {
            said.add(draft.say("waste.keep-alkaline"));
        }
        container.clashes().forEach(c -> said.add(draft.say("waste.clash", "hazard", draft.tables().phrase(c.rule().hazard()),
                "products", draft.tables().phrase(c.rule().products()))));
        List<Text> name = draft.prose().of(container.said() ? container.into() : draft.say("waste.container." + container.into()));
        return draft.compose(isOnceNeutral(container) ? "waste.container-line-once-neutral" : "waste.container-line", Map.of("into", List.of(new Text.Strong(name)),
                "said", draft.prose().of(String.join(" ", said))));
    }

    /** Whether the author pours away what may be poured away once it is neutral, but not as it is: said in one voice with what to do first. */
    private static boolean isOnceNeutral(WasteContainer container) {
        return container.drain() && container.advice().sink() == WasteRule.Sink.NEVER && container.advice().reasons().stream()
                .map(WasteAdvice.Reason::rule).filter(r -> r.sink() == WasteRule.Sink.NEVER).allMatch(WasteRule::mendedByNeutralising);
    }

    /** How much it is and how sour, unless that would tell what the students find out. */
    private Optional<String> amount(WasteContainer container) {
        boolean kept = isKept(container);
        List<String> parts = new ArrayList<>();
        container.volume().filter(v -> !kept && v.value() > 0).ifPresent(v -> parts.add(draft.say("waste.volume", "volume",
                about(v.in(LITRE).shownValue(), LITRE))));
        container.pH().ifPresent(pH -> parts.add(kept ? draft.say("waste.ph-kept") : draft.say("waste.ph", "pH",
                draft.numbers().localised(Digits.decimals(pH, 1)))));
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", parts));
    }

    /** Whether anything of it was worked out from what the students find. */
    private boolean isKept(WasteContainer container) {
        return container.pots().stream().flatMap(p -> Stream.concat(p.moles().values().stream(), p.volume().stream())).anyMatch(draft::keeps);
    }

    private String about(double value, Unit unit) {
        return draft.numbers().localised(Digits.significant(value, FIGURES)) + "\u202F" + unit.symbol();
    }

    /** The rules that apply, each once, with what asked for them. */
    private void rules(WasteAdvice advice, Set<String> said) {
        boolean never = advice.sink() == WasteRule.Sink.NEVER;
        for (WasteAdvice.Reason reason : advice.reasons()) {
            if (never && reason.rule().sink() != WasteRule.Sink.NEVER) {
                continue;
            }
            String text = draft.tables().phrase(reason.rule().text());
            String key = reason.rule().sink() != WasteRule.Sink.NEVER ? "waste.advice"
                    : reason.rule().mendedByNeutralising() ? "waste.advice-not-as-it-is" : "waste.advice-never";
            Set<WasteRule.Kind> telling = Set.of(WasteRule.Kind.ELEMENT, WasteRule.Kind.CODE, WasteRule.Kind.UNKNOWN);
            said.add(reason.found().isEmpty() || !telling.contains(reason.rule().kind()) ? draft.say(key, "text", text)
                    : draft.say(key + "-because", "text", text, "found", String.join(", ", reason.found())));
        }
    }

    private Optional<String> recipe(WasteContainer container) {
        return container.advice().neutralising().map(recipe -> {
            String substance = rules.substances().byId(recipe.with().substance()).map(SubstanceHazards::name).map(draft::called).orElse(recipe.with().substance());
            String key = isKept(container) ? "waste.neutralise-some" : recipe.isPinch(1) ? "waste.neutralise-pinch" : "waste.neutralise-much";
            return draft.say(key, "substance", substance, "how", draft.tables().phrase(recipe.with().text()), "mass", about(recipe.mass().in(GRAM).shownValue(), GRAM),
                    "from", (int) WasteAdvice.STOP_FROM, "to", (int) WasteAdvice.STOP_TO);
        });
    }
}
