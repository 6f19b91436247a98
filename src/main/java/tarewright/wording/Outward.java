package tarewright.wording;

import tarewright.derivation.Figure;
import tarewright.quantity.Rounding;
import tarewright.quantity.Unit;

/**
 * A range around a figure as it is printed: to the figure's last digit, away from the value, so that nobody loses a mark by how it is printed.
 *
 * @param from in the unit
 * @param to in the unit
 * @param unit that of the figure
 * @param decimals to which both are shown
 */
public record Outward(double from, double to, Unit unit, int decimals) {
    /** @param from in the coherent SI unit @param to likewise */
    public static Outward of(Figure figure, double from, double to) {
        int decimals = Numbers.decimals(figure);
        return new Outward(rounded(figure.unit().fromSi(from), decimals, Rounding.Direction.DOWN),
                rounded(figure.unit().fromSi(to), decimals, Rounding.Direction.UP), figure.unit(), decimals);
    }

    private static double rounded(double value, int decimals, Rounding.Direction direction) {
        return new Rounding(direction, Math.pow(10, -decimals)).apply(value);
    }
}
