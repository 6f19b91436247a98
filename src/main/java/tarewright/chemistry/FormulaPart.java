package tarewright.chemistry;

/**
 * A piece of a formula for typesetting.
 *
 * @param kind what it is
 * @param text a symbol; a bracket; the digits of a number or, in a formula that is only shown, the letter in its place;
 *     the charge with its sign behind ({@code 2−}, {@code +}, with the true minus sign); or the dot {@code ·}
 */
public record FormulaPart(Kind kind, String text) {
    /** Where a piece stands and what it means. */
    public enum Kind {
        SYMBOL,
        OPEN_BRACKET,
        CLOSE_BRACKET,
        /** A count, below the line. */
        SUBSCRIPT,
        /** The charge, above the line. */
        SUPERSCRIPT,
        /** The dot before water of crystallisation or another adduct. */
        DOT,
        /** The count in front of an adduct, on the line. */
        MULTIPLIER
    }
}
