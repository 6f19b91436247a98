package tarewright.quantity;

import java.util.List;
import java.util.Map;

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

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text, "readings", readings);
        }
    }

    /**
     * A quantity, but not a strength.
     *
     * @param suggestions notations of a strength
     */
    record NotAStrength(String text, List<String> suggestions, int from, int to) implements StrengthTrouble {
        public NotAStrength {
            suggestions = List.copyOf(suggestions);
        }

        @Override
        public String id() {
            return "not-a-strength";
        }

        @Override
        public NotAStrength shifted(int by) {
            return new NotAStrength(text, suggestions, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text, "suggestions", suggestions);
        }
    }

    /**
     * Nothing, or more than one word, stands behind {@code as}.
     *
     * @param text what stands there; it may be empty
     */
    record BadAs(String text, int from, int to) implements StrengthTrouble {
        @Override
        public String id() {
            return "no-formula-after-as";
        }

        @Override
        public BadAs shifted(int by) {
            return new BadAs(text, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text);
        }
    }
}
