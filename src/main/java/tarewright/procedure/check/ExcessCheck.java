package tarewright.procedure.check;

import java.util.Optional;
import java.util.function.Consumer;
import tarewright.finding.Finding;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Digits;

/** What is declared an excess must be one after all rounding. */
final class ExcessCheck implements Check {
    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ResolvedQuantity quantity : procedure.quantities()) {
            if (quantity.block().rule() instanceof AmountRule.ExcessOver over) {
                double wanted = over.times().map(t -> t.value().si()).orElse(1.0);
                Optional<String> asked = over.times().filter(t -> t.value().si() > 1).map(t -> Digits.significant(wanted, 3));
                quantity.figure(Property.EXCESS).filter(x -> x.value() < wanted * (1 - 1e-9) || x.value() <= 1 + 1e-9).ifPresent(x ->
                        findings.accept(new CheckFinding.NotInExcess(quantity.name(), over.target(), quantity.amount().map(Amount::of).orElse(""),
                                Digits.significant(x.value(), 3), asked, over.at())));
            }
        }
    }
}
