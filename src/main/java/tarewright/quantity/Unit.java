package tarewright.quantity;

/**
 * A unit: what it measures and how much of the coherent SI unit (m, kg, s, K, mol and their products) it is.
 *
 * @param symbol as it is printed: {@code mL}, {@code mol/L}, {@code °C}, {@code J/(g K)}; empty for the plain number one
 * @param dimension what it measures
 * @param factor the coherent SI value of one of it, positive
 * @param zero the coherent SI value of its zero: 273.15 for {@code °C}, 0 for every other unit
 */
public record Unit(String symbol, Dimension dimension, double factor, double zero) {
    /** The plain number one. */
    public static final Unit ONE = new Unit("", Dimension.NONE, 1, 0);

    public Unit {
        if (!(factor > 0) || Double.isInfinite(factor)) {
            throw new IllegalArgumentException("factor of " + symbol + ": " + factor);
        }
    }

    public Unit(String symbol, Dimension dimension, double factor) {
        this(symbol, dimension, factor, 0);
    }

    /** A value in this unit, as a value in the coherent SI unit. */
    public double toSi(double value) {
        return value * factor + zero;
    }

    /** A value in the coherent SI unit, as a value in this unit. */
    public double fromSi(double si) {
        return (si - zero) / factor;
    }

    /** Whether its zero is the zero of the quantity, so that its values may be added and multiplied. */
    public boolean fromZero() {
        return zero == 0;
    }
}
