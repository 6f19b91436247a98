package tarewright.safety;

import java.util.Optional;
import tarewright.chemistry.Provenance;

/**
 * From which percentage a supplemental statement of an ingredient goes over to the mixture, where the ingredient has no limit of
 * its own.
 *
 * @param ingredient for statements that come from a class and not from the ingredient's own list: the class, such as {@code Skin
 * Sens.}
 * @param category its category
 * @param when a condition beside the percentage
 */
public record SupplementalLimit(String code, Optional<String> ingredient, String category, double fromPercent, When when,
        Provenance provenance) {
    /** What must hold beside the percentage. */
    public enum When {
        ALWAYS,
        /** Not in water. */
        NOT_DISSOLVED,
        /** Only if the mixture is classified by inhalation. */
        IF_INHALED
    }
}
