package tarewright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.stream.IntStream;

/**
 * Numbers as text: a decimal point, an ASCII minus sign, no grouping, no exponent.
 *
 * <p>A double is rounded from its shortest decimal form at 15 digits, so that 0.15 (which binary stores a little below) rounds
 * as 0.15 does on paper.
 */
public final class Digits {
    private static final MathContext MEANT = new MathContext(15, RoundingMode.HALF_EVEN);

    private Digits() {
    }

    /**
     * With a number of decimal places, half-way away from zero.
     *
     * @param decimals places behind the point; below zero rounds to tens, hundreds …, whose zeros are then written
     */
    public static String decimals(double value, int decimals) {
        return decimals(value, decimals, RoundingMode.HALF_UP);
    }

    /** As {@link #decimals(double, int)}, half-way to the even digit. */
    public static String decimalsHalfEven(double value, int decimals) {
        return decimals(value, decimals, RoundingMode.HALF_EVEN);
    }

    /** With a number of significant figures, half-way away from zero. Zero is written with as many places: 0.00 for 3. */
    public static String significant(double value, int figures) {
        return significant(exact(value), figures, RoundingMode.HALF_UP);
    }

    /** As {@link #significant(double, int)}, half-way to the even digit. */
    public static String significantHalfEven(double value, int figures) {
        return significant(exact(value), figures, RoundingMode.HALF_EVEN);
    }

    /**
     * In powers of ten, half-way away from zero: {@code 6.02e23} for 3 figures, {@code 0e0} for zero to one.
     *
     * @param figures at least 1
     */
    public static String scientific(double value, int figures) {
        BigDecimal rounded = exact(value).round(new MathContext(figures, RoundingMode.HALF_UP));
        int power = rounded.signum() == 0 ? 0 : leadingPower(rounded);
        return plain(rounded.movePointLeft(power).setScale(figures - 1, RoundingMode.UNNECESSARY)) + "e" + power;
    }

    /** The decimal places that a sum or a difference keeps: the fewest of its terms. */
    public static int decimalsOfSum(int... decimals) {
        return IntStream.of(decimals).min().orElseThrow();
    }

    /** The significant figures that a product or a quotient keeps: the fewest of its factors, exact numbers left out. */
    public static int figuresOfProduct(int... figures) {
        return IntStream.of(figures).min().orElseThrow();
    }

    /**
     * The decimal places at which the leading significant digit of a standard uncertainty stands: 2 for 0.034, −1 for 23.
     *
     * @param uncertainty positive and finite
     */
    public static int decimalsFor(double uncertainty) {
        return decimalsFor(uncertainty, 1);
    }

    /**
     * The decimal places of the last digit kept of a standard uncertainty given to {@code figures} digits, at most two as a
     * rule (JCGM 100:2008, 7.2.6).
     */
    public static int decimalsFor(double uncertainty, int figures) {
        if (!(uncertainty > 0) || Double.isInfinite(uncertainty)) {
            throw new IllegalArgumentException("uncertainty " + uncertainty);
        }
        BigDecimal rounded = exact(uncertainty).round(new MathContext(figures, RoundingMode.HALF_UP));
        return figures - 1 - leadingPower(rounded);
    }

    /** The decimal places that {@code figures} significant figures of a value reach to; for zero, {@code figures − 1}. */
    public static int decimalsOfSignificant(double value, int figures) {
        if (value == 0) {
            return figures - 1;
        }
        BigDecimal rounded = exact(value).round(new MathContext(figures, RoundingMode.HALF_UP));
        return figures - 1 - leadingPower(rounded);
    }

    /**
     * The significant figures of a number as typed, at least 1. Zeros before the first other digit do not count; zeros at the end
     * do, since they were typed, also those of a whole number.
     *
     * @param typed a number, with {@code .} or {@code ,} and perhaps an exponent behind {@code e}
     */
    public static int significantOf(String typed) {
        int exponent = Math.max(typed.indexOf('e'), typed.indexOf('E'));
        String mantissa = exponent < 0 ? typed : typed.substring(0, exponent);
        String digits = mantissa.chars().filter(c -> c >= '0' && c <= '9')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
        int first = 0;
        while (first < digits.length() && digits.charAt(first) == '0') {
            first++;
        }
        return Math.max(1, digits.length() - first);
    }

    private static String decimals(double value, int decimals, RoundingMode mode) {
        return plain(exact(value).setScale(decimals, mode));
    }

    private static String significant(BigDecimal value, int figures, RoundingMode mode) {
        if (figures < 1) {
            throw new IllegalArgumentException("figures " + figures);
        }
        if (value.signum() == 0) {
            return plain(BigDecimal.ZERO.setScale(figures - 1));
        }
        BigDecimal rounded = value.round(new MathContext(figures, mode));
        return plain(rounded.setScale(figures - 1 - leadingPower(rounded), RoundingMode.UNNECESSARY));
    }

    private static String plain(BigDecimal value) {
        return value.scale() < 0 ? value.setScale(0).toPlainString() : value.toPlainString();
    }

    /** The power of ten of the first digit: −2 for 0.034. */
    private static int leadingPower(BigDecimal value) {
        return value.precision() - value.scale() - 1;
    }

    private static BigDecimal exact(double value) {
        return new BigDecimal(Double.toString(value)).round(MEANT);
    }
}
