package tarewright.procedure.check;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.PotWaste;
import tarewright.procedure.bench.WasteContainer;
import tarewright.procedure.declare.Notes.WasteBlock;
import tarewright.quantity.Digits;
import tarewright.safety.Clash;
import tarewright.safety.PairRule;
import tarewright.safety.WasteRule;
import tarewright.text.Span;

/** What the author sends to the sink against the tables, and what would meet in one container. */
final class SinkCheck implements SafetyCheck {
    @Override
    public void check(BenchSafety safety, Consumer<Finding> findings) {
        for (WasteContainer container : safety.containers()) {
            Span at = where(safety, container);
            if (container.wronglyPoured()) {
                List<String> why = container.advice().reasons().stream().map(r -> r.rule()).filter(r -> r.sink() == WasteRule.Sink.NEVER)
                        .map(WasteRule::text).distinct().toList();
                findings.accept(new SafetyFinding.NotIntoSink(what(container), why, at));
            }
            if (container.falselyNeutral() && !container.neutralised()) {
                findings.accept(new SafetyFinding.NotNeutral(container.into(), container.worst().isPresent() ? Optional.of(Digits.decimals(container.worst().getAsDouble(), 1))
                        : Optional.empty(), at));
            }
            Set<String> told = new HashSet<>();
            container.clashes().stream().filter(c -> !isOnTheBench(safety, c)).filter(c -> told.add(c.first().name() + "/" + c.second().name()))
                    .forEach(c -> findings.accept(meeting(container, c, at)));
        }
    }

    /** Two bottles that clash are told of already. */
    private static boolean isOnTheBench(BenchSafety safety, Clash clash) {
        return safety.bench().verdicts().stream().map(v -> v.matter()).filter(m -> m == clash.first() || m == clash.second()).count() > 1;
    }

    private static Finding meeting(WasteContainer container, Clash clash, Span at) {
        PairRule rule = clash.rule();
        Severity severity = clash.severity() == PairRule.Severity.FORBID ? Severity.ERROR : Severity.WARNING;
        return new SafetyFinding.MustNotMeet(clash.first().name(), clash.second().name(), Optional.of(container.into()), Optional.empty(), Optional.empty(),
                rule.hazard(), rule.products(), rule.advice(), severity, at, List.of());
    }

    private static String what(WasteContainer container) {
        return Stream.concat(container.pots().stream().map(PotWaste::name), container.bottles().stream().map(b -> b.source().name()))
                .findFirst().orElse(container.into());
    }

    private static Span where(BenchSafety safety, WasteContainer container) {
        return safety.procedure().procedure().wastes().stream().filter(w -> w.into().equals(container.into())).map(WasteBlock::block)
                .map(b -> b.typeSpan()).findFirst().orElseGet(() -> safety.procedure().procedure().source().text().span(0, 0));
    }
}
