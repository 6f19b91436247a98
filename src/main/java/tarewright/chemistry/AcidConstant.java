package tarewright.chemistry;

/**
 * One step in which an acid gives up a proton.
 *
 * @param name of the acid, or of the base for {@link Kind#BASE}
 * @param acid formula with the proton
 * @param base formula without it
 * @param step 1 for the first proton of the acid
 * @param pKa at {@code celsius} and zero ionic strength
 * @param celsius temperature
 * @param kind which of the two stands in the bottle
 * @param provenance of the row
 */
public record AcidConstant(String name, String acid, String base, int step, double pKa, double celsius, Kind kind,
        Provenance provenance) {
    /** What the pair is met as. */
    public enum Kind { ACID, BASE, INDICATOR }
}
