package tarewright.chemistry;

/** What is wrong with a text that is not built as an equation is. */
public enum EquationMistake {
    /** Nothing is written. */
    EMPTY("empty"),
    /** No arrow or sign between two sides. */
    NO_SIGN("noSign"),
    /** Two arrows or signs. */
    TWO_SIGNS("twoSigns"),
    /** An arrow that is not one of those known: {@code -->}, {@code =>}, {@code <->}. */
    OTHER_SIGN("otherSign"),
    /** No term before the sign. */
    LEFT_SIDE_EMPTY("leftSideEmpty"),
    /** No term behind the sign. */
    RIGHT_SIDE_EMPTY("rightSideEmpty"),
    /** A plus with nothing before or behind it. */
    EMPTY_TERM("emptyTerm"),
    /** A number without a formula. */
    COEFFICIENT_ALONE("coefficientAlone"),
    /** A coefficient of nought. */
    ZERO_COEFFICIENT("zeroCoefficient"),
    /** A coefficient that is neither whole nor a fraction: {@code 0.5}. */
    DECIMAL_COEFFICIENT("decimalCoefficient"),
    /** A coefficient of more than six digits. */
    COEFFICIENT_TOO_LARGE("coefficientTooLarge"),
    /** A state with no formula before it. */
    STATE_ALONE("stateAlone");

    private final String field;

    EquationMistake(String field) {
        this.field = field;
    }

    /** The name under which the words about it find the piece of text: each mistake has words of its own. */
    public String field() {
        return field;
    }
}
