package tarewright.procedure.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tarewright.finding.Finding;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Resolved;
import tarewright.safety.Rulebook;

/** Every check of what could hurt somebody. */
public final class SafetyChecks {
    private static final List<SafetyCheck> ALL = List.of(new MeetingCheck(), new HoodCheck(), new UnknownCheck(), new CautionCheck(), new HiddenStepCheck(), new SinkCheck(),
            new PressureCheck());

    private SafetyChecks() {
    }

    /** What they find, without warnings that the author has answered. */
    public static List<Finding> run(Resolved procedure, Rulebook rules) {
        Set<Finding> found = new LinkedHashSet<>();
        for (Hand hand : procedure.hands()) {
            BenchSafety safety = BenchSafety.of(hand.resolved(), rules);
            ALL.forEach(check -> check.check(safety, found::add));
        }
        return Checks.unanswered(procedure, new ArrayList<>(found));
    }
}
