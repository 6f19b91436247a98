package tarewright.quantity;

import java.util.OptionalDouble;

/**
 * A quantity as an author typed it: the digits carry the author's significant figures.
 *
 * @param number the number as typed, without its sign's typographic variants: {@code 0.20}, {@code -3.5}, {@code 1.0e-3}
 * @param value in {@code unit}; of a range its lower end, of limits their middle
 * @param unit the unit, {@link Unit#ONE} where none was typed
 * @param explicitUnit whether a unit was typed
 * @param plusMinus the half-width of the limits {@code 0.20 ± 0.01 g}, in {@code unit}, positive
 * @param upTo the upper end of the range {@code 5 to 10 mL}, in {@code unit}
 * @param decimals the decimal places typed: 2 for {@code 0.20}, 0 for {@code 25}, −3 for {@code 1e3}
 * @param significantDigits the significant figures typed, at least 1; zeros at the end of a whole number count, since they
 *     were typed ({@code 100} has three, {@code 1e2} has one)
 */
public record Typed(String number, double value, Unit unit, boolean explicitUnit, OptionalDouble plusMinus,
        OptionalDouble upTo, int decimals, int significantDigits) {
    /** The value in the coherent SI unit. */
    public double si() {
        return unit.toSi(value);
    }

    /** The upper end of the range in the coherent SI unit. */
    public OptionalDouble upToSi() {
        return upTo.isPresent() ? OptionalDouble.of(unit.toSi(upTo.getAsDouble())) : upTo;
    }

    /** The half-width of the limits in the coherent SI unit: a difference, so that the zero of °C plays no part. */
    public OptionalDouble plusMinusSi() {
        return plusMinus.isPresent() ? OptionalDouble.of(plusMinus.getAsDouble() * unit.factor()) : plusMinus;
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /** One in the last digit typed, in {@code unit}: 0.01 for {@code 0.20}. */
    public double lastDigit() {
        return Math.pow(10, -decimals);
    }

    /** The same digits with a unit that stood behind them. */
    Typed in(Unit other) {
        return new Typed(number, value, other, true, plusMinus, upTo, decimals, significantDigits);
    }
}
