package tarewright.procedure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tarewright.derivation.Accepted;
import tarewright.derivation.ByReadings;
import tarewright.derivation.Figure;
import tarewright.derivation.PaperClass;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.resolve.ResolvedQuantity;

/**
 * A class on paper: the procedure done by so many invented groups, each with errors of its own for every instrument, so that the spread to expect, the vessels that
 * overfill and the answers outside the accepted range are known before the lesson.
 *
 * @param groups how many invented groups
 * @param lines one for each gas in a vessel and each answer with a value
 */
public record Rehearsal(int groups, List<Line> lines) {
    public Rehearsal {
        lines = List.copyOf(lines);
    }

    /**
     * One figure over the class.
     *
     * @param name the block's, or the question's number
     * @param expected the figure itself, with its unit
     * @param lowest in the coherent SI unit
     * @param mean in the coherent SI unit
     * @param highest in the coherent SI unit
     * @param spread standard deviation over the groups, in the coherent SI unit; 0 for one group
     * @param overfull groups whose vessel does not hold it; empty where there is no capacity
     * @param outside groups outside the accepted range; empty where there is none
     */
    public record Line(String name, boolean question, Figure expected, double lowest, double mean, double highest, double spread,
            Optional<Integer> overfull, Optional<Integer> outside) {
    }

    private record Watched(String name, boolean question, Figure figure, Optional<Double> capacity, Optional<Accepted> accepted) {
    }

    /** Rehearses a procedure. The same seed gives the same class. */
    public static Rehearsal of(Resolved procedure, int groups, long seed) {
        List<Watched> watched = new ArrayList<>();
        for (ResolvedQuantity quantity : procedure.quantities()) {
            if (quantity.block().is(Kind.GAS)) {
                quantity.figure(Property.VOLUME).ifPresent(v -> watched.add(new Watched(quantity.name(), false, v, room(procedure, quantity), Optional.empty())));
            }
        }
        for (ResolvedAnswer answer : procedure.answers()) {
            answer.value().ifPresent(v -> watched.add(new Watched(answer.number(), true, v, Optional.empty(), answer.accepted())));
        }
        List<Figure> readings = procedure.readings().stream().flatMap(r -> Stream.concat(Stream.of(r.value()), r.each().stream())).toList();
        SplittableRandom random = new SplittableRandom(seed);
        List<Line> lines = new ArrayList<>();
        for (Watched each : watched) {
            lines.add(line(each, draws(each, readings, groups, random.split())));
        }
        return new Rehearsal(groups, lines);
    }

    /** An answer is worked from readings; what stands in a vessel is what is really there. */
    private static double[] draws(Watched watched, List<Figure> readings, int groups, SplittableRandom random) {
        if (watched.question()) {
            return new ByReadings(watched.figure(), readings).draws(groups, random);
        }
        PaperClass pot = new PaperClass(List.of(watched.figure()));
        return IntStream.range(0, groups).mapToDouble(i -> pot.draw(random)[0]).toArray();
    }

    /** What a vessel has left for the gas. */
    private static Optional<Double> room(Resolved procedure, ResolvedQuantity gas) {
        Optional<ApparatusItem> vessel = gas.block().vessel().flatMap(v -> procedure.procedure().apparatus(v.value()));
        double others = procedure.quantities().stream().filter(q -> q != gas && q.block().vessel().isPresent()
                        && q.block().vessel().get().value().equals(vessel.map(ApparatusItem::name).orElse("")))
                .flatMap(q -> q.figure(Property.VOLUME).stream()).mapToDouble(Figure::value).sum();
        return vessel.flatMap(ApparatusItem::capacity).map(c -> c.value().si() - others);
    }

    private static Line line(Watched watched, double[] draws) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        double total = 0;
        int overfull = 0;
        int outside = 0;
        for (double value : draws) {
            lowest = Math.min(lowest, value);
            highest = Math.max(highest, value);
            total += value;
            overfull += watched.capacity().filter(c -> value > c).isPresent() ? 1 : 0;
            outside += watched.accepted().filter(a -> !a.holds(value)).isPresent() ? 1 : 0;
        }
        double mean = total / draws.length;
        double squares = 0;
        for (double value : draws) {
            squares += (value - mean) * (value - mean);
        }
        double spread = draws.length < 2 ? 0 : Math.sqrt(squares / (draws.length - 1));
        int over = overfull;
        int out = outside;
        return new Line(watched.name(), watched.question(), watched.figure(), lowest, mean, highest, spread, watched.capacity().map(c -> over),
                watched.accepted().map(a -> out));
    }
}
