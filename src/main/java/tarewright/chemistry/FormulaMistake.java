package tarewright.chemistry;

/** What is wrong with a text that is not built as a formula is. */
public enum FormulaMistake {
    /** Nothing is written. */
    EMPTY("empty"),
    /** A dot with nothing before it. */
    NOTHING_BEFORE_DOT("nothingBeforeDot"),
    /** A dot, or a dot and a number, with nothing behind. */
    NOTHING_AFTER_DOT("nothingAfterDot"),
    /** A dot between brackets. */
    DOT_IN_BRACKETS("dotInBrackets"),
    /** A number of an adduct that is no whole number of hundredths or of a coarser fraction. */
    FRACTION("fraction"),
    /** A number in front of the whole. */
    LEADING_NUMBER("leadingNumber"),
    /** A number that counts nothing. */
    STRAY_NUMBER("strayNumber"),
    /** The digit 0 where the letter O must be meant: {@code H2S04}. */
    ZERO_FOR_LETTER_O("zeroForLetterO"),
    /** A space within. */
    SPACE("space"),
    /** A caret without a charge behind it. */
    CHARGE_WITHOUT_VALUE("chargeWithoutValue"),
    /** A charge of zero. */
    CHARGE_ZERO("chargeZero"),
    /** A charge with its sign before its number, or with repeated signs. */
    CHARGE_ORDER("chargeOrder"),
    /** A charge that is not the end of the formula. */
    CHARGE_NOT_LAST("chargeNotLast"),
    /** A plus or minus between two formulas without spaces. */
    SIGN_INSIDE("signInside"),
    /** A roman number in brackets. */
    OXIDATION_NUMBER("oxidationNumber"),
    /** A state, which belongs to an equation. */
    STATE("state"),
    /** Any other character that no formula has. */
    STRAY_CHARACTER("strayCharacter");

    private final String field;

    FormulaMistake(String field) {
        this.field = field;
    }

    /** The name under which the words about it find the piece of text: each mistake has words of its own. */
    public String field() {
        return field;
    }
}
