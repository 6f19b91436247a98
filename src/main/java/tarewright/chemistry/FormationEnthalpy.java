package tarewright.chemistry;

/**
 * Standard enthalpy of formation at 298.15 K and 100 kPa.
 *
 * @param formula of the substance or ion
 * @param state {@code s}, {@code l}, {@code g} or {@code aq}
 * @param joulesPerMole the value
 * @param provenance of the row
 */
public record FormationEnthalpy(String formula, String state, double joulesPerMole, Provenance provenance) {
}
