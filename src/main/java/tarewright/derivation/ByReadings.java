package tarewright.derivation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
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
    private static final double HALF_WIDTH = Math.sqrt(3);

    private final Figure result;
    private final List<Figure> readings = new ArrayList<>();
    private final List<Gradient.Part> parts = new ArrayList<>();
    private final Set<Figure> behindReadings = Collections.newSetFromMap(new IdentityHashMap<>());

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
            double slope = slope(reading);
            for (Gradient.Part part : reading.gradient().parts()) {
                if (behindReadings.add(part.source())) {
                    order.add(part.source());
                }
                inPot.merge(part.source(), slope * part.derivative(), Double::sum);
            }
        }
        order.forEach(s -> parts.add(new Gradient.Part(s, inPot.get(s))));
        result.gradient().parts().stream().filter(p -> !behindReadings.contains(p.source())).forEach(parts::add);
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

    /** How strongly a reading moves the result, by a small change of it on paper. */
    private double slope(Figure reading) {
        double h = Math.max(Math.abs(reading.value()) * 1e-5, reading.unit().factor() * 1e-7);
        double above = new Again().with(reading, reading.value() + h).value(result);
        double below = new Again().with(reading, reading.value() - h).value(result);
        return (above - below) / (2 * h);
    }

    public Figure result() {
        return result;
    }

    /** Whether any reading goes into the result. */
    public boolean usesReadings() {
        return !readings.isEmpty();
    }

    /** The combined standard uncertainty, in the coherent SI unit, to first order. */
    public double standardUncertainty() {
        return Math.sqrt(parts.stream().mapToDouble(p -> p.contribution() * p.contribution()).sum());
    }

    /** The sources that matter most, largest contribution first. */
    public List<Gradient.Part> largest(int howMany) {
        return parts.stream().filter(p -> p.contribution() > 0)
                .sorted(Comparator.comparingDouble(Gradient.Part::contribution).reversed()).limit(howMany).toList();
    }

    /** Draws results of invented students, see {@link PaperClass}; in coherent SI units. */
    public double[] draws(int howMany, SplittableRandom random) {
        PaperClass pot = new PaperClass(readings);
        List<Figure> onPaper = parts.stream().map(Gradient.Part::source).filter(s -> !behindReadings.contains(s)).toList();
        double[] results = new double[howMany];
        for (int i = 0; i < howMany; i++) {
            Again paper = new Again();
            double[] read = pot.draw(random);
            for (int k = 0; k < read.length; k++) {
                paper.with(readings.get(k), read[k]);
            }
            for (Figure source : onPaper) {
                // A set amount keeps its target when it is worked out again, so its error is put in its place.
                paper.with(source, source.value() + source.ownUncertainty() * HALF_WIDTH * (2 * random.nextDouble() - 1));
            }
            results[i] = paper.value(result);
        }
        return results;
    }
}
