package tarewright.quantity;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Why a text is not a number. */
public sealed interface NumberTrouble extends QuantityTrouble {
    @Override
    NumberTrouble shifted(int by);

    /**
     * No number stands there, or something stands in it that does not belong to a number.
     *
     * @param text what stands there, shortened where it is long; it may be empty
     * @param suggestion what to write instead, where it is known
     */
    record NotANumber(String text, Optional<String> suggestion, int from, int to) implements NumberTrouble {
        @Override
        public String id() {
            return "not-a-number";
        }

        @Override
        public NotANumber shifted(int by) {
            return new NotANumber(text, suggestion, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text, "suggestion", suggestion);
        }
    }

    /**
     * A comma (or comma and point together) that may part thousands or decimals.
     *
     * @param readings the number in each reading, written so that it has one reading
     */
    record Ambiguous(String text, List<String> readings, int from, int to) implements NumberTrouble {
        public Ambiguous {
            readings = List.copyOf(readings);
        }

        @Override
        public String id() {
            return "ambiguous-number";
        }

        @Override
        public Ambiguous shifted(int by) {
            return new Ambiguous(text, readings, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text, "readings", readings);
        }
    }

    /**
     * Marks between thousands, which a reader in another country would take for decimals: {@code 1.000,5}.
     *
     * @param plain the number without them
     */
    record ThousandsMarked(String text, String plain, int from, int to) implements NumberTrouble {
        @Override
        public String id() {
            return "thousands-marked";
        }

        @Override
        public ThousandsMarked shifted(int by) {
            return new ThousandsMarked(text, plain, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text, "plain", plain);
        }
    }

    /** Over 10³⁰ in size, nearer to zero than 10⁻³⁰ without being zero, or of more than 40 digits. */
    record TooLarge(String text, int from, int to) implements NumberTrouble {
        @Override
        public String id() {
            return "number-too-large";
        }

        @Override
        public TooLarge shifted(int by) {
            return new TooLarge(text, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text);
        }
    }
}
