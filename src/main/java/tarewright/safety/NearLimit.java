package tarewright.safety;

/**
 * A limit that lies within the uncertainty of the strength (two standard uncertainties to each side).
 *
 * @param hazard the class that begins there, which the classification has
 * @param limitPercent the limit, per cent by mass
 * @param percent the strength as stated or worked out
 * @param highPercent with its uncertainty added
 * @param stricterTaken true if the strength as stated is below the limit, so that only the uncertainty brought the class in
 */
public record NearLimit(HazardClass hazard, double limitPercent, double percent, double highPercent, boolean stricterTaken) {
}
