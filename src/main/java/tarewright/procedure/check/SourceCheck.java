package tarewright.procedure.check;

import java.util.Optional;
import java.util.function.Consumer;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;

/** What is taken or made from another block holds what that block holds, and a portion is as strong as its bottle. */
final class SourceCheck implements Check {
    /** Two strengths that differ by less are the same, typed in two ways. */
    private static final double SAME = 1e-3;

    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ResolvedQuantity taken : procedure.quantities()) {
            QuantityBlock block = taken.block();
            Optional<At<String>> from = block.portionOf().or(block::madeFrom);
            from.flatMap(n -> procedure.quantity(n.value())).filter(s -> s.block() != block).ifPresent(source -> {
                substance(block, source, findings);
                if (block.portionOf().isPresent()) {
                    strength(taken, source, findings);
                }
            });
        }
    }

    /** Apart from water of crystallisation, which dissolving takes away. */
    private static void substance(QuantityBlock block, ResolvedQuantity source, Consumer<Finding> findings) {
        Optional<Matter> there = source.matter();
        if (block.matter().isPresent() && there.isPresent() && !block.matter().get().value().formula().anhydrous()
                .sameComposition(there.get().formula().anhydrous())) {
            findings.accept(new CheckFinding.MadeFromOther(block.name(), block.matter().get().value().formula().unicode(), source.name(),
                    there.get().formula().unicode(), block.matter().get().at()));
        }
    }

    private static void strength(ResolvedQuantity portion, ResolvedQuantity bottle, Consumer<Finding> findings) {
        if (portion.block().strength().isEmpty() || portion.block().madeUpTo().isPresent()) {
            return;
        }
        Optional<Figure> own = portion.figure(Property.STRENGTH);
        Optional<Figure> there = bottle.figure(Property.STRENGTH);
        if (own.isPresent() && there.isPresent() && Math.abs(own.get().value() / there.get().value() - 1) > SAME) {
            findings.accept(new CheckFinding.PortionStrength(portion.name(), Amount.of(own.get()), bottle.name(), Amount.of(there.get()),
                    portion.block().strength().get().at()));
        }
    }
}
