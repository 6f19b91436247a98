package tarewright.procedure.check;

import java.util.Optional;
import java.util.function.Consumer;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.At;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Digits;

/**
 * The thousandfold guard: an amount far outside what its instrument can handle points to a slip of unit or decimal place. Over the instrument's capacity, or so
 * small that a division is more than a tenth of it.
 */
final class ScaleCheck implements Check {
    private static final double FEWEST_DIVISIONS = 10;

    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ResolvedQuantity quantity : procedure.quantities()) {
            if (quantity.instrument().isPresent() && quantity.amount().isPresent() && quantity.taken()) {
                // What is diluted in a flask is measured where it is taken, not where it is made up.
                check(quantity, quantity.figure(Property.TAKEN).orElse(quantity.amount().get()), quantity.instrument().get(), findings);
            }
        }
    }

    private static void check(ResolvedQuantity quantity, Figure amount, ApparatusItem item, Consumer<Finding> findings) {
        Optional<At<tarewright.quantity.Typed>> capacity = item.capacity().filter(c -> c.value().dimension().equals(amount.dimension()));
        if (capacity.isPresent() && amount.value() > capacity.get().value().si() * (1 + 1e-9)) {
            double times = amount.value() / capacity.get().value().si();
            findings.accept(new CheckFinding.Thousandfold(quantity.name(), Amount.of(amount), item.words(), Amount.of(capacity.get().value().si(),
                    capacity.get().value().unit()), slip(times), quantity.block().rule().at()));
            return;
        }
        boolean same = item.divisionTyped().filter(d -> d.dimension().equals(amount.dimension())).isPresent();
        double divisions = same && item.division().isPresent() ? amount.value() / item.division().getAsDouble() : FEWEST_DIVISIONS;
        boolean counted = item.delivers().isPresent() && item.graduation().isEmpty() && item.readsTo().isEmpty();
        if (divisions > 0 && divisions < FEWEST_DIVISIONS * (1 - 1e-9) && !counted) {
            findings.accept(new CheckFinding.FewDivisions(quantity.name(), Amount.of(amount), item.words(),
                    Amount.of(item.division().getAsDouble(), item.divisionTyped().orElseThrow().unit()), Digits.significant(100 / divisions, 2),
                    quantity.block().rule().at()));
        }
    }

    /** The likely slip: a unit a thousand times too large, a decimal place. */
    private static Optional<String> slip(double times) {
        return times >= 100 ? Optional.of("mL for L, mg for g") : Optional.empty();
    }
}
