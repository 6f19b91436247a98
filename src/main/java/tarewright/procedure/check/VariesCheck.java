package tarewright.procedure.check;

import java.util.List;
import java.util.function.Consumer;
import tarewright.finding.Finding;
import tarewright.procedure.declare.ReactionBlock;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedReaction;

/**
 * Where the author says that what limits varies, it must: seen over all amounts, so only where amounts are dealt and the class is large enough to get them all. With one amount for
 * everybody it varies by what each group measures, and that the key says.
 */
final class VariesCheck {
    private VariesCheck() {
    }

    static void check(Resolved procedure, Consumer<Finding> findings) {
        for (ReactionBlock block : procedure.procedure().reactions()) {
            if (block.limitingVaries() && allDealt(procedure)) {
                List<List<String>> limiting = procedure.hands().stream().map(Hand::resolved).map(r -> limiting(r, block.name())).toList();
                boolean known = limiting.stream().noneMatch(List::isEmpty);
                if (known && limiting.stream().distinct().count() == 1) {
                    findings.accept(new CheckFinding.LimitingDoesNotVary(block.name(), String.join(", ", limiting.get(0)), block.block().fields().get("limiting").orElseThrow().valueSpan()));
                }
            }
        }
    }

    private static List<String> limiting(Resolved hand, String reaction) {
        return hand.reactions().stream().filter(r -> r.name().equals(reaction)).map(ResolvedReaction::pots).flatMap(List::stream)
                .flatMap(p -> p.limiting().stream()).toList();
    }

    private static boolean allDealt(Resolved procedure) {
        return procedure.procedure().quantities().stream().anyMatch(q -> q.dealt().isPresent()) && procedure.procedure().quantities().stream().filter(q -> q.dealt().isPresent()).allMatch(q -> procedure.hands().stream()
                .map(h -> h.resolved().procedure().quantity(q.name()).orElseThrow().rule()).distinct().count() == q.dealt().get().rules().size());
    }
}
