package tarewright.procedure.check;

import java.util.function.Consumer;
import tarewright.finding.Finding;
import tarewright.procedure.resolve.Resolved;

/** Looks for one kind of trouble in a resolved procedure. */
interface Check {
    void check(Resolved procedure, Consumer<Finding> findings);
}
