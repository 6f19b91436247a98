package tarewright.safety;

import tarewright.chemistry.Provenance;

/**
 * A safety sign of ISO 7010.
 *
 * @param number such as {@code M004}
 * @param kind mandatory, warning, prohibition, safe condition or fire equipment
 * @param meaning its title in the standard
 * @param use when this program shows it
 */
public record Sign(String number, String kind, String meaning, String use, Provenance provenance) {
}
