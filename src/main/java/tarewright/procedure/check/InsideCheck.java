package tarewright.procedure.check;

import java.util.Optional;
import java.util.function.Consumer;
import tarewright.chemistry.FlammableLimits;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Digits;

/** A flammable gas that mixes with the air left in its apparatus, between its flammable limits. */
final class InsideCheck implements Check {
    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ResolvedQuantity gas : procedure.quantities()) {
            if (!gas.block().is(Kind.GAS) || gas.block().gas().deadVolume().isEmpty() || gas.matter().isEmpty()) {
                continue;
            }
            Optional<FlammableLimits> limits = procedure.tables().flammableLimits(gas.matter().get().formula());
            Optional<Figure> volume = gas.figure(Property.VOLUME);
            if (limits.isEmpty() || volume.isEmpty()) {
                continue;
            }
            double air = gas.block().gas().deadVolume().get().value().si();
            double share = volume.get().value() / (volume.get().value() + air);
            if (share >= limits.get().lower() && share <= limits.get().upper()) {
                findings.accept(new CheckFinding.FlammableInside(gas.name(), Digits.significant(share * 100, 2) + " %",
                        Digits.significant(limits.get().lower() * 100, 2) + " %", Digits.significant(limits.get().upper() * 100, 2) + " %",
                        gas.block().gas().deadVolume().get().at()));
            }
        }
    }
}
