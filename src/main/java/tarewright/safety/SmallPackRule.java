package tarewright.safety;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Provenance;

/**
 * What the label of a package of 125 mL or less may leave out (CLP Annex I 1.5.2.1).
 *
 * @param onlyIf a condition of the clause, in its words
 * @param clause such as {@code CLP Annex I 1.5.2.1.1 (b) 12}
 */
public record SmallPackRule(String hazardClass, List<String> categories, Omits omits, Optional<String> onlyIf, String clause,
        Provenance provenance) {
    /** Which statements may be left out. Pictograms and signal word stay. */
    public enum Omits {
        HAZARD_AND_PRECAUTIONARY, PRECAUTIONARY
    }

    public SmallPackRule {
        categories = List.copyOf(categories);
    }

    boolean covers(HazardClass hazard) {
        return omits == Omits.HAZARD_AND_PRECAUTIONARY && hazardClass.equals(hazard.name())
                && (categories.contains(hazard.category()) || categories.isEmpty() && hazard.category().isEmpty());
    }
}
