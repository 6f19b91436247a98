package tarewright.quantity;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Why a text is not a unit. */
public sealed interface UnitTrouble extends QuantityTrouble {
    @Override
    UnitTrouble shifted(int by);

    /**
     * Not in the table of units, neither as it stands nor as one of the spellings that the table reads.
     *
     * @param text the unknown unit alone, without the rest of a compound
     * @param suggestions units that it may stand for, the likeliest first; often one, sometimes none
     * @param reason why the first is offered; empty where there is none
     */
    record Unknown(String text, List<String> suggestions, Optional<NearUnit.Reason> reason, int from, int to)
            implements UnitTrouble {
        public Unknown {
            suggestions = List.copyOf(suggestions);
        }

        static Unknown of(String text, List<NearUnit> near, int from) {
            return new Unknown(text, near.stream().map(NearUnit::symbol).toList(),
                    near.stream().findFirst().map(NearUnit::reason), from, from + text.length());
        }

        @Override
        public String id() {
            return "unknown-unit";
        }

        @Override
        public Unknown shifted(int by) {
            return new Unknown(text, suggestions, reason, from + by, to + by);
        }

        /**
         * One list of units, under the name that says why they are offered: {@code litre}, {@code byCase} (the author must say
         * which), {@code ofKind} (the usual ones of the wanted kind) or {@code suggestions}; the others are empty.
         */
        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text, "litre", offered("litre"), "byCase", offered("byCase"), "ofKind", offered("ofKind"),
                    "suggestions", offered("suggestions"));
        }

        private List<String> offered(String name) {
            String right = reason.map(given -> switch (given) {
                case MILLI_NOT_MEGA -> "litre";
                case CASE_DECIDES -> "byCase";
                case USUAL -> "ofKind";
                case LETTER_CASE, ABBREVIATION, NAME, SPELLING -> "suggestions";
            }).orElse("suggestions");
            return name.equals(right) ? suggestions : List.of();
        }
    }

    /**
     * Not built as a unit is: two strokes, a bracket left open, an exponent out of range, more than one reading.
     *
     * @param text the whole unit as typed
     * @param suggestion the unit as it should be written, where there is one reading that is likely meant
     */
    record BadSyntax(String text, Optional<String> suggestion, int from, int to) implements UnitTrouble {
        @Override
        public String id() {
            return "bad-unit-syntax";
        }

        @Override
        public BadSyntax shifted(int by) {
            return new BadSyntax(text, suggestion, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("text", text, "suggestion", suggestion);
        }
    }
}
