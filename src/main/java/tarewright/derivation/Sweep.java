package tarewright.derivation;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Figures worked out again as one of those behind them takes other values, without rounding: what is set and what is read keeps the value that is aimed at, so
 * that a line through the results is the law and not its steps.
 */
public final class Sweep {
    private final List<Figure> watched;
    private final Map<Figure, Boolean> moving = new IdentityHashMap<>();
    private final List<Figure> order = new ArrayList<>();
    private final Figure moved;

    /**
     * @param moved the figure that takes other values
     * @param watched what is worked out from it
     */
    public Sweep(Figure moved, List<Figure> watched) {
        this.moved = moved;
        this.watched = List.copyOf(watched);
        moving.put(moved, true);
        this.watched.forEach(this::place);
    }

    private boolean place(Figure figure) {
        Boolean before = moving.get(figure);
        if (before != null) {
            return before;
        }
        boolean moves = false;
        for (Figure each : figure.from()) {
            moves |= place(each);
        }
        moving.put(figure, moves);
        if (moves) {
            order.add(figure);
        }
        return moves;
    }

    /** Whether every watched figure depends on the one that is moved. */
    public boolean movesAll() {
        return watched.stream().allMatch(moving::get);
    }

    /** The watched figures, in their order, in coherent SI units. @param value of the moved figure, in its coherent SI unit */
    public double[] at(double value) {
        Map<Figure, Double> values = new IdentityHashMap<>();
        values.put(moved, value);
        for (Figure figure : order) {
            double[] of = figure.from().stream().mapToDouble(f -> values.getOrDefault(f, f.value())).toArray();
            boolean rounded = figure.step() instanceof Step.Set || figure.step() instanceof Step.Read;
            values.put(figure, rounded ? of[0] : figure.step().value(of));
        }
        return watched.stream().mapToDouble(f -> values.getOrDefault(f, f.value())).toArray();
    }
}
