package tarewright.safety;

import tarewright.chemistry.Provenance;

/**
 * A category of acute toxicity by one route.
 *
 * @param category 1 to 4
 * @param code its statement
 * @param pointEstimate what a substance that is only known by its category counts as
 * @param upTo the largest estimate that still belongs to the category
 */
public record AcuteEstimate(Route route, int category, String code, double pointEstimate, double upTo, String clause,
        Provenance provenance) {
}
