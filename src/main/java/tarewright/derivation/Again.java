package tarewright.derivation;

import java.util.IdentityHashMap;
import java.util.Map;

/** Works a figure out again with some of the figures behind it changed: a student's own reading, a slip, a draw of the class on paper. */
public final class Again {
    private final Map<Figure, Double> changed = new IdentityHashMap<>();
    private final Map<Figure, Double> worked = new IdentityHashMap<>();

    /** Takes a value, in the coherent SI unit, in the place of what a figure says. */
    public Again with(Figure figure, double value) {
        changed.put(figure, value);
        worked.clear();
        worked.putAll(changed);
        return this;
    }

    /** The value of a figure, in the coherent SI unit, under the changes. */
    public double value(Figure figure) {
        Double known = worked.get(figure);
        if (known != null) {
            return known;
        }
        double[] of = new double[figure.from().size()];
        for (int i = 0; i < of.length; i++) {
            of[i] = value(figure.from().get(i));
        }
        double value = figure.step().value(of);
        worked.put(figure, value);
        return value;
    }
}
