package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import tarewright.procedure.bench.WasteContainer;
import tarewright.procedure.resolve.Resolved;
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
    private final Resolved whole;
    private final Rulebook rules;

    /** @param whole with all that is dealt; the draft may be that of one hand of it */
    LeftOvers(Draft draft, Resolved whole, Rulebook rules) {
        this.draft = draft;
        this.whole = whole;
        this.rules = rules;
    }

    /** A piece for each container; the local rules go before all of them. */
    List<List<Piece>> sentences() {
        return Bench.containers(draft, whole, rules).stream()
                .map(c -> List.<Piece>of(new Piece.Paragraph(container(c)))).toList();
    }

    private List<Text> container(WasteContainer container) {
        Set<String> said = new LinkedHashSet<>();
        if (container.falselyNeutral()) {
            said.add(draft.say("waste.not-neutral"));
        }
        amount(container).ifPresent(said::add);
        rules(container.advice(), said);
        recipe(container).ifPresent(said::add);
        if (container.advice().keepAlkaline()) {
            said.add(draft.say("waste.keep-alkaline"));
        }
        container.clashes().forEach(c -> said.add(draft.say("waste.clash", "hazard", draft.tables().phrase(c.rule().hazard()),
                "products", draft.tables().phrase(c.rule().products()))));
        List<Text> name = draft.prose().of(container.said() ? container.into() : draft.say("waste.container." + container.into()));
        return draft.compose(container.onceNeutral() ? "waste.container-line-once-neutral" : "waste.container-line", Map.of("into", List.of(new Text.Strong(name)),
                "said", draft.prose().of(String.join(" ", said))));
    }

    /** How much it is and how sour, unless that would tell what the students find out. */
    private Optional<String> amount(WasteContainer container) {
        boolean kept = isKept(container);
        List<String> parts = new ArrayList<>();
        container.volume().filter(v -> !kept && v.value() > 0).ifPresent(v -> parts.add(draft.say("waste.volume", "volume",
                about(v.in(LITRE).shownValue(), LITRE))));
        boolean known = container.pH().isPresent() || container.putIn().isPresent();
        if (kept && known) {
            parts.add(draft.say("waste.ph-kept"));
        } else if (known) {
            container.pH().ifPresent(pH -> parts.add(draft.say("waste.ph", "pH", pH(pH))));
            container.putIn().flatMap(p -> putIn(p, container.pH())).ifPresent(parts::add);
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", parts));
    }

    /** Of the vessels that are emptied into it, unless they are no other than all together. */
    private Optional<String> putIn(WasteContainer.PutIn putIn, OptionalDouble all) {
        String from = pH(putIn.lowest());
        String to = pH(putIn.highest());
        if (!from.equals(to)) {
            return Optional.of(draft.say("waste.ph-put-in", "from", from, "to", to));
        }
        return all.isPresent() && pH(all.getAsDouble()).equals(from) ? Optional.empty() : Optional.of(draft.say("waste.ph-put-in-one", "pH", from));
    }

    private String pH(double pH) {
        return draft.numbers().localised(Digits.decimals(pH, 1));
    }

    /** Whether anything of it was worked out from what the students find. */
    private boolean isKept(WasteContainer container) {
        List<Draft> drafts = draft.open() ? List.of() : Stream.concat(Stream.of(draft), whole.hands().stream().map(h -> Draft.of(h.resolved(), false))).toList();
        return container.pots().stream().flatMap(p -> Stream.concat(p.moles().values().stream(), p.volume().stream())).anyMatch(f -> drafts.stream().anyMatch(d -> d.keeps(f)));
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
