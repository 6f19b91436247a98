package tarewright.safety;

import java.util.List;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;

/**
 * The pressure in a closed vessel in which gas forms: the air that was closed in, warmed, and the gas, both ideal, nothing
 * dissolved.
 *
 * @param pressure absolute, Pa, with its derivation
 * @param timesRoom over the pressure of the room
 */
public record Overpressure(Figure pressure, double timesRoom) {
    /**
     * The pressure when all the gas has formed.
     *
     * @param moles gas that forms, mol
     * @param freeVolume of the vessel, m³
     * @param temperature of the gas, K
     * @param roomTemperature at which the vessel was closed, K
     * @param roomPressure at which the vessel was closed, Pa
     */
    public static Overpressure of(Figure moles, Figure freeVolume, Figure temperature, Figure roomTemperature,
            Figure roomPressure) {
        Figure air = Figure.of(Symbol.ofName("p", "air"), roomPressure.unit(), new Step.Product(1, List.of(
                new Step.Power(roomPressure, 1), new Step.Power(temperature, 1), new Step.Power(roomTemperature, -1))));
        Figure gas = Figure.of(Symbol.ofName("p", "gas"), roomPressure.unit(), new Step.Product(1, List.of(
                new Step.Power(moles, 1), new Step.Power(Air.gasConstant(), 1), new Step.Power(temperature, 1),
                new Step.Power(freeVolume, -1))));
        Figure both = Figure.of(Symbol.alone("p"), roomPressure.unit(),
                new Step.Sum(List.of(new Step.Term(1, air), new Step.Term(1, gas))));
        return new Overpressure(both, both.value() / roomPressure.value());
    }

    /** Whether it passes so many times the pressure of the room. */
    public boolean over(double times) {
        return timesRoom > times;
    }
}
