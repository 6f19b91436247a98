package tarewright.procedure.check;

import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.procedure.declare.AmountRule;
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
    private static final Map<String, String> SMALLER = Map.of("kg", "g", "g", "mg", "L", "mL", "dm³", "cm³", "m³", "L", "mL", "µL", "mg", "µg");

    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ResolvedQuantity quantity : procedure.quantities()) {
            if (quantity.instrument().isPresent() && quantity.amount().isPresent() && quantity.taken()) {
                // What is diluted in a flask is measured where it is taken, not where it is made up.
                Optional<Figure> taken = quantity.figure(Property.TAKEN).filter(t -> quantity.block().madeUpTo().isPresent());
                check(quantity, taken.orElse(quantity.amount().get()), quantity.instrument().get(), findings);
            }
        }
    }

    private static void check(ResolvedQuantity quantity, Figure amount, ApparatusItem item, Consumer<Finding> findings) {
        Optional<At<tarewright.quantity.Typed>> capacity = item.capacity().filter(c -> c.value().dimension().equals(amount.dimension()));
        if (capacity.isPresent() && amount.value() > capacity.get().value().si() * (1 + 1e-9)) {
            findings.accept(new CheckFinding.Thousandfold(quantity.name(), Amount.of(amount), item.words(), Amount.of(capacity.get().value().si(),
                    capacity.get().value().unit()), slip(quantity, item, capacity.get().value().si()), quantity.block().rule().at()));
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

    /** The amount as typed in a unit a thousand times smaller, where the instrument would then measure it well. */
    private static Optional<String> slip(ResolvedQuantity quantity, ApparatusItem item, double capacity) {
        if (!(quantity.block().rule() instanceof AmountRule.Stated stated)) {
            return Optional.empty();
        }
        double meant = stated.typed().si() / 1000;
        boolean measured = meant <= capacity && item.division().orElse(0) * FEWEST_DIVISIONS <= meant;
        String smaller = SMALLER.getOrDefault(stated.typed().unit().symbol(), "");
        return measured && !smaller.isEmpty() ? Optional.of(stated.typed().number() + " " + smaller) : Optional.empty();
    }
}
