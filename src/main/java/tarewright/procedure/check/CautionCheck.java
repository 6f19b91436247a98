package tarewright.procedure.check;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import tarewright.finding.Finding;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.Referent;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.Part;
import tarewright.safety.Verdict;

/** A step that handles something corrosive or toxic has a caution before it. */
final class CautionCheck implements SafetyCheck {
    /** Burns, eye damage, fatal and toxic by any way in. */
    private static final List<String> SEVERE = List.of("H314", "H318", "H300", "H301", "H310", "H311", "H330", "H331");

    @Override
    public void check(BenchSafety safety, Consumer<Finding> findings) {
        Set<String> told = new HashSet<>();
        Part.walk(safety.procedure().procedure().source().body(), part -> {
            if (part instanceof Part.Items list && list.ordered()) {
                list.items().stream().filter(i -> !i.isQuestion()).forEach(i -> step(safety, i, told, findings));
            }
        });
    }

    private static void step(BenchSafety safety, Part.Item item, Set<String> told, Consumer<Finding> findings) {
        item.parts().stream().filter(p -> !(p instanceof Part.Items)).flatMap(p -> p.inlines().stream()).forEach(inline -> Inline.walk(inline, each -> {
            if (each instanceof Inline.Reference reference) {
                handled(safety.procedure(), reference).ifPresent(block -> {
                    Optional<Verdict> verdict = Optional.ofNullable(safety.verdicts().get(block.name()));
                    List<String> codes = SEVERE.stream().filter(c -> verdict.filter(v -> v.has(c)).isPresent()).toList();
                    boolean before = safety.procedure().procedure().cautions().stream()
                            .anyMatch(c -> c.block().span().start() < reference.span().start());
                    if (!codes.isEmpty() && !before && told.add(block.name())) {
                        findings.accept(new SafetyFinding.CautionMissing(verdict.orElseThrow().matter().name(), codes, reference.span()));
                    }
                });
            }
        }));
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
