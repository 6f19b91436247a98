package tarewright.chemistry;

/**
 * Standard enthalpy of formation at 298.15 K and 100 kPa.
 *
 * @param formula of the substance or ion
 * @param state solid, liquid, gas, or in water at infinite dilution
 * @param joulesPerMole the value; for ions with that of the hydrogen ion put at zero
 * @param provenance of the row
 */
public record FormationEnthalpy(Formula formula, State state, double joulesPerMole, Provenance provenance) {
}
