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
        /** {@code mL} for {@code Ml}: with a capital M it would be a million litres. */
        MILLI_NOT_MEGA,
        /** The letters are right and their case is not; in no case do they make another unit. */
        LETTER_CASE,
        /** In another case the letters make another unit, many powers of ten apart: the author must say which. */
        CASE_DECIDES,
        /** An abbreviation in use that is not the symbol of the unit. */
        ABBREVIATION,
        /** The name of the unit written out. */
        NAME,
        /** Spelled nearly alike. */
        SPELLING,
        /** Nothing is near; it is a usual unit of the wanted kind. */
        USUAL
    }
}
