package tarewright.derivation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * A result that is worked from readings, as students get it. Two sides are kept apart. In the pot, every amount, strength and circumstance has its true value, off by an
 * unknown error, and the readings follow from it. On paper, the readings go into the formula, and whatever else is in it is taken at its face value. A pipette that delivers too
 * much thus shows in the titre and not in the volume that is divided by: its error counts, once.
 *
 * <p>A source that no reading knows of (a strength that stands only in the formula) counts with its uncertainty as usual.
 */
public final class ByReadings {
    private final Figure result;
    private final List<Figure> readings = new ArrayList<>();
    private final Set<Figure> behindReadings = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Gradient gradient;

    /**
     * @param result worked from the readings
     * @param all the procedure's readings; those that the result does not use are left aside
     */
    public ByReadings(Figure result, Collection<Figure> all) {
        this.result = result;
        Set<Figure> known = Collections.newSetFromMap(new IdentityHashMap<>());
        known.addAll(all);
        collect(result, known, Collections.newSetFromMap(new IdentityHashMap<>()));
        Map<Figure, Double> inPot = new IdentityHashMap<>();
        List<Figure> order = new ArrayList<>();
        for (Figure reading : readings) {
            double slope = slope(result, reading, others(reading));
            for (Gradient.Part part : reading.gradient().parts()) {
                if (behindReadings.add(part.source())) {
                    order.add(part.source());
                }
                inPot.merge(part.source(), slope * part.derivative(), Double::sum);
            }
        }
        List<Gradient.Part> parts = new ArrayList<>();
        order.forEach(s -> parts.add(new Gradient.Part(s, inPot.get(s))));
        result.gradient().parts().stream().filter(p -> !behindReadings.contains(p.source())).forEach(parts::add);
        gradient = new Gradient(parts);
    }

    private void collect(Figure figure, Set<Figure> known, Set<Figure> seen) {
        if (!seen.add(figure)) {
            return;
        }
        // A mean or a difference is gone through to the single readings, each with an error of its own.
        if (known.contains(figure) && !(figure.step() instanceof Step.Sum)) {
            readings.add(figure);
        } else {
            figure.from().forEach(f -> collect(f, known, seen));
        }
    }

    /** No reading moves another on paper, even where in the pot one follows from the other: an end temperature from the one at the start. */
    private Map<Figure, Double> others(Figure reading) {
        Map<Figure, Double> still = new IdentityHashMap<>();
        readings.stream().filter(r -> r != reading).forEach(r -> still.put(r, 0.0));
        return still;
    }

    /** How strongly a reading moves a figure on paper, by the chain rule. @param worked slopes already known, added to */
    private static double slope(Figure figure, Figure reading, Map<Figure, Double> worked) {
        if (figure == reading) {
            return 1;
        }
        Double before = worked.get(figure);
        if (before != null) {
            return before;
        }
        double[] of = figure.from().stream().mapToDouble(Figure::value).toArray();
        double slope = 0;
        for (int i = 0; i < of.length; i++) {
            double inner = slope(figure.from().get(i), reading, worked);
            // Most figures do not know of the reading: no partial derivative is worked out for them.
            if (inner != 0) {
                slope += figure.step().partial(i, of) * inner;
            }
        }
        worked.put(figure, slope);
        return slope;
    }

    public Figure result() {
        return result;
    }

    /** The combined standard uncertainty, in the coherent SI unit, to first order. */
    public double standardUncertainty() {
        return gradient.standardUncertainty();
    }

    /** The sources that matter most, largest contribution first. */
    public List<Gradient.Part> largest(int howMany) {
        return gradient.largest(howMany);
    }

    /** Draws results of invented students, see {@link PaperClass}; in coherent SI units. */
    public double[] draws(int howMany, SplittableRandom random) {
        PaperClass pot = new PaperClass(readings);
        PaperClass paper = new PaperClass(List.of(result), readings, behindReadings);
        double[] results = new double[howMany];
        for (int i = 0; i < howMany; i++) {
            results[i] = paper.draw(random, pot.draw(random))[0];
        }
        return results;
    }
}
