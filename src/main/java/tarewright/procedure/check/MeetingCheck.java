package tarewright.procedure.check;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.bench.BenchSafety;
import tarewright.safety.Clash;
import tarewright.safety.PairRule;
import tarewright.text.Span;

/**
 * What must not meet, the gravest of each pair. What nobody may ever bring together is an error on the bench; in the stock room,
 * where bottles stay closed, a warning.
 */
final class MeetingCheck implements SafetyCheck {
    @Override
    public void check(BenchSafety safety, Consumer<Finding> findings) {
        Set<Set<String>> told = new HashSet<>();
        for (Clash clash : safety.clashes()) {
            boolean stock = Where.isStock(safety, clash.first()) || Where.isStock(safety, clash.second());
            boolean diluting = stock && clash.withWater();
            Set<String> pair = new HashSet<>(List.of(clash.first().name(), clash.second().name()));
            if (!diluting && told.add(pair)) {
                findings.accept(finding(safety, clash, stock));
            }
        }
    }

    private static Finding finding(BenchSafety safety, Clash clash, boolean stock) {
        PairRule rule = clash.rule();
        Severity severity = clash.severity() == PairRule.Severity.FORBID && !stock ? Severity.ERROR : Severity.WARNING;
        Span one = Where.of(safety, clash.first());
        Span other = Where.of(safety, clash.second());
        boolean inOrder = one.start() <= other.start();
        return new SafetyFinding.MustNotMeet(clash.first().name(), clash.second().name(), Optional.empty(), Optional.empty(), Optional.empty(), rule.hazard(), rule.products(), rule.advice(),
                severity, inOrder ? other : one, one.equals(other) ? List.of() : List.of(inOrder ? one : other));
    }
}
