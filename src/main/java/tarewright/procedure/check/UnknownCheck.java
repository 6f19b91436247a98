package tarewright.procedure.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import tarewright.finding.Finding;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.Stock;
import tarewright.safety.Unknown;

/** What the hazard tables do not hold. The documents treat it as hazardous and say so; the author can look it up. */
final class UnknownCheck implements SafetyCheck {
    @Override
    public void check(BenchSafety safety, Consumer<Finding> findings) {
        Set<List<String>> told = new HashSet<>();
        Stream.concat(safety.bench().verdicts().stream(), safety.stocks().stream().map(Stock::verdict)).forEach(verdict -> {
            if (verdict instanceof Unknown unknown && told.add(unknown.parts())) {
                findings.accept(new SafetyFinding.HazardsUnknown(verdict.matter().name(), unknown.parts(), Where.of(safety, verdict.matter())));
            }
        });
    }
}
