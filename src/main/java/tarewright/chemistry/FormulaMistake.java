package tarewright.chemistry;

/** What is wrong with a text that is not built as a formula is. */
public enum FormulaMistake {
    /** Nothing is written. */
    EMPTY,
    /** A dot with nothing before it. */
    NOTHING_BEFORE_DOT,
    /** A dot, or a dot and a number, with nothing behind. */
    NOTHING_AFTER_DOT,
    /** A dot between brackets. */
    DOT_IN_BRACKETS,
    /** A fraction of an adduct: {@code CaSO4.0.5H2O}. */
    FRACTION,
    /** A number in front of the whole. */
    LEADING_NUMBER,
    /** A number that counts nothing. */
    STRAY_NUMBER,
    /** The digit 0 where the letter O must be meant: {@code H2S04}. */
    ZERO_FOR_LETTER_O,
    /** A space within. */
    SPACE,
    /** A caret without a charge behind it. */
    CHARGE_WITHOUT_VALUE,
    /** A charge of zero. */
    CHARGE_ZERO,
    /** A charge with its sign before its number, or with repeated signs. */
    CHARGE_ORDER,
    /** A charge that is not the end of the formula. */
    CHARGE_NOT_LAST,
    /** A plus or minus between two formulas without spaces. */
    SIGN_INSIDE,
    /** A roman number in brackets. */
    OXIDATION_NUMBER,
    /** A state, which belongs to an equation. */
    STATE,
    /** Any other character that no formula has. */
    STRAY_CHARACTER
}
