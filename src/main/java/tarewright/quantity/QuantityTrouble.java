package tarewright.quantity;

import java.util.List;
import java.util.Map;

/**
 * Why a text is not the quantity that is wanted. Each has a lasting id and the place of the trouble, as offsets in UTF-16 code
 * units within the text that was read.
 */
public sealed interface QuantityTrouble permits UnitTrouble, NumberTrouble, StrengthTrouble, QuantityTrouble.MissingUnit,
        QuantityTrouble.WrongDimension, QuantityTrouble.BelowAbsoluteZero, QuantityTrouble.RangeBackwards,
        QuantityTrouble.NotPositive, QuantityTrouble.PercentOver100 {
    /** A lasting name in lower case with hyphens, such as {@code missing-unit}. */
    String id();

    /** Where the trouble begins. */
    int from();

    /** Where it ends, exclusive. */
    int to();

    /** The same trouble in a longer text, in which the text that was read begins at {@code by}. */
    QuantityTrouble shifted(int by);

    /**
     * The typed fields by name, for the words: each a String, a number, an Optional of one, or a List of Strings. A dimension is
     * given by its {@link Kinds#name name}.
     */
    Map<String, Object> fields();

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

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text, "wanted", Kinds.name(wanted), "suggestions", suggestions);
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

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text, "wanted", Kinds.name(wanted), "found", Kinds.name(found), "unit", unit,
                    "suggestions", suggestions);
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

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text, "celsius", Digits.decimals(celsius, 2));
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

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text, "suggestion", suggestion);
        }
    }

    /** Zero or less, where only more than nothing makes sense. */
    record NotPositive(String text, int from, int to) implements QuantityTrouble {
        @Override
        public String id() {
            return "not-positive";
        }

        @Override
        public NotPositive shifted(int by) {
            return new NotPositive(text, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text);
        }
    }

    /** A part of a whole that is more than the whole. */
    record PercentOver100(String text, double percent, int from, int to) implements QuantityTrouble {
        @Override
        public String id() {
            return "percent-over-100";
        }

        @Override
        public PercentOver100 shifted(int by) {
            return new PercentOver100(text, percent, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text, "percent", percent);
        }
    }
}
