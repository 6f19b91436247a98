package tarewright.safety;

import tarewright.chemistry.Provenance;

/**
 * The standard's answer to an accident with a matter of this statement.
 *
 * @param code the hazard statement
 * @param statement the precautionary statement
 * @param fill what stands in the standard's open place, or empty
 * @param clause the label-element table
 */
public record ResponseRule(String code, Topic topic, String statement, String fill, String clause, Provenance provenance) {
    /** What has happened. */
    public enum Topic {
        EYES, SKIN, CLOTHING, SWALLOWED, INHALED, EXPOSED, SPILL, FIRE
    }
}
