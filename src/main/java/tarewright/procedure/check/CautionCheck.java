package tarewright.procedure.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import tarewright.finding.Finding;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.Bottles;
import tarewright.procedure.declare.Notes.CautionBlock;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.Referent;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.Part;
import tarewright.safety.Verdict;
import tarewright.text.Span;

/**
 * The first step that handles something corrosive or toxic has a caution for it before it; and a caution does not stand behind the last step of
 * all, where nobody can heed it.
 */
final class CautionCheck implements SafetyCheck {
    static final List<String> TOXIC = List.of("H300", "H301", "H310", "H311", "H330", "H331");
    /** Burns, eye damage, fatal and toxic by any way in. */
    private static final List<String> SEVERE = Stream.concat(Stream.of("H314", "H318"), TOXIC.stream()).toList();

    @Override
    public void check(BenchSafety safety, Consumer<Finding> findings) {
        CautionSubject subject = new CautionSubject(safety);
        List<Inline.Reference> handling = new ArrayList<>();
        int[] last = {-1};
        Part.walk(safety.procedure().procedure().source().body(), part -> {
            if (part instanceof Part.Items list && list.ordered()) {
                list.items().stream().filter(i -> !i.isQuestion()).forEach(i -> {
                    last[0] = Math.max(last[0], words(i));
                    references(i, handling);
                });
            }
        });
        Set<CautionBlock> late = new HashSet<>();
        Set<String> told = new HashSet<>();
        for (Inline.Reference reference : handling) {
            handled(safety.procedure(), reference).ifPresent(block -> step(safety, subject, block, reference.span(), told, late, findings));
        }
        behindAll(safety, last[0], late, findings);
    }

    /** Where the words of a step end: behind them only its blocks stand, which belong before the next. */
    private static int words(Part.Item item) {
        return item.parts().stream().filter(p -> !p.inlines().isEmpty()).mapToInt(p -> p.span().end()).max().orElse(-1);
    }

    private static void references(Part.Item item, List<Inline.Reference> into) {
        item.parts().stream().filter(p -> !(p instanceof Part.Items)).flatMap(p -> p.inlines().stream()).forEach(inline ->
                Inline.walk(inline, each -> {
                    if (each instanceof Inline.Reference reference) {
                        into.add(reference);
                    }
                }));
    }

    private static void step(BenchSafety safety, CautionSubject subject, QuantityBlock block, Span at, Set<String> told, Set<CautionBlock> late,
            Consumer<Finding> findings) {
        Optional<Verdict> verdict = Optional.ofNullable(safety.verdicts().get(block.name()));
        List<String> codes = SEVERE.stream().filter(c -> verdict.filter(v -> v.has(c)).isPresent()).toList();
        String thing = Bottles.source(safety.procedure(), block).name();
        if (codes.isEmpty() || !told.add(thing)) {
            return;
        }
        List<CautionBlock> fitting = safety.procedure().procedure().cautions().stream()
                .filter(c -> subject.covers(c, thing, verdict.orElseThrow())).toList();
        if (fitting.stream().anyMatch(c -> c.block().span().start() < at.start())) {
            return;
        }
        late.addAll(fitting);
        findings.accept(new SafetyFinding.CautionMissing(verdict.orElseThrow().matter().name(), codes,
                fitting.stream().map(CautionBlock::hazard).findFirst(), at, fitting.stream().limit(1).map(c -> c.block().typeSpan()).toList()));
    }

    private static void behindAll(BenchSafety safety, int lastStep, Set<CautionBlock> told, Consumer<Finding> findings) {
        if (lastStep < 0) {
            return;
        }
        safety.procedure().procedure().cautions().stream().filter(c -> c.block().span().start() > lastStep && !told.contains(c))
                .forEach(c -> findings.accept(new SafetyFinding.CautionBehindAll(c.block().typeSpan())));
    }

    /** The block whose amount or whose bottle a step names. */
    private static Optional<QuantityBlock> handled(Resolved procedure, Inline.Reference reference) {
        Referent referent = procedure.referent(reference);
        if (referent instanceof Referent.Bottle bottle) {
            return Optional.of(bottle.block());
        }
        if (!(referent instanceof Referent.Amount amount) || !amount.measured()) {
            return Optional.empty();
        }
        String text = reference.text();
        return Stream.of(Optional.of(text), Optional.of(text).filter(t -> t.contains(" of ")).map(t -> t.substring(t.indexOf(" of ") + 4)))
                .flatMap(Optional::stream).flatMap(n -> procedure.procedure().quantity(n).stream()).findFirst();
    }
}
