package tarewright.procedure.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import tarewright.finding.Finding;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;

/** What is in a vessel must fit: liquids take their share of its capacity, a gas the rest. */
final class VesselCheck implements Check {
    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ApparatusItem vessel : procedure.procedure().apparatus()) {
            vessel.capacity().ifPresent(capacity -> vessel(procedure, vessel, capacity.value(), findings));
        }
    }

    private static void vessel(Resolved procedure, ApparatusItem vessel, Typed capacity, Consumer<Finding> findings) {
        List<ResolvedQuantity> inside = procedure.quantities().stream()
                .filter(q -> q.block().vessel().filter(v -> v.value().equals(vessel.name())).isPresent() && q.figure(Property.VOLUME).isPresent())
                .filter(q -> q.figure(Property.VOLUME).get().dimension().equals(capacity.dimension())).toList();
        // Each portion goes into a vessel of its own, as it goes into a pot of its own.
        double volume = inside.stream().mapToDouble(VesselCheck::volume).sum();
        if (inside.isEmpty()) {
            return;
        }
        Unit unit = capacity.unit();
        if (volume <= capacity.si() * (1 + 1e-9)) {
            double spread = inside.stream().filter(q -> q.block().is(Kind.GAS)).mapToDouble(q -> q.figure(Property.LARGEST)
                    .map(l -> l.value() - volume(q)).orElse(0.0)).sum();
            if (volume + spread > capacity.si() * (1 + 1e-9)) {
                findings.accept(new CheckFinding.MayOverfill(vessel.words(), Amount.of(capacity.si(), unit), Amount.of(volume + spread, unit),
                        advice(procedure, inside, capacity.si() * volume / (volume + spread)), inside.get(0).block().rule().at(), List.of(vessel.at())));
            }
            return;
        }
        findings.accept(new CheckFinding.OverCapacity(vessel.words(), Amount.of(capacity.si(), unit), Amount.of(volume, unit),
                inside.stream().map(q -> Amount.of(volume(q), unit) + " of " + q.name()).toList(), advice(procedure, inside, capacity.si()),
                inside.get(0).block().rule().at(), List.of(vessel.at())));
    }

    private static double volume(ResolvedQuantity quantity) {
        return quantity.figure(Property.VOLUME).orElseThrow().value();
    }

    /** The largest amount of what limits the gas that still fits, rounded down to its instrument. */
    private static Optional<String> advice(Resolved procedure, List<ResolvedQuantity> inside, double capacity) {
        List<ResolvedQuantity> gases = inside.stream().filter(q -> q.block().is(Kind.GAS)).toList();
        double liquids = inside.stream().filter(q -> !q.block().is(Kind.GAS)).mapToDouble(VesselCheck::volume).sum();
        if (gases.size() != 1 || liquids >= capacity) {
            return Optional.empty();
        }
        return LimitingAmount.of(procedure, gases.get(0)).flatMap(l -> l.atMost((capacity - liquids) / volume(gases.get(0))));
    }
}
