package tarewright.chemistry;

import java.util.Optional;

/** The state of a species in an equation, as the letters behind its formula say. */
public enum State {
    SOLID("s"),
    LIQUID("l"),
    GAS("g"),
    AQUEOUS("aq");

    private final String letters;

    State(String letters) {
        this.letters = letters;
    }

    /** The letters that stand between the brackets: {@code s}, {@code l}, {@code g} or {@code aq}. */
    public String letters() {
        return letters;
    }

    public static Optional<State> of(String letters) {
        for (State state : values()) {
            if (state.letters.equals(letters)) {
                return Optional.of(state);
            }
        }
        return Optional.empty();
    }
}
