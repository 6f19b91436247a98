package tarewright.procedure.check;

import java.util.Optional;
import java.util.function.Consumer;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Rounding;
import tarewright.quantity.Typed;
import tarewright.text.Span;

/** A gas that is to come out within a window: which amounts of what limits it keep the whole accepted range inside. */
final class FitsCheck implements Check {
    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ResolvedQuantity gas : procedure.quantities()) {
            if (gas.block().gas().fits().isPresent() && gas.figure(Property.VOLUME).isPresent()) {
                Typed window = gas.block().gas().fits().get().value();
                check(procedure, gas, gas.figure(Property.VOLUME).get(), window, gas.block().gas().fits().get().at(), findings);
            }
        }
    }

    private static void check(Resolved procedure, ResolvedQuantity gas, Figure volume, Typed window, Span at, Consumer<Finding> findings) {
        if (window.upTo().isEmpty()) {
            return;
        }
        double from = window.si();
        double to = window.upToSi().getAsDouble();
        double spread = gas.figure(Property.LARGEST).map(l -> l.value() - volume.value()).orElse(0.0);
        boolean inside = volume.value() - spread >= from && volume.value() + spread <= to;
        Optional<LimitingAmount> limiting = LimitingAmount.of(procedure, gas);
        // The spread grows with the amount, so it is taken as a share of the volume.
        double share = spread / volume.value();
        Optional<Double> least = limiting.map(l -> l.times(from / (volume.value() * (1 - share)), Rounding.Direction.UP));
        Optional<Double> most = limiting.map(l -> l.times(to / (volume.value() * (1 + share)), Rounding.Direction.DOWN));
        boolean possible = least.isPresent() && least.get() <= most.get() && least.get() > 0;
        String expected = Amount.of(volume);
        if (inside) {
            limiting.filter(l -> possible).ifPresent(l -> findings.accept(new CheckFinding.FitsWindow(gas.name(), expected, at.text(), l.shown(least.get()),
                    l.shown(most.get()), at)));
        } else {
            findings.accept(new CheckFinding.DoesNotFit(gas.name(), expected, at.text(), limiting.filter(l -> possible).map(l -> l.shown(least.get())),
                    limiting.filter(l -> possible).map(l -> l.shown(most.get())), at));
        }
    }
}
