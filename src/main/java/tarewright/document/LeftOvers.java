package tarewright.document;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tarewright.procedure.bench.PotLeft;
import tarewright.safety.Form;
import tarewright.safety.Leftover;
import tarewright.safety.Matter;
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
        for (PotLeft left : PotLeft.of(draft.procedure(), bench.things())) {
            if (!left.parts().isEmpty()) {
                Matter mixture = Matter.of(left.reaction().name(), Form.SOLUTION, left.parts());
                advice(new Waste(rules).of(new Leftover(mixture, Optional.empty(), Optional.empty()), Optional.empty()), said);
            }
        }
        return said.stream().map(s -> List.<Piece>of(new Piece.Paragraph(draft.prose().of(s)))).toList();
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
