package tarewright.quantity;

import java.util.List;

/**
 * Why a text is not the quantity that is wanted. Each has a lasting id and the place of the trouble, as offsets in UTF-16 code
 * units within the text that was read.
 */
public sealed interface QuantityTrouble permits UnitTrouble, NumberTrouble, QuantityTrouble.MissingUnit,
        QuantityTrouble.WrongDimension, QuantityTrouble.BelowAbsoluteZero, QuantityTrouble.RangeBackwards, StrengthTrouble {
    /** A lasting name in lower case with hyphens, such as {@code missing-unit}. */
    String id();

    /** Where the trouble begins. */
    int from();

    /** Where it ends, exclusive. */
    int to();

    /** The same trouble in a longer text, in which the text that was read begins at {@code by}. */
    QuantityTrouble shifted(int by);

    /**
     * A bare number where a unit is needed.
     *
     * @param text the quantity as typed
     * @param suggestions units that would do, the usual first
     */
    record MissingUnit(String text, Dimension wanted, List<String> suggestions, int from, int to)
            implements QuantityTrouble {
        public MissingUnit {
            suggestions = List.copyOf(suggestions);
        }

        @Override
        public String id() {
            return "missing-unit";
        }

        @Override
        public MissingUnit shifted(int by) {
            return new MissingUnit(text, wanted, suggestions, from + by, to + by);
        }
    }

    /**
     * A unit of another kind of quantity.
     *
     * @param unit the unit as printed
     * @param suggestions units of the wanted kind, the usual first
     */
    record WrongDimension(String text, Dimension wanted, Dimension found, String unit, List<String> suggestions,
            int from, int to) implements QuantityTrouble {
        public WrongDimension {
            suggestions = List.copyOf(suggestions);
        }

        @Override
        public String id() {
            return "wrong-dimension";
        }

        @Override
        public WrongDimension shifted(int by) {
            return new WrongDimension(text, wanted, found, unit, suggestions, from + by, to + by);
        }
    }

    /** A thermodynamic temperature of 0 K or less. */
    record BelowAbsoluteZero(String text, double celsius, int from, int to) implements QuantityTrouble {
        @Override
        public String id() {
            return "below-absolute-zero";
        }

        @Override
        public BelowAbsoluteZero shifted(int by) {
            return new BelowAbsoluteZero(text, celsius, from + by, to + by);
        }
    }

    /**
     * A range whose second end is not above its first.
     *
     * @param suggestion the two ends the other way round, as it would be typed
     */
    record RangeBackwards(String text, String suggestion, int from, int to) implements QuantityTrouble {
        @Override
        public String id() {
            return "range-backwards";
        }

        @Override
        public RangeBackwards shifted(int by) {
            return new RangeBackwards(text, suggestion, from + by, to + by);
        }
    }
}
