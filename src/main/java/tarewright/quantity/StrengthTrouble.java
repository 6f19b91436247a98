package tarewright.quantity;

import java.util.List;

/** Why a text is not the strength of a solution. */
public sealed interface StrengthTrouble extends QuantityTrouble {
    @Override
    StrengthTrouble shifted(int by);

    /**
     * A fraction that does not say of what: by mass, by volume, or mass in a volume.
     *
     * @param readings the strength written out in each reading
     */
    record AmbiguousPercent(String text, List<String> readings, int from, int to) implements StrengthTrouble {
        public AmbiguousPercent {
            readings = List.copyOf(readings);
        }

        @Override
        public String id() {
            return "ambiguous-percent";
        }

        @Override
        public AmbiguousPercent shifted(int by) {
            return new AmbiguousPercent(text, readings, from + by, to + by);
        }
    }

    /** More than all of it. */
    record PercentOver100(String text, double percent, int from, int to) implements StrengthTrouble {
        @Override
        public String id() {
            return "percent-over-100";
        }

        @Override
        public PercentOver100 shifted(int by) {
            return new PercentOver100(text, percent, from + by, to + by);
        }
    }

    /** A strength of zero or less. */
    record NotPositive(String text, int from, int to) implements StrengthTrouble {
        @Override
        public String id() {
            return "not-positive";
        }

        @Override
        public NotPositive shifted(int by) {
            return new NotPositive(text, from + by, to + by);
        }
    }

    /**
     * A quantity, but not a strength.
     *
     * @param unit the unit as printed; empty for a bare number
     * @param suggestions notations of a strength
     */
    record NotAStrength(String text, String unit, List<String> suggestions, int from, int to) implements StrengthTrouble {
        public NotAStrength {
            suggestions = List.copyOf(suggestions);
        }

        @Override
        public String id() {
            return "not-a-strength";
        }

        @Override
        public NotAStrength shifted(int by) {
            return new NotAStrength(text, unit, suggestions, from + by, to + by);
        }
    }

    /** Nothing, or more than one word, stands behind {@code as}. */
    record BadAs(String text, int from, int to) implements StrengthTrouble {
        @Override
        public String id() {
            return "bad-as";
        }

        @Override
        public BadAs shifted(int by) {
            return new BadAs(text, from + by, to + by);
        }
    }
}
