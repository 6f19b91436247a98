package tarewright.procedure.resolve;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.chemistry.AcidConstant;
import tarewright.chemistry.Formula;
import tarewright.procedure.declare.GraphBlock;
import tarewright.quantity.Unit;

/**
 * Axes to plot on, with what the key draws on them. All numbers are in the units of the axes.
 *
 * @param expected what each deal, or each member of a series, is expected to give: for the key only
 * @param line how what is plotted depends on what is dealt, as the corners of a line: for the key only; empty where nothing computes it
 * @param curve how the line was found, where it is that of a titration
 */
public record ResolvedGraph(GraphBlock block, Axis x, Axis y, List<Point> expected, List<Point> line, Optional<Curve> curve) {
    public ResolvedGraph {
        expected = List.copyOf(expected);
        line = List.copyOf(line);
    }

    public String name() {
        return block.name();
    }

    /**
     * One axis.
     *
     * @param words what it shows, as the author wrote it
     * @param unit that its numbers are in
     * @param scale its numbers; empty where neither an instrument nor a dealt amount nor the author gives a range: the students number it themselves, since any
     *         other range would have to be chosen from the answer
     */
    public record Axis(String words, Unit unit, Optional<Scale> scale) {
    }

    /**
     * The numbers of an axis: a multiple of the step at both ends, the step 1, 2 or 5 times a power of ten.
     *
     * @param decimals that the numbers are written with
     */
    public record Scale(double from, double to, double step, int decimals) {
        private static final int MOST_STEPS = 10;

        /** The shortest scale with at most ten steps that holds a range. @param to above {@code from} */
        static Scale over(double from, double to) {
            double least = (to - from) / MOST_STEPS;
            int power = (int) Math.floor(Math.log10(least)) - 1;
            for (int i = 0; ; i++) {
                BigDecimal step = BigDecimal.valueOf(new int[] {1, 2, 5}[i % 3]).scaleByPowerOfTen(power + i / 3);
                double by = step.doubleValue();
                double first = Math.floor(from / by + 1e-9);
                double last = Math.ceil(to / by - 1e-9);
                if (last - first <= MOST_STEPS) {
                    return new Scale(exact(step, first), exact(step, last), by, Math.max(0, step.stripTrailingZeros().scale()));
                }
            }
        }

        private static double exact(BigDecimal step, double times) {
            return step.multiply(BigDecimal.valueOf(times)).doubleValue();
        }

        /** The numbers along the axis. */
        public List<Double> ticks() {
            List<Double> all = new ArrayList<>();
            for (int i = 0; i <= Math.round((to - from) / step); i++) {
                all.add(BigDecimal.valueOf(from).add(BigDecimal.valueOf(step).multiply(BigDecimal.valueOf(i))).doubleValue());
            }
            return all;
        }
    }

    /**
     * How the pH goes as a solution runs in.
     *
     * @param dissolved what is put together, each formula once
     * @param stages at the start, halfway to the expected end, at the expected end and at the end of the axis
     * @param constants that the pH stands on, for the weak acids and bases among it
     * @param line in the units of the axes
     */
    public record Curve(List<Formula> dissolved, List<Stage> stages, List<AcidConstant> constants, List<Point> line) {
        public Curve {
            dissolved = List.copyOf(dissolved);
            stages = List.copyOf(stages);
            constants = List.copyOf(constants);
            line = List.copyOf(line);
        }

        /**
         * One moment.
         *
         * @param runIn in the unit of the x axis
         * @param inAll what stands in the flask then, in the same unit
         * @param strengths of what is dissolved, in its order, in mol/L, as if nothing had reacted
         */
        public record Stage(double runIn, double inAll, List<Double> strengths, double pH) {
            public Stage {
                strengths = List.copyOf(strengths);
            }
        }
    }

    /** A point. @param of whose it is: the label of its hand, the name of a member; empty of a corner of the line */
    public record Point(double x, double y, String of) {
    }
}
