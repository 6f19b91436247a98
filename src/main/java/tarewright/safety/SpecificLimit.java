package tarewright.safety;

import java.util.Optional;
import tarewright.chemistry.Provenance;

/**
 * A concentration limit set for one substance (CLP Article 10): from here on, this class.
 *
 * @param gives the class; empty where the limit is for a supplemental statement
 * @param code the hazard or supplemental statement
 * @param fromPercent per cent by mass
 * @param inclusive whether the limit itself belongs to it
 */
public record SpecificLimit(Optional<HazardClass> gives, String code, double fromPercent, boolean inclusive,
        Provenance provenance) {
    boolean reached(double percent) {
        return inclusive ? Limits.reached(percent, fromPercent) : percent > fromPercent;
    }
}
