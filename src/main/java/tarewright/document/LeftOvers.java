package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.safety.Content;
import tarewright.safety.Form;
import tarewright.safety.Leftover;
import tarewright.safety.Part;
import tarewright.safety.Rulebook;
import tarewright.safety.Waste;
import tarewright.safety.WasteAdvice;
import tarewright.safety.WasteRule;

/**
 * What the tables say of what is left in each pot: its products and whatever is not used up. Strengths in the mixture are taken
 * as not known, so that nothing is missed.
 */
final class LeftOvers {
    private final Draft draft;
    private final Rulebook rules;

    LeftOvers(Draft draft, Rulebook rules) {
        this.draft = draft;
        this.rules = rules;
    }

    /** The rules that apply, each once, with what asked for them; the local rules go before all of them. */
    List<List<Piece>> sentences(Bench bench) {
        Set<String> said = new LinkedHashSet<>();
        for (ResolvedReaction reaction : draft.procedure().reactions()) {
            for (PotAccount pot : reaction.pots()) {
                List<Part> parts = parts(pot, bench, reaction);
                if (!parts.isEmpty()) {
                    Leftover left = new Leftover(tarewright.safety.Matter.of(reaction.name(), Form.SOLUTION, parts),
                            Optional.empty(), Optional.empty());
                    advice(new Waste(rules).of(left, Optional.empty()), said);
                }
            }
        }
        return said.stream().map(s -> List.<Piece>of(new Piece.Paragraph(draft.prose().of(s)))).toList();
    }

    private List<Part> parts(PotAccount pot, Bench bench, ResolvedReaction reaction) {
        Set<Part> parts = new LinkedHashSet<>();
        for (Bottle product : bench.made()) {
            Part part = product.verdict().matter().parts().get(0);
            boolean ofThis = reaction.block().equation().filter(e -> e.products().stream()
                    .anyMatch(t -> part.formula().filter(t.species().formula().plain()::equals).isPresent())).isPresent();
            if (ofThis && product.verdict().matter().form() != Form.GAS) {
                parts.add(new Part(part.substance(), part.formula(), Content.unstated()));
            }
        }
        pot.leftOver().forEach((block, left) -> {
            if (left.value() > 0 && !pot.limiting().contains(block)) {
                draft.procedure().quantity(block).flatMap(q -> q.matter()).map(m -> Contents.part(m, Content.unstated()))
                        .ifPresent(parts::add);
            }
        });
        return new ArrayList<>(parts);
    }

    private void advice(WasteAdvice advice, Set<String> said) {
        boolean never = advice.sink() == WasteRule.Sink.NEVER;
        for (WasteAdvice.Reason reason : advice.reasons()) {
            if (never && reason.rule().sink() != WasteRule.Sink.NEVER) {
                continue;
            }
            String text = draft.words().find("waste.rule." + reason.rule().id()).orElse(reason.rule().text());
            String key = reason.rule().sink() == WasteRule.Sink.NEVER ? "waste.advice-never" : "waste.advice";
            Set<WasteRule.Kind> telling = Set.of(WasteRule.Kind.ELEMENT, WasteRule.Kind.CODE, WasteRule.Kind.UNKNOWN);
            said.add(reason.found().isEmpty() || !telling.contains(reason.rule().kind()) ? draft.say(key, "text", text)
                    : draft.say(key + "-because", "text", text, "found", String.join(", ", reason.found())));
        }
    }
}
