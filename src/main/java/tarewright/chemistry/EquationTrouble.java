package tarewright.chemistry;

import java.util.Map;

/**
 * Why a text is not an equation; a trouble of a formula in it is one of these too. {@link #from()} and {@link #to()} are
 * offsets of the smallest stretch that shows it, in UTF-16 units from the start of the text that was read.
 */
public sealed interface EquationTrouble permits FormulaTrouble, EquationTrouble.BadEquationSyntax,
        EquationTrouble.EquationTooLong, EquationTrouble.UnknownState, EquationTrouble.TooManySpecies,
        EquationTrouble.SpeciesGivenTwice, EquationTrouble.SpeciesOnBothSides {
    /** A lasting name such as {@code unknown-element}. */
    String id();

    int from();

    int to();

    /** The same trouble in a longer text that has {@code by} units before this one. */
    EquationTrouble shifted(int by);

    /** What the words about it may name, by the name of the placeholder; a name without a value may be missing. */
    Map<String, Object> fields();

    /**
     * A text that is not built as an equation is.
     *
     * @param reason what is wrong
     * @param piece the text that shows it, shortened where it is long; empty only where nothing is written at all
     */
    record BadEquationSyntax(EquationMistake reason, String piece, int from, int to) implements EquationTrouble {
        @Override
        public String id() {
            return "bad-equation-syntax";
        }

        @Override
        public BadEquationSyntax shifted(int by) {
            return new BadEquationSyntax(reason, piece, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of(reason.field(), piece);
        }
    }

    /** More characters than an equation may have. */
    record EquationTooLong(int length, int limit, int from, int to) implements EquationTrouble {
        @Override
        public String id() {
            return "equation-too-long";
        }

        @Override
        public EquationTooLong shifted(int by) {
            return new EquationTooLong(length, limit, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("length", length, "limit", limit);
        }
    }

    /** Letters in brackets behind a formula that are no state. */
    record UnknownState(String state, int from, int to) implements EquationTrouble {
        @Override
        public String id() {
            return "unknown-state";
        }

        @Override
        public UnknownState shifted(int by) {
            return new UnknownState(state, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("state", state);
        }
    }

    /** More species than any equation has. */
    record TooManySpecies(int count, int limit, int from, int to) implements EquationTrouble {
        @Override
        public String id() {
            return "too-many-species";
        }

        @Override
        public TooManySpecies shifted(int by) {
            return new TooManySpecies(count, limit, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("count", count, "limit", limit);
        }
    }

    /** A species that stands twice on one side; {@code otherFrom} to {@code otherTo} is where it stood first. */
    record SpeciesGivenTwice(String species, int from, int to, int otherFrom, int otherTo) implements EquationTrouble {
        @Override
        public String id() {
            return "species-given-twice";
        }

        @Override
        public SpeciesGivenTwice shifted(int by) {
            return new SpeciesGivenTwice(species, from + by, to + by, otherFrom + by, otherTo + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("species", species);
        }
    }

    /** A species on the right that stands on the left too; {@code otherFrom} to {@code otherTo} is where. */
    record SpeciesOnBothSides(String species, int from, int to, int otherFrom, int otherTo) implements EquationTrouble {
        @Override
        public String id() {
            return "species-on-both-sides";
        }

        @Override
        public SpeciesOnBothSides shifted(int by) {
            return new SpeciesOnBothSides(species, from + by, to + by, otherFrom + by, otherTo + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("species", species);
        }
    }
}
