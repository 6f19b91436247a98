package tarewright.procedure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.quantity.Rounding;

/**
 * The one amount that sets how much of a gas there is: what limits the reaction that makes it, as it is set on its instrument.
 *
 * @param name of the block
 * @param set what is set: a length, a mass or a volume
 * @param division that it can be set to, in the coherent SI unit; none if anything goes
 */
record LimitingAmount(String name, Figure set, OptionalDouble division) {
    /** What limits a gas; none if nothing, or several blocks together, do. */
    static Optional<LimitingAmount> of(Resolved procedure, ResolvedQuantity gas) {
        List<String> limiting = new ArrayList<>();
        for (ResolvedReaction reaction : procedure.reactions()) {
            boolean makesIt = reaction.block().equation().filter(e -> gas.matter().filter(m -> e.isProduct(m.formula())).isPresent()).isPresent();
            if (makesIt) {
                reaction.pots().stream().map(PotAccount::limiting).forEach(limiting::addAll);
            }
        }
        return limiting.size() == 1 ? procedure.quantity(limiting.get(0)).flatMap(LimitingAmount::of) : Optional.empty();
    }

    private static Optional<LimitingAmount> of(ResolvedQuantity limiting) {
        OptionalDouble division = limiting.block().ribbon().isPresent()
                ? OptionalDouble.of(limiting.block().ribbon().get().step().value().si())
                : limiting.instrument().map(ApparatusItem::division).orElse(OptionalDouble.empty());
        return limiting.figure(Property.LENGTH).or(limiting::amount).map(set -> new LimitingAmount(limiting.name(), set, division));
    }

    /** So many times the amount, rounded to what can be set. */
    double times(double share, Rounding.Direction direction) {
        double wanted = set.value() * share;
        return division.isPresent() ? new Rounding(direction, division.getAsDouble()).apply(wanted) : wanted;
    }

    /** An amount with the block's name: {@code 71 mm of ribbon}. */
    String shown(double si) {
        return Amount.of(si, set.unit()) + " of " + name;
    }

    /** The largest settable amount at most so many times the present one. */
    Optional<String> atMost(double share) {
        double fits = times(share, Rounding.Direction.DOWN);
        return fits > 0 ? Optional.of(shown(fits)) : Optional.empty();
    }
}
