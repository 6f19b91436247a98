package tarewright.procedure.expression;

import java.util.ArrayList;
import java.util.List;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;

/**
 * A value on its way to being a figure. A chain of products stays open as one product and a chain of sums as one sum, so
 * that each becomes one step; a sum inside a product is closed into a figure without a name.
 */
sealed interface Working {
    /** The symbol of a figure that has no name: it is shown by its own working, or, if it was typed, by its value. */
    Symbol UNNAMED = Symbol.words("");

    Dimension dimension();

    Scale scale();

    /** In the coherent SI unit. */
    double value();

    /** As a product that can be multiplied further. */
    Factors factors();

    /** As a sum that can be added to. */
    Terms terms();

    /** The negative. */
    Working negated();

    /**
     * One figure.
     *
     * @param made whether it was made here, so that its step may be taken over under another symbol
     */
    record Whole(Figure figure, boolean made) implements Working {
        @Override
        public Dimension dimension() {
            return figure.dimension();
        }

        @Override
        public Scale scale() {
            return Scale.of(figure.unit());
        }

        @Override
        public double value() {
            return figure.value();
        }

        @Override
        public Factors factors() {
            return new Factors(1, List.of(new Step.Power(figure, 1)), dimension());
        }

        @Override
        public Terms terms() {
            return new Terms(List.of(new Step.Term(1, figure)), scale());
        }

        @Override
        public Working negated() {
            return factors().negated();
        }
    }

    /** A product of powers of figures; of no figures, an exact number. A temperature in a product counts in kelvin. */
    record Factors(double coefficient, List<Step.Power> powers, Dimension dimension) implements Working {
        public Factors {
            powers = List.copyOf(powers);
        }

        static Factors number(double exact) {
            return new Factors(exact, List.of(), Dimension.NONE);
        }

        boolean isNumber() {
            return powers.isEmpty();
        }

        Step.Product step() {
            return new Step.Product(coefficient, powers);
        }

        @Override
        public Scale scale() {
            return Scale.PLAIN;
        }

        @Override
        public double value() {
            return step().value(powers.stream().mapToDouble(p -> p.figure().value()).toArray());
        }

        @Override
        public Factors factors() {
            return this;
        }

        @Override
        public Terms terms() {
            if (powers.size() == 1 && powers.get(0).exponent() == 1) {
                return new Terms(List.of(new Step.Term(coefficient, powers.get(0).figure())), Scale.PLAIN);
            }
            double size = Math.abs(coefficient);
            Figure figure = isNumber() ? Figure.given(UNNAMED, Unit.ONE, size, new Origin.Author())
                    : Figures.of(new Factors(size, powers, dimension), UNNAMED);
            return new Terms(List.of(new Step.Term(coefficient < 0 ? -1 : 1, figure)), Scale.PLAIN);
        }

        @Override
        public Factors negated() {
            return new Factors(-coefficient, powers, dimension);
        }

        Factors times(Factors other) {
            return new Factors(coefficient * other.coefficient, joined(powers, other.powers), dimension.times(other.dimension));
        }

        /** @param other not zero */
        Factors over(Factors other) {
            List<Step.Power> below = other.powers.stream().map(p -> new Step.Power(p.figure(), -p.exponent())).toList();
            return new Factors(coefficient / other.coefficient, joined(powers, below), dimension.over(other.dimension));
        }

        /** @param exponent not zero; below zero only if the value is not zero */
        Factors raised(int exponent) {
            return new Factors(Math.pow(coefficient, exponent),
                    powers.stream().map(p -> new Step.Power(p.figure(), p.exponent() * exponent)).toList(),
                    dimension.power(exponent));
        }

        /**
         * Powers of one figure on the same side of the stroke become one; above and below it they stay, as the author wrote
         * them.
         */
        private static List<Step.Power> joined(List<Step.Power> left, List<Step.Power> right) {
            List<Step.Power> all = new ArrayList<>(left);
            for (Step.Power power : right) {
                int same = -1;
                for (int i = 0; i < all.size() && same < 0; i++) {
                    boolean alike = all.get(i).figure() == power.figure()
                            && Integer.signum(all.get(i).exponent()) == Integer.signum(power.exponent());
                    same = alike ? i : same;
                }
                if (same < 0) {
                    all.add(power);
                } else {
                    all.set(same, new Step.Power(power.figure(), all.get(same).exponent() + power.exponent()));
                }
            }
            return all;
        }
    }

    /** A sum of multiples of figures of one dimension. @param list at least one */
    record Terms(List<Step.Term> list, Scale scale) implements Working {
        public Terms {
            list = List.copyOf(list);
        }

        Step.Sum step() {
            return new Step.Sum(list);
        }

        @Override
        public Dimension dimension() {
            return list.get(0).figure().dimension();
        }

        @Override
        public double value() {
            return step().value(list.stream().mapToDouble(t -> t.figure().value()).toArray());
        }

        @Override
        public Factors factors() {
            return new Whole(Figures.of(this, UNNAMED), true).factors();
        }

        @Override
        public Terms terms() {
            return this;
        }

        @Override
        public Terms negated() {
            return new Terms(list.stream().map(t -> new Step.Term(-t.coefficient(), t.figure())).toList(),
                    scale == Scale.POINT ? Scale.PLAIN : scale);
        }

        /** @param other of the same dimension */
        Terms plus(Terms other, Scale joined) {
            List<Step.Term> all = new ArrayList<>(list);
            all.addAll(other.list);
            return new Terms(all, joined);
        }
    }
}
