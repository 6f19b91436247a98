package tarewright.procedure.check;

import java.util.Optional;
import java.util.function.Consumer;
import tarewright.finding.Finding;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;

/** What the students find out by a reaction has to be used up in it: of what is left over the reaction tells nothing. */
final class FoundCheck implements Check {
    /** An end point is read to a division and misses the whole by so much at most (common practice, no source). */
    private static final double END_POINT = 1.02;

    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ResolvedQuantity quantity : procedure.quantities()) {
            boolean excess = quantity.figure(Property.EXCESS).filter(x -> x.value() > END_POINT).isPresent();
            if (excess && isFound(procedure, quantity.block()) && !isReadItself(procedure, quantity)) {
                findings.accept(new CheckFinding.FoundLeftOver(quantity.name(), limiting(procedure, quantity),
                        quantity.figure(Property.LEFT_OVER).map(Amount::of).orElse(""), quantity.block().rule().at()));
            }
        }
    }

    /** It, or the bottle that it is taken from. */
    private static boolean isFound(Resolved procedure, QuantityBlock block) {
        QuantityBlock at = block;
        for (int i = 0; i < procedure.quantities().size() && !at.found() && at.strength().isEmpty(); i++) {
            Optional<QuantityBlock> source = at.portionOf().or(at::madeFrom).flatMap(n -> procedure.procedure().quantity(n.value()));
            if (source.isEmpty()) {
                return false;
            }
            at = source.get();
        }
        return at.found();
    }

    private static boolean isReadItself(Resolved procedure, ResolvedQuantity quantity) {
        return procedure.procedure().readings().stream().anyMatch(r -> r.of().filter(of -> of.value().equals(quantity.name())
                || of.value().endsWith(" of " + quantity.name())).isPresent());
    }

    private static String limiting(Resolved procedure, ResolvedQuantity quantity) {
        return procedure.reactions().stream().flatMap(r -> r.pots().stream()).filter(p -> isIn(p, quantity))
                .map(p -> String.join(", ", p.limiting())).findFirst().orElse("");
    }

    private static boolean isIn(PotAccount pot, ResolvedQuantity quantity) {
        return pot.reactants().stream().anyMatch(r -> r.blocks().contains(quantity.name()));
    }
}
