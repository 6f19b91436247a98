package tarewright.procedure.check;

import java.util.function.Consumer;
import tarewright.finding.Finding;
import tarewright.procedure.bench.BenchSafety;

/** Looks for one kind of danger on the bench. */
interface SafetyCheck {
    void check(BenchSafety safety, Consumer<Finding> findings);
}
