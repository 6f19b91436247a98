package tarewright.procedure.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.Stock;
import tarewright.quantity.Digits;
import tarewright.safety.Air;
import tarewright.safety.AirEstimate;
import tarewright.safety.HoodReason;
import tarewright.safety.HoodReason.Why;
import tarewright.safety.LimitCheck;
import tarewright.safety.Verdict;
import tarewright.setting.Setting;

/**
 * What wants a fume hood where the procedure does not say that there is one: an error on the bench. A stock that wants one is a
 * warning, since it is diluted beforehand and elsewhere.
 */
final class HoodCheck implements SafetyCheck {
    private static final int FIGURES = 2;

    @Override
    public void check(BenchSafety safety, Consumer<Finding> findings) {
        if (safety.procedure().setting().hood() == Setting.Hood.GIVEN) {
            return;
        }
        safety.hoodReasons().forEach((verdict, reasons) -> {
            Optional<AirEstimate> air = safety.bench().made().stream().filter(m -> m.verdict() == verdict).flatMap(m -> m.air().stream())
                    .findFirst().or(() -> safety.bench().taken().stream().filter(t -> t.verdict() == verdict)
                            .flatMap(t -> t.air().stream()).findFirst());
            findings.accept(finding(safety, verdict, reasons, air, Severity.ERROR));
        });
        for (Stock stock : safety.stocks()) {
            List<HoodReason> reasons = Air.handling(stock.verdict());
            if (!reasons.isEmpty()) {
                findings.accept(finding(safety, stock.verdict(), reasons, Optional.empty(), Severity.WARNING));
            }
        }
    }

    private static Finding finding(BenchSafety safety, Verdict verdict, List<HoodReason> reasons, Optional<AirEstimate> air,
            Severity severity) {
        Optional<String> toxic = reasons.stream().filter(r -> r.why() == Why.TOXIC_IF_INHALED).findFirst()
                .map(r -> r.codes().stream().collect(Collectors.joining(", ")));
        Optional<LimitCheck> face = passed(reasons, Why.OVER_LIMIT_AROUND_FACE);
        Optional<LimitCheck> room = passed(reasons, Why.OVER_LIMIT_IN_ROOM);
        return new SafetyFinding.HoodNeeded(verdict.matter().name(), toxic, face.map(c -> ppm(c.found())), room.map(c -> ppm(c.found())),
                face.or(() -> room).map(c -> ppm(c.limit())), air.flatMap(AirEstimate::oneVessel).map(HoodCheck::ppm),
                air.flatMap(AirEstimate::allVessels).map(HoodCheck::ppm), air.map(AirEstimate::aroundFace).map(HoodCheck::ppm), severity,
                Where.of(safety, verdict.matter()));
    }

    private static Optional<LimitCheck> passed(List<HoodReason> reasons, Why why) {
        return reasons.stream().filter(r -> r.why() == why).flatMap(r -> r.check().stream()).findFirst();
    }

    private static String ppm(Figure figure) {
        return ppm(figure.shownValue());
    }

    private static String ppm(double value) {
        return Digits.significant(value, FIGURES);
    }
}
