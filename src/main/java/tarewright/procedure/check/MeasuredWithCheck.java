package tarewright.procedure.check;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.procedure.declare.QuantityBlock.Role;
import tarewright.procedure.resolve.Referent;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.syntax.Inline;

/** A step that has an amount measured out, where neither the block nor the step names what measures it. */
final class MeasuredWithCheck implements Check {
    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (StepText step : StepText.of(procedure.procedure().source().body())) {
            for (Inline.Reference reference : step.references()) {
                if (procedure.referent(reference) instanceof Referent.Amount amount && amount.measured() && !names(procedure,
                        step.words())) {
                    procedure.quantities().stream().filter(q -> isOpen(q, amount.figure())).findFirst().ifPresent(q -> findings
                            .accept(new PageFinding.NothingMeasures(q.name(), Amount.of(amount.figure()), reference.span())));
                }
            }
        }
    }

    /** Whether this is what is measured, with nothing to measure it. Drops of an indicator are counted. */
    private static boolean isOpen(ResolvedQuantity quantity, Figure figure) {
        return quantity.amount().filter(figure::equals).isPresent() && quantity.instrument().isEmpty()
                && quantity.block().ribbon().isEmpty()
                && quantity.block().role() != Role.INDICATOR;
    }

    /** Whether the step names a thing of the apparatus that has marks, by its name or by the words that it is printed with. */
    private static boolean names(Resolved procedure, String words) {
        String lower = words.toLowerCase(Locale.ROOT);
        return procedure.procedure().apparatus().stream().filter(a -> a.division().isPresent() || a.capacity().isPresent())
                .anyMatch(a -> List.of(a.name(), a.words()).stream().anyMatch(w -> lower.contains(w.toLowerCase(Locale.ROOT))));
    }
}
