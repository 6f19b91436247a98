package tarewright.safety;

import java.util.Optional;
import tarewright.chemistry.Provenance;

/**
 * Two groups that must not meet, and under which conditions.
 *
 * @param id a lasting name
 * @param setting what must be going on
 * @param products what would form, in the table's words
 * @param gas the formula of the gas that would form
 * @param hazard what it does, in the table's words
 * @param advice what to do instead, in the table's words
 * @param note a remark of the table, or empty
 */
public record PairRule(String id, String groupA, Need needA, String groupB, Need needB, Setting setting, Severity severity,
        String products, Optional<String> gas, String hazard, String advice, String note, Provenance provenance) {
    /** What must be going on for the pair to be dangerous. */
    public enum Setting {
        ANY, HEATED, NEAR_FLAME
    }

    /** How grave it is. */
    public enum Severity {
        /** Good to know; no danger in the amounts of a lesson. */
        INFO,
        /** Under control only: small, dilute, ventilated. */
        CONTROL,
        /** A teacher's demonstration at most. */
        TEACHER_ONLY,
        /** Never. */
        FORBID
    }
}
