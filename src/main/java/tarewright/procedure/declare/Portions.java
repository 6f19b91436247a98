package tarewright.procedure.declare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What reacts with a portion is measured out as often as the portion, where the author does not say otherwise. */
final class Portions {
    private Portions() {
    }

    static List<QuantityBlock> followed(List<QuantityBlock> blocks) {
        Map<String, QuantityBlock> byName = new LinkedHashMap<>();
        blocks.forEach(b -> byName.putIfAbsent(b.name(), b));
        return blocks.stream().map(b -> b.withPortions(of(b, byName))).toList();
    }

    private static int of(QuantityBlock block, Map<String, QuantityBlock> byName) {
        QuantityBlock at = block;
        for (int steps = 0; steps < byName.size() && !at.block().fields().has("portions"); steps++) {
            Optional<QuantityBlock> target = target(at).map(byName::get);
            if (target.isEmpty()) {
                break;
            }
            at = target.get();
        }
        return at.portions();
    }

    private static Optional<String> target(QuantityBlock block) {
        return block.rule() instanceof AmountRule.For goal ? Optional.of(goal.target())
                : block.rule() instanceof AmountRule.ExcessOver over ? Optional.of(over.target()) : Optional.empty();
    }
}
