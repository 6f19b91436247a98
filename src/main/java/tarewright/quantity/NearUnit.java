package tarewright.quantity;

/**
 * A unit that an unknown one may stand for.
 *
 * @param symbol the unit as printed
 * @param reason why it is offered
 */
public record NearUnit(String symbol, Reason reason) {
    /** Why a unit is offered in place of an unknown one. */
    public enum Reason {
        /** The litre is a capital L, behind a small m: a capital M would be a million times, not a thousandth. */
        MILLI_NOT_MEGA,
        /** The letters are right and their case is not; only one unit has these letters. */
        LETTER_CASE,
        /** Two units have these letters, many powers of ten apart: the author must say which. */
        CASE_DECIDES,
        /** An abbreviation in use that is not the symbol of the unit. */
        ABBREVIATION,
        /** The name of the unit written out. */
        NAME,
        /** Spelled nearly alike. */
        SPELLING
    }
}
