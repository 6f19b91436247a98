package tarewright.chemistry;

/** What is wrong with a text that is not built as an equation is. */
public enum EquationMistake {
    /** Nothing is written. */
    EMPTY,
    /** More characters than an equation may have. */
    TOO_LONG,
    /** No arrow or sign between two sides. */
    NO_SIGN,
    /** Two arrows or signs. */
    TWO_SIGNS,
    /** An arrow that is not one of those known: {@code -->}, {@code =>}, {@code <->}. */
    OTHER_SIGN,
    LEFT_SIDE_EMPTY,
    RIGHT_SIDE_EMPTY,
    /** A plus with nothing before or behind it. */
    EMPTY_TERM,
    /** A number without a formula. */
    COEFFICIENT_ALONE,
    /** A coefficient of nought. */
    ZERO_COEFFICIENT,
    /** A coefficient that is neither whole nor a fraction: {@code 0.5}. */
    DECIMAL_COEFFICIENT,
    /** A coefficient of more than six digits. */
    COEFFICIENT_TOO_LARGE,
    /** A state with no formula before it. */
    STATE_ALONE
}
