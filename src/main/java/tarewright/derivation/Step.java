package tarewright.derivation;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import tarewright.quantity.Rounding;

/**
 * How a figure came about. All values are in coherent SI units. A step can be done again with other values of the figures it
 * starts from, and knows how strongly each of them moves it.
 */
public sealed interface Step {
    /** The figures it starts from, in the order of {@code value}'s arguments. */
    List<Figure> from();

    /** The result for the given values of {@link #from()}. */
    double value(double[] of);

    /** The partial derivative with respect to one of {@link #from()}. */
    double partial(int index, double[] of);

    /** A value that was not worked out here. */
    record Given(double given, Origin origin) implements Step {
        @Override
        public List<Figure> from() {
            return List.of();
        }

        @Override
        public double value(double[] of) {
            return given;
        }

        @Override
        public double partial(int index, double[] of) {
            throw new IndexOutOfBoundsException(index);
        }
    }

    /** A factor of a product with its exponent, not zero. */
    record Power(Figure figure, int exponent) {
        public Power {
            if (exponent == 0) {
                throw new IllegalArgumentException("exponent 0 of " + figure.symbol());
            }
        }
    }

    /** {@code coefficient × ∏ figure^exponent}. */
    record Product(double coefficient, List<Power> powers) implements Step {
        public Product {
            powers = List.copyOf(powers);
        }

        @Override
        public List<Figure> from() {
            return powers.stream().map(Power::figure).toList();
        }

        @Override
        public double value(double[] of) {
            double above = coefficient;
            double below = 1;
            for (int i = 0; i < of.length; i++) {
                int exponent = powers.get(i).exponent();
                if (exponent > 0) {
                    above *= Math.pow(of[i], exponent);
                } else {
                    below *= Math.pow(of[i], -exponent);
                }
            }
            return above / below;
        }

        @Override
        public double partial(int index, double[] of) {
            int exponent = powers.get(index).exponent();
            double result = coefficient * exponent * Math.pow(of[index], exponent - 1.0);
            for (int i = 0; i < of.length; i++) {
                if (i != index) {
                    result *= Math.pow(of[i], powers.get(i).exponent());
                }
            }
            return result;
        }
    }

    /** A summand with its coefficient. */
    record Term(double coefficient, Figure figure) {
    }

    /** {@code Σ coefficient × figure}. */
    record Sum(List<Term> terms) implements Step {
        public Sum {
            terms = List.copyOf(terms);
        }

        @Override
        public List<Figure> from() {
            return terms.stream().map(Term::figure).toList();
        }

        @Override
        public double value(double[] of) {
            double sum = 0;
            for (int i = 0; i < of.length; i++) {
                sum += terms.get(i).coefficient() * of[i];
            }
            return sum;
        }

        @Override
        public double partial(int index, double[] of) {
            return terms.get(index).coefficient();
        }
    }

    /** The smallest or the largest of several figures: the limiting reactant, the largest reading. */
    record Extreme(boolean least, List<Figure> from) implements Step {
        public Extreme {
            from = List.copyOf(from);
        }

        @Override
        public double value(double[] of) {
            return of[chosen(of)];
        }

        @Override
        public double partial(int index, double[] of) {
            return index == chosen(of) ? 1 : 0;
        }

        /** Which of {@link #from()} it is, for the figures' own values. */
        public Figure chosen() {
            return from.get(chosen(from.stream().mapToDouble(Figure::value).toArray()));
        }

        private int chosen(double[] of) {
            return IntStream.range(0, of.length).boxed()
                    .reduce((a, b) -> (least ? of[b] < of[a] : of[b] > of[a]) ? b : a).orElseThrow();
        }
    }

    /**
     * An amount set by hand on an instrument: the wanted amount, rounded to what the instrument delivers. What the students have in hand
     * depends on the instrument and no longer on how the target was found, so nothing of the target's uncertainty passes.
     */
    record Set(Figure target, Rounding rounding, Reason reason) implements Step {
        @Override
        public List<Figure> from() {
            return List.of(target);
        }

        @Override
        public double value(double[] of) {
            return rounding.apply(of[0]);
        }

        @Override
        public double partial(int index, double[] of) {
            return 0;
        }
    }

    /** What is read off an instrument: the true value to the nearest division. The true value's uncertainty passes. */
    record Read(Figure truth, Rounding rounding) implements Step {
        @Override
        public List<Figure> from() {
            return List.of(truth);
        }

        @Override
        public double value(double[] of) {
            return rounding.apply(of[0]);
        }

        @Override
        public double partial(int index, double[] of) {
            return 1;
        }
    }

    /** A figure taken over from another as it is, under a name of its own. */
    record Same(Figure other) implements Step {
        @Override
        public List<Figure> from() {
            return List.of(other);
        }

        @Override
        public double value(double[] of) {
            return of[0];
        }

        @Override
        public double partial(int index, double[] of) {
            return 1;
        }
    }

    /**
     * A relation that is not a product or a sum: a vapour pressure from a temperature, a density from a strength.
     *
     * @param name a lasting name by which wording finds words for it
     * @param source the reference of the relation
     * @param relation the function, smooth near the figures' values
     */
    record Relation(String name, String source, List<Figure> from, ToDoubleFunction<double[]> relation) implements Step {
        public Relation {
            from = List.copyOf(from);
        }

        @Override
        public double value(double[] of) {
            return relation.applyAsDouble(of);
        }

        /** By a central difference, a hundred-thousandth of the argument to each side. */
        @Override
        public double partial(int index, double[] of) {
            double h = of[index] == 0 ? 1e-6 : Math.abs(of[index]) * 1e-5;
            double[] above = of.clone();
            double[] below = of.clone();
            above[index] += h;
            below[index] -= h;
            return (relation.applyAsDouble(above) - relation.applyAsDouble(below)) / (above[index] - below[index]);
        }
    }
}
