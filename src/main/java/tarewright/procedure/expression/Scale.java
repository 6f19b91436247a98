package tarewright.procedure.expression;

import java.util.Optional;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;

/** What a figure in kelvin is: 20 °C is a point on a scale, between two points lies a difference. */
enum Scale {
    /** A temperature with a place on a scale: of two, only the difference means something. */
    POINT,
    DIFFERENCE,
    /** Not a temperature, or one of which kelvin alone does not say what it is. */
    PLAIN;

    static Scale of(Unit unit) {
        if (!unit.dimension().equals(Dimension.TEMPERATURE)) {
            return PLAIN;
        }
        return !unit.fromZero() ? POINT : unit.symbol().equals("K") ? PLAIN : DIFFERENCE;
    }

    /** What comes of adding or subtracting; empty where that has no meaning. */
    static Optional<Scale> joined(Scale left, Scale right, boolean subtracted) {
        if (right == POINT) {
            return switch (left) {
                case POINT -> subtracted ? Optional.of(DIFFERENCE) : Optional.empty();
                case DIFFERENCE -> subtracted ? Optional.empty() : Optional.of(POINT);
                case PLAIN -> Optional.of(subtracted ? DIFFERENCE : POINT);
            };
        }
        if (left == POINT) {
            return Optional.of(POINT);
        }
        return Optional.of(left == DIFFERENCE && right == DIFFERENCE ? DIFFERENCE : PLAIN);
    }
}
