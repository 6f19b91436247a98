package tarewright.procedure.check;

import java.util.Optional;
import java.util.function.Consumer;
import tarewright.finding.Finding;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Rounding;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;

/** What the instrument of a block cannot set. */
final class DeliveryCheck implements Check {
    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ResolvedQuantity quantity : procedure.quantities()) {
            Optional<ApparatusItem> item = quantity.instrument().filter(i -> i.divisionTyped().isPresent());
            if (item.isEmpty()) {
                continue;
            }
            Typed division = item.get().divisionTyped().orElseThrow();
            double size = item.get().division().orElseThrow();
            String marks = Amount.of(size, division.unit());
            if (quantity.block().rule() instanceof AmountRule.Stated stated && stated.typed().dimension().equals(division.dimension())) {
                typed(quantity, stated, item.get(), size, marks, findings);
            }
            quantity.amount().filter(a -> a.value() == 0 && a.dimension().equals(division.dimension())).ifPresent(a -> findings.accept(
                    new CheckFinding.RoundsToNothing(quantity.name(), a.from().isEmpty() ? Amount.of(a) : Amount.of(a.from().get(0)),
                            item.get().words(), marks, quantity.block().rule().at())));
        }
    }

    private static void typed(ResolvedQuantity quantity, AmountRule.Stated stated, ApparatusItem item, double size, String marks,
            Consumer<Finding> findings) {
        double si = stated.typed().si();
        if (!new Rounding(Rounding.Direction.NEAREST, size).isMultiple(si)) {
            Unit unit = stated.typed().unit();
            findings.accept(new CheckFinding.NotDeliverable(quantity.name(), stated.at().text(), item.words(), marks,
                    Amount.of(new Rounding(Rounding.Direction.DOWN, size).apply(si), unit), Amount.of(new Rounding(Rounding.Direction.UP, size).apply(si), unit), stated.at()));
        }
    }
}
