package tarewright.procedure.resolve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Term;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.quantity.Dimension;

/**
 * The liquids that the author puts into a gas's vessel. Where a gas is wished for, their amounts follow from it and what it loses to them from their amounts: they
 * are tried, from none on, until they settle.
 */
final class VesselLiquids {
    private static final int MOST_TRIALS = 40;
    /** Relative to the volume: well under what any cylinder sets. */
    private static final double SETTLED = 1e-9;
    /** A step of an instrument may go to and fro for ever; more than this is no rounding. */
    private static final double ROUNDING = 0.2;

    private final Bench bench;

    VesselLiquids(Bench bench) {
        this.bench = bench;
    }

    private List<QuantityBlock> of(QuantityBlock gas) {
        return bench.procedure.quantities().stream().filter(q -> q.is(Kind.SOLUTION) || q.is(Kind.LIQUID))
                .filter(q -> q.vessel().isPresent() && q.vessel().map(At::value).equals(gas.vessel().map(At::value))).toList();
    }

    /** All liquid that is with a gas, as it was measured out. */
    Optional<Figure> with(QuantityBlock gas) {
        return sum(of(gas).stream().flatMap(q -> bench.figure(q, Property.VOLUME).stream()).toList());
    }

    /**
     * The same where the amount of the gas is worked from its volume: as typed, as read off or as expected, and for a gas that is wished for as tried, since the
     * liquid may follow from the gas itself.
     */
    Optional<Figure> beside(QuantityBlock gas) {
        List<QuantityBlock> liquids = of(gas);
        if (bench.byReadings) {
            return sum(liquids.stream().flatMap(q -> (bench.reads(q, Property.VOLUME).isPresent() ? bench : bench.expected().orElseThrow())
                    .figure(q, Property.VOLUME).stream()).toList());
        }
        if (liquids.stream().allMatch(q -> q.rule() instanceof AmountRule.Stated s && s.what() == AmountRule.Measured.VOLUME)) {
            return sum(liquids.stream().flatMap(q -> bench.figure(q, Property.VOLUME).stream()).toList());
        }
        return bench.besideWished(gas).filter(v -> v > 0).map(v -> Figure.given(Symbol.words("liquid"), Kit.usual(Dimension.VOLUME, v), v,
                new Origin.Circumstance("liquid in the vessel")));
    }

    private static Optional<Figure> sum(List<Figure> liquids) {
        return liquids.size() < 2 ? liquids.stream().findFirst() : Optional.of(Figure.of(Symbol.words("liquid"), liquids.get(0).unit(),
                new Step.Sum(liquids.stream().map(l -> new Term(1, l)).toList())));
    }

    /** For each gas that is wished for, by name, how much liquid there is in its vessel, in cubic metres. One that never settles is a finding and left out. */
    Map<String, Double> settled() {
        List<QuantityBlock> wished = bench.procedure.quantities().stream().filter(q -> q.rule() instanceof AmountRule.Wanted && !of(q).isEmpty()).toList();
        Map<String, Double> before = Map.of();
        Map<String, Double> volumes = Map.of();
        for (int i = 0; i < MOST_TRIALS && !wished.isEmpty() && (i == 0 || !alike(before, volumes, SETTLED)); i++) {
            before = volumes;
            volumes = volumes(bench.trying(volumes), wished);
        }
        Map<String, Double> kept = new HashMap<>();
        for (QuantityBlock gas : wished) {
            double last = volumes.getOrDefault(gas.name(), 0.0);
            double earlier = before.getOrDefault(gas.name(), 0.0);
            if (Math.abs(last - earlier) <= ROUNDING * last) {
                kept.put(gas.name(), Math.max(last, earlier));
            } else {
                bench.note(new ResolveFinding.WishDissolves(gas.name(), gas.rule().at().text(), gas.rule().at()));
            }
        }
        return kept;
    }

    private static Map<String, Double> volumes(Bench trial, List<QuantityBlock> wished) {
        Map<String, Double> volumes = new HashMap<>();
        for (QuantityBlock gas : wished) {
            new VesselLiquids(trial).with(gas).ifPresent(v -> volumes.put(gas.name(), v.value()));
        }
        return volumes;
    }

    private static boolean alike(Map<String, Double> one, Map<String, Double> other, double share) {
        return one.keySet().equals(other.keySet())
                && one.entrySet().stream().allMatch(e -> Math.abs(e.getValue() - other.get(e.getKey())) <= share * other.get(e.getKey()));
    }
}
