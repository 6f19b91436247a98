package tarewright.chemistry;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tarewright.exact.IntegerMatrix;
import tarewright.exact.PositiveKernel;
import tarewright.exact.Rational;

/**
 * The simplest reactions that an equation with several solutions is mixed from: each drops out of the balance if one of its
 * species does.
 */
final class Reactions {
    /** More than these help nobody to see the point. */
    private static final int MOST = 6;

    private final IntegerMatrix matrix;
    private final List<List<BigInteger>> found = new ArrayList<>();

    private Reactions(IntegerMatrix matrix) {
        this.matrix = matrix;
    }

    /**
     * Independent reactions, at most six, and none where more than twelve are independent; empty if no coefficients above
     * zero balance the whole.
     */
    static Optional<List<List<BigInteger>>> independent(IntegerMatrix matrix, List<List<BigInteger>> kernel) {
        if (!(PositiveKernel.of(matrix) instanceof PositiveKernel.Found positive)) {
            return Optional.empty();
        }
        if (kernel.size() > 2 * MOST) {
            return Optional.of(List.of());
        }
        Reactions reactions = new Reactions(matrix);
        reactions.takeApart(positive.vector());
        for (List<BigInteger> direction : kernel) {
            reactions.takeApart(raised(direction, positive.vector()));
        }
        return Optional.of(List.copyOf(reactions.found));
    }

    /** A reaction written out, left to right, without what has no part in it. */
    static String written(Equation equation, List<BigInteger> coefficients) {
        int left = equation.left().size();
        return side(equation, coefficients, 0, left) + " " + equation.sign().typed() + " "
                + side(equation, coefficients, left, coefficients.size());
    }

    private static String side(Equation equation, List<BigInteger> coefficients, int from, int to) {
        List<String> terms = new ArrayList<>();
        for (int i = from; i < to; i++) {
            BigInteger coefficient = coefficients.get(i);
            if (coefficient.signum() > 0) {
                terms.add((coefficient.equals(BigInteger.ONE) ? "" : coefficient + " ")
                        + equation.terms().get(i).species().plain());
            }
        }
        return String.join(" + ", terms);
    }

    /** A kernel vector with just so much of a positive one added that nothing in it is negative. */
    private static List<BigInteger> raised(List<BigInteger> direction, List<BigInteger> positive) {
        Rational most = Rational.ZERO;
        for (int i = 0; i < direction.size(); i++) {
            Rational needed = new Rational(direction.get(i).negate(), positive.get(i));
            most = needed.compareTo(most) > 0 ? needed : most;
        }
        return combined(direction, most.denominator(), positive, most.numerator());
    }

    /** Splits a mixture into simplest reactions, keeping those that are new. */
    private void takeApart(List<BigInteger> mixture) {
        List<BigInteger> rest = mixture;
        while (found.size() < MOST && rest.stream().anyMatch(each -> each.signum() > 0)) {
            List<BigInteger> simplest = simplest(rest);
            List<List<BigInteger>> with = new ArrayList<>(found);
            with.add(simplest);
            if (IntegerMatrix.of(with).rank() == with.size()) {
                found.add(simplest);
            }
            rest = without(rest, simplest);
        }
    }

    /** A reaction between some of the species of a mixture that no fewer of them would give. */
    private List<BigInteger> simplest(List<BigInteger> mixture) {
        List<BigInteger> current = mixture;
        while (true) {
            List<BigInteger> mixed = current;
            int[] taking = IntStream.range(0, mixed.size()).filter(i -> mixed.get(i).signum() > 0).toArray();
            List<List<BigInteger>> kernel = restricted(taking).kernel();
            List<BigInteger> direction = spread(kernel.get(0), taking);
            if (kernel.size() == 1) {
                return direction.stream().anyMatch(each -> each.signum() < 0) ? negated(direction) : direction;
            }
            boolean reaction = direction.stream().noneMatch(each -> each.signum() < 0);
            current = reaction ? direction : without(mixed, direction);
        }
    }

    private IntegerMatrix restricted(int[] columns) {
        return new IntegerMatrix(matrix.rows().stream()
                .map(row -> IntStream.of(columns).mapToObj(row::get).toList()).toList(), columns.length);
    }

    private List<BigInteger> spread(List<BigInteger> vector, int[] columns) {
        List<BigInteger> whole = new ArrayList<>(Collections.nCopies(matrix.columns(), BigInteger.ZERO));
        for (int i = 0; i < columns.length; i++) {
            whole.set(columns[i], vector.get(i));
        }
        return whole;
    }

    /** So much of a direction, which has a positive entry, taken from a mixture as leaves nothing negative. */
    private static List<BigInteger> without(List<BigInteger> mixture, List<BigInteger> direction) {
        Optional<Rational> most = IntStream.range(0, mixture.size())
                .filter(i -> direction.get(i).signum() > 0)
                .mapToObj(i -> new Rational(mixture.get(i), direction.get(i)))
                .min(Rational::compareTo);
        return combined(mixture, most.orElseThrow().denominator(), direction, most.get().numerator().negate());
    }

    private static List<BigInteger> combined(List<BigInteger> one, BigInteger times,
            List<BigInteger> other, BigInteger otherTimes) {
        List<BigInteger> sum = new ArrayList<>();
        for (int i = 0; i < one.size(); i++) {
            sum.add(one.get(i).multiply(times).add(other.get(i).multiply(otherTimes)));
        }
        return IntegerMatrix.primitive(sum);
    }

    private static List<BigInteger> negated(List<BigInteger> vector) {
        return vector.stream().map(BigInteger::negate).toList();
    }
}
