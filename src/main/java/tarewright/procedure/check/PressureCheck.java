package tarewright.procedure.check;

import java.util.List;
import java.util.function.Consumer;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.ClosedVessel;
import tarewright.quantity.Digits;
import tarewright.quantity.Units;

/** A gas that forms in a closed vessel. */
final class PressureCheck implements SafetyCheck {
    /** From half a bar over the room's pressure a vessel is pressure equipment (Directive 2014/68/EU, Article 1(1)), which no glassware of a lesson is. */
    private static final double BURSTS = 1.5;
    /** Enough to throw a stopper; common practice, no source. */
    private static final double THROWS = 1.1;

    @Override
    public void check(BenchSafety safety, Consumer<Finding> findings) {
        for (ClosedVessel closed : safety.closed()) {
            if (closed.pressure().over(THROWS)) {
                Severity severity = closed.pressure().over(BURSTS) ? Severity.ERROR : Severity.WARNING;
                findings.accept(new SafetyFinding.OverPressure(closed.gas().verdict().matter().name(), closed.vessel().words(),
                        Amount.of(closed.pressure().pressure().value(), Units.symbol("kPa").orElseThrow()),
                        Digits.significant(closed.pressure().timesRoom(), 2), severity, Where.of(safety, closed.gas().verdict().matter()),
                        List.of(closed.vessel().at())));
            }
        }
    }
}
