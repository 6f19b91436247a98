package tarewright.chemistry;

import java.util.Optional;

/**
 * One step in which an acid gives up a proton.
 *
 * @param name of the acid, or of the base for {@link Kind#BASE}
 * @param acid formula with the proton; empty for an indicator, which is only named
 * @param base formula without it; empty for an indicator
 * @param step 1 for the first proton of the acid
 * @param pKa at {@code celsius} and zero ionic strength
 * @param celsius temperature
 * @param kind what the pair is met as
 * @param note on a value that is doubtful; may be empty
 * @param provenance of the row
 */
public record AcidConstant(String name, Optional<Formula> acid, Optional<Formula> base, int step, double pKa, double celsius,
        Kind kind, String note, Provenance provenance) {
    /** What the pair is met as. */
    public enum Kind { ACID, BASE, INDICATOR }
}
