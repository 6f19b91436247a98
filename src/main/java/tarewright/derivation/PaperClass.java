package tarewright.derivation;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
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
    private final int[][] from;
    private final int[] wanted;

    /** @param figures to be worked out together, so that what they share is shared in each draw */
    public PaperClass(List<Figure> figures) {
        figures.forEach(this::place);
        from = new int[order.size()][];
        for (int i = 0; i < from.length; i++) {
            from[i] = isSet(order.get(i)) ? new int[0] : order.get(i).from().stream().mapToInt(places::get).toArray();
        }
        wanted = figures.stream().mapToInt(places::get).toArray();
    }

    private static boolean isSet(Figure figure) {
        return figure.step() instanceof Step.Set;
    }

    private void place(Figure figure) {
        if (places.containsKey(figure)) {
            return;
        }
        if (!isSet(figure)) {
            figure.from().forEach(this::place);
        }
        places.put(figure, order.size());
        order.add(figure);
    }

    /** One draw: a value for each figure, in the order given, in coherent SI units. */
    public double[] draw(SplittableRandom random) {
        double[] values = new double[order.size()];
        for (int i = 0; i < values.length; i++) {
            Figure figure = order.get(i);
            double value;
            if (figure.step() instanceof Step.Read) {
                value = values[from[i][0]];
            } else if (from[i].length == 0) {
                value = figure.value();
            } else {
                double[] of = new double[from[i].length];
                for (int k = 0; k < of.length; k++) {
                    of[k] = values[from[i][k]];
                }
                value = figure.step().value(of);
            }
            double u = figure.ownUncertainty();
            values[i] = u == 0 ? value : value + u * HALF_WIDTH * (2 * random.nextDouble() - 1);
        }
        double[] results = new double[wanted.length];
        for (int i = 0; i < results.length; i++) {
            results[i] = values[wanted[i]];
        }
        return results;
    }
}
