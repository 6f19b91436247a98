package tarewright.chemistry;

import java.util.Optional;
import tarewright.chemistry.TableValue.Known;
import tarewright.chemistry.TableValue.Limit;
import tarewright.chemistry.TableValue.OutOfRange;

/**
 * How much of a gas dissolves in water: Henry's law solubility constant, molecules as such, without what reacts with the water.
 * With one slope for all temperatures it lies within 5 % of the equations of IAPWS G7-04 from 10 °C to 35 °C, and within 10 %
 * from 0 °C to 40 °C.
 *
 * @param formula of the gas
 * @param name of the gas
 * @param henry the constant {@code Hscp} at 298.15 K in mol/(m³ Pa)
 * @param slope d ln H / d (1/T) in K
 * @param reacts how it reacts with water, so that more dissolves than the constant says; empty if it does not
 * @param note on the spread of published values; may be empty
 * @param provenance of the row
 */
public record GasSolubility(Formula formula, String name, double henry, double slope, Optional<String> reacts, String note,
        Provenance provenance) {
    /** Coldest temperature in K at which the constant slope is used. */
    public static final double FROM = 273.15;
    /** Hottest temperature in K at which the constant slope is used. */
    public static final double TO = 313.15;

    /**
     * The constant in mol/(m³ Pa) at a temperature from 0 °C to 40 °C.
     *
     * @param kelvin temperature
     */
    public TableValue henry(double kelvin) {
        double ice = Constants.ICE_POINT.value();
        if (!(kelvin >= FROM && kelvin <= TO)) {
            return new OutOfRange(Limit.TABLE, kelvin - ice, FROM - ice, TO - ice, "°C");
        }
        return new Known(henry * Math.exp(slope * (1 / kelvin - 1 / 298.15)), provenance);
    }

    /**
     * Concentration in mol/m³ of water that has stood under the gas long enough.
     *
     * @param kelvin temperature, 0 °C to 40 °C
     * @param pascal partial pressure of the gas
     */
    public TableValue concentration(double kelvin, double pascal) {
        TableValue constant = henry(kelvin);
        return constant instanceof Known known ? new Known(known.figure() * pascal, provenance) : constant;
    }
}
