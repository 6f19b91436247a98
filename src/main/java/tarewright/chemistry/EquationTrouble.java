package tarewright.chemistry;

/**
 * Why a text is not an equation; a trouble of a formula in it is one of these too. {@link #from()} and {@link #to()} are
 * offsets of the smallest stretch that shows it, in UTF-16 units from the start of the text that was read.
 */
public sealed interface EquationTrouble permits FormulaTrouble, EquationTrouble.BadEquationSyntax,
        EquationTrouble.UnknownState, EquationTrouble.TooManySpecies, EquationTrouble.SpeciesGivenTwice,
        EquationTrouble.SpeciesOnBothSides {
    /** A lasting name such as {@code unknown-element}. */
    String id();

    int from();

    int to();

    /** The same trouble in a longer text that has {@code by} units before this one. */
    EquationTrouble shifted(int by);

    /**
     * A text that is not built as an equation is.
     *
     * @param reason what is wrong
     * @param piece the text that shows it; may be empty
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
    }
}
