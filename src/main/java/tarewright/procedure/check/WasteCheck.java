package tarewright.procedure.check;

import java.util.function.Consumer;
import tarewright.finding.Finding;
import tarewright.procedure.resolve.Resolved;

/** A procedure that handles anything says what becomes of what is left. */
final class WasteCheck implements Check {
    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        if (procedure.procedure().wastes().isEmpty() && !procedure.quantities().isEmpty()) {
            findings.accept(new CheckFinding.WasteMissing(procedure.quantities().get(0).block().block().typeSpan()));
        }
    }
}
