package tarewright.chemistry;

import java.util.List;
import tarewright.chemistry.TableValue.Known;
import tarewright.chemistry.TableValue.Limit;
import tarewright.chemistry.TableValue.OutOfRange;

/**
 * How far a gas is from ideal near room conditions: its second virial coefficient as a polynomial of temperature.
 *
 * @param formula of the gas
 * @param name of the gas
 * @param coefficients a₁ to a₅ in cm³/mol: B = Σ aᵢ (298.15 K/T − 1)^(i−1)
 * @param provenance of the row
 */
public record Virial(Formula formula, String name, List<Double> coefficients, Provenance provenance) {
    /** The range in K within which it is used here. */
    public static final double FROM = 273.15;
    /** The range in K within which it is used here. */
    public static final double TO = 373.15;

    public Virial {
        coefficients = List.copyOf(coefficients);
    }

    /**
     * The second virial coefficient in m³/mol from 0 °C to 100 °C.
     *
     * @param kelvin temperature
     */
    public TableValue coefficient(double kelvin) {
        double ice = Constants.ICE_POINT.value();
        if (!(kelvin >= FROM && kelvin <= TO)) {
            return new OutOfRange(Limit.TABLE, kelvin - ice, FROM - ice, TO - ice, "°C");
        }
        double x = 298.15 / kelvin - 1;
        double sum = 0;
        for (int i = coefficients.size() - 1; i >= 0; i--) {
            sum = sum * x + coefficients.get(i);
        }
        return new Known(sum * 1e-6, provenance);
    }

    /**
     * Molar volume in m³/mol, from the virial equation in 1/V cut behind its second term; for pressures near that of the
     * room, up to 200 kPa.
     *
     * @param kelvin temperature, 0 °C to 100 °C
     * @param pascal pressure, above 0
     */
    public TableValue molarVolume(double kelvin, double pascal) {
        if (!(pascal > 0 && pascal <= 200_000)) {
            return new OutOfRange(Limit.TABLE, pascal / 1000, 0, 200, "kPa");
        }
        TableValue coefficient = coefficient(kelvin);
        if (!(coefficient instanceof Known known)) {
            return coefficient;
        }
        double ideal = IdealGas.molarVolume(kelvin, pascal);
        return new Known(ideal * (0.5 + Math.sqrt(0.25 + known.figure() / ideal)), provenance);
    }
}
