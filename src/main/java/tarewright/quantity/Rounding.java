package tarewright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Rounding to what an instrument delivers or shows: a whole number of its divisions.
 *
 * @param direction which way
 * @param divisionSi one division, in the coherent SI unit of the quantity; positive and finite
 * @param zeroSi where the divisions count from, in the coherent SI unit: 273.15 for a thermometer divided in °C, else 0
 */
public record Rounding(Direction direction, double divisionSi, double zeroSi) {
    /** Which way a value is rounded. */
    public enum Direction {
        /** To the nearest multiple; half-way away from zero, as a balance or a burette is commonly read. */
        NEAREST,
        /** Toward the greater. */
        UP,
        /** Toward the smaller. */
        DOWN
    }

    /**
     * How far from a multiple, relative to the value (or, near zero, to the division), a value still counts as that multiple:
     * a figure computed in binary arithmetic that should be 0.30 is not rounded up to 0.31.
     */
    private static final double SAME = 1e-9;
    /** The digits of a double that carry meaning after a few operations. */
    private static final MathContext MEANT = new MathContext(15, RoundingMode.HALF_EVEN);
    /** Beyond this many divisions a double cannot tell one from the next. */
    private static final double MOST = 1e15;

    public Rounding {
        if (!(divisionSi > 0) || Double.isInfinite(divisionSi)) {
            throw new IllegalArgumentException("division " + divisionSi);
        }
    }

    public Rounding(Direction direction, double divisionSi) {
        this(direction, divisionSi, 0);
    }

    /** Rounding to a division typed in a unit: half a degree Celsius counts from 0 °C. */
    public static Rounding of(Direction direction, double division, Unit unit) {
        return new Rounding(direction, division * unit.factor(), unit.zero());
    }

    /**
     * The value rounded to a whole number of divisions. The product of that number and the division is formed in decimal, so
     * that three divisions of 0.1 are 0.3 exactly as typed.
     *
     * @param si a finite value in the coherent SI unit; one of 10¹⁵ divisions or more is returned as it is
     */
    public double apply(double si) {
        double count = (si - zeroSi) / divisionSi;
        if (!(Math.abs(count) < MOST)) {
            return si;
        }
        BigDecimal whole = BigDecimal.valueOf((long) whole(count));
        return decimal(divisionSi).multiply(whole).add(decimal(zeroSi)).doubleValue();
    }

    /** Whether the value is a whole number of divisions, as nearly as arithmetic in doubles can tell. */
    public boolean isMultiple(double si) {
        return same((si - zeroSi) / divisionSi);
    }

    private double whole(double count) {
        if (same(count)) {
            return Math.rint(count);
        }
        return switch (direction) {
            case NEAREST -> Math.signum(count) * Math.floor(Math.abs(count) + 0.5 + slack(count));
            case UP -> Math.ceil(count);
            case DOWN -> Math.floor(count);
        };
    }

    private static boolean same(double count) {
        return Math.abs(count - Math.rint(count)) <= slack(count);
    }

    /** Of a large count the relative slack would swallow whole divisions: it stops at a hundredth of one. */
    private static double slack(double count) {
        return Math.min(0.01, SAME * Math.max(1, Math.abs(count)));
    }

    private static BigDecimal decimal(double value) {
        return new BigDecimal(Double.toString(value)).round(MEANT);
    }
}
