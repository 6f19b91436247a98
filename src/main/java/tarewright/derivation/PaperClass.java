package tarewright.derivation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * A class on paper: figures worked out again and again, each time with errors of its own for every instrument, table value and circumstance.
 *
 * <p>Errors are drawn from rectangular distributions of the stated standard uncertainty. What was set by hand keeps its target; what is read off is the true
 * value with the error of the reading, which already holds the rounding to a division.
 */
public final class PaperClass {
    private static final double HALF_WIDTH = Math.sqrt(3);

    private final List<Figure> order = new ArrayList<>();
    private final Map<Figure, Integer> places = new IdentityHashMap<>();
    private final Set<Figure> exact;
    private final int known;
    private final int[][] from;
    private final int[] wanted;

    /** @param figures to be worked out together, so that what they share is shared in each draw */
    public PaperClass(List<Figure> figures) {
        this(figures, List.of(), Set.of());
    }

    /**
     * @param known figures whose values are handed in with each draw
     * @param exact figures taken at their face value, told apart by identity
     */
    PaperClass(List<Figure> figures, List<Figure> known, Set<Figure> exact) {
        this.exact = exact;
        this.known = known.size();
        for (Figure figure : known) {
            places.put(figure, order.size());
            order.add(figure);
        }
        figures.forEach(this::place);
        from = new int[order.size()][];
        for (int i = this.known; i < from.length; i++) {
            from[i] = behind(order.get(i)).stream().mapToInt(places::get).toArray();
        }
        wanted = figures.stream().mapToInt(places::get).toArray();
    }

    /** The figures that it is worked out from; none where it keeps its value: what was set by hand keeps its target. */
    private List<Figure> behind(Figure figure) {
        return figure.step() instanceof Step.Set || exact.contains(figure) ? List.of() : figure.from();
    }

    private void place(Figure figure) {
        if (places.containsKey(figure)) {
            return;
        }
        behind(figure).forEach(this::place);
        places.put(figure, order.size());
        order.add(figure);
    }

    /** One draw: a value for each figure, in the order given, in coherent SI units. */
    public double[] draw(SplittableRandom random) {
        return draw(random, new double[0]);
    }

    /** As {@link #draw(SplittableRandom)}. @param handedIn the values of the known figures, in their order */
    double[] draw(SplittableRandom random, double[] handedIn) {
        double[] values = Arrays.copyOf(handedIn, order.size());
        for (int i = known; i < values.length; i++) {
            Figure figure = order.get(i);
            double u = exact.contains(figure) ? 0 : figure.ownUncertainty();
            double value = worked(figure, from[i], values);
            values[i] = u == 0 ? value : value + u * HALF_WIDTH * (2 * random.nextDouble() - 1);
        }
        double[] results = new double[wanted.length];
        for (int i = 0; i < results.length; i++) {
            results[i] = values[wanted[i]];
        }
        return results;
    }

    private static double worked(Figure figure, int[] from, double[] values) {
        if (from.length == 0) {
            return figure.value();
        }
        if (figure.step() instanceof Step.Read) {
            return values[from[0]];
        }
        double[] of = new double[from.length];
        for (int k = 0; k < of.length; k++) {
            of[k] = values[from[k]];
        }
        return figure.step().value(of);
    }
}
