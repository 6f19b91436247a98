package tarewright.safety;

import java.util.List;
import java.util.OptionalDouble;
import tarewright.chemistry.Provenance;

/**
 * A hazard class of a matter and why.
 *
 * @param hazard the class
 * @param ground by which kind of rule
 * @param limitPercent the limit that was reached, in per cent by mass of the part or, where several parts add up, of the first of
 * them
 * @param due the substances that bring it in, by name
 * @param clause the rule, such as {@code CLP Annex I Table 3.2.3}
 * @param provenance where limit and class come from
 */
public record Assigned(HazardClass hazard, Ground ground, OptionalDouble limitPercent, List<String> due, String clause,
        Provenance provenance) {
    /** Kinds of rule, the strongest first. */
    public enum Ground {
        /** The published class of the undiluted substance. */
        UNDILUTED,
        /** A limit of this substance's own. */
        SPECIFIC_LIMIT,
        /** A limit for every substance of the class. */
        GENERIC_LIMIT,
        /** The sum over acute toxicity estimates. */
        ACUTE_ESTIMATE,
        /** A table of flash points. */
        FLASH_POINT,
        /** No rule: taken over from the undiluted substance as the stricter side. */
        JUDGEMENT,
        /** An extreme pH, where nothing else is known. */
        EXTREME_PH
    }

    public Assigned {
        due = List.copyOf(due);
    }
}
