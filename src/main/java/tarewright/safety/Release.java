package tarewright.safety;

import java.util.Optional;
import tarewright.derivation.Figure;

/**
 * A gas that is made.
 *
 * @param gas its name, its id in the tables or its formula
 * @param formula in plain writing, where {@code gas} is a name
 * @param moles amount in one vessel, mol
 * @param vessels how many vessels there are in the room
 * @param temperature of the room, K
 * @param pressure of the room, Pa
 * @param room its volume, m³; empty if not stated
 */
public record Release(String gas, Optional<String> formula, Figure moles, Figure vessels, Figure temperature, Figure pressure,
        Optional<Figure> room) {
}
