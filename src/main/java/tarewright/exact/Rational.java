package tarewright.exact;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An exact fraction in lowest terms, its denominator positive.
 *
 * @param numerator any whole number
 * @param denominator not zero; a negative one moves its sign to the numerator
 */
public record Rational(BigInteger numerator, BigInteger denominator) implements Comparable<Rational> {
    public static final Rational ZERO = of(0);
    public static final Rational ONE = of(1);

    /** A number longer than this is not one that a person typed. */
    private static final int LONGEST_TEXT = 100;
    private static final Pattern WRITTEN = Pattern.compile("([+-]?[0-9]+)(?:/([0-9]+)|\\.([0-9]+))?");

    public Rational {
        if (denominator.signum() == 0) {
            throw new ArithmeticException("a fraction over zero");
        }
        BigInteger common = numerator.gcd(denominator);
        if (denominator.signum() < 0) {
            common = common.negate();
        }
        numerator = numerator.divide(common);
        denominator = denominator.divide(common);
    }

    public static Rational of(long whole) {
        return of(BigInteger.valueOf(whole));
    }

    public static Rational of(BigInteger whole) {
        return new Rational(whole, BigInteger.ONE);
    }

    /**
     * A fraction of two whole numbers.
     *
     * @throws ArithmeticException if {@code denominator} is zero
     */
    public static Rational of(long numerator, long denominator) {
        return new Rational(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /**
     * Reads {@code 2}, {@code -2/3} or {@code 0.25}, digits ASCII, no spaces; empty for anything else, for a fraction over
     * zero, and for a text of more than a hundred characters.
     */
    public static Optional<Rational> parse(String text) {
        if (text.length() > LONGEST_TEXT) {
            return Optional.empty();
        }
        Matcher written = WRITTEN.matcher(text);
        if (!written.matches()) {
            return Optional.empty();
        }
        if (written.group(3) != null) {
            BigInteger scale = BigInteger.TEN.pow(written.group(3).length());
            return Optional.of(new Rational(new BigInteger(written.group(1) + written.group(3)), scale));
        }
        BigInteger below = written.group(2) == null ? BigInteger.ONE : new BigInteger(written.group(2));
        return below.signum() == 0 ? Optional.empty() : Optional.of(new Rational(new BigInteger(written.group(1)), below));
    }

    public Rational plus(Rational other) {
        return new Rational(numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    public Rational minus(Rational other) {
        return plus(other.negate());
    }

    public Rational times(Rational other) {
        return new Rational(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    /**
     * This divided by another.
     *
     * @throws ArithmeticException if {@code other} is zero
     */
    public Rational over(Rational other) {
        return new Rational(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }

    public Rational negate() {
        return new Rational(numerator.negate(), denominator);
    }

    /** -1, 0 or 1. */
    public int signum() {
        return numerator.signum();
    }

    public boolean isWhole() {
        return denominator.equals(BigInteger.ONE);
    }

    @Override
    public int compareTo(Rational other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }

    /** The nearest double, within one unit in the last place; infinite where no double is large enough. */
    public double doubleValue() {
        return new BigDecimal(numerator).divide(new BigDecimal(denominator), MathContext.DECIMAL128).doubleValue();
    }

    /** {@code 2/3}, or {@code 2} where it is whole. */
    @Override
    public String toString() {
        return isWhole() ? numerator.toString() : numerator + "/" + denominator;
    }
}
