package tarewright.chemistry;

import tarewright.chemistry.TableValue.Known;
import tarewright.chemistry.TableValue.Limit;
import tarewright.chemistry.TableValue.OutOfRange;

/** Water: its vapour pressure and density; its heat capacity is among the {@link Constants}. */
public final class Water {
    /** Triple point in K, IAPWS. */
    public static final double TRIPLE_POINT = 273.16;
    /** Critical temperature in K, IAPWS. */
    public static final double CRITICAL_TEMPERATURE = 647.096;
    /** Critical pressure in Pa, IAPWS. */
    public static final double CRITICAL_PRESSURE = 22.064e6;
    private static final Provenance SATURATION = new Provenance(
            "Wagner and Pruß, J. Phys. Chem. Ref. Data 31 (2002) 387, eq. (2.5), the IAPWS saturation equation SR1-86(1992)",
            Confidence.LIBRARY);
    private static final Provenance TANAKA = new Provenance(
            "Tanaka, Girard, Davis, Peuto and Bignell, Metrologia 38 (2001) 301, eq. (1), air-free water at 101.325 kPa",
            Confidence.LIBRARY);
    private static final double ICE = Constants.ICE_POINT.value();

    private Water() {
    }

    /**
     * Vapour pressure over liquid water, in Pa. From 0 °C, where water is taken as supercooled by 0.01 K,
     * to the critical point; the equation's own uncertainty is 0.02 % from the triple point to 100 °C.
     *
     * @param kelvin temperature
     */
    public static TableValue vapourPressure(double kelvin) {
        if (kelvin > CRITICAL_TEMPERATURE) {
            return new OutOfRange(Limit.CRITICAL_POINT, kelvin - ICE, 0, CRITICAL_TEMPERATURE - ICE, "°C");
        }
        if (!(kelvin >= ICE)) {
            return new OutOfRange(Limit.TRIPLE_POINT, kelvin - ICE, 0, CRITICAL_TEMPERATURE - ICE, "°C");
        }
        return new Known(saturation(kelvin), SATURATION);
    }

    /**
     * The temperature in K at which water boils, the inverse of {@link #vapourPressure}, to 10⁻⁹ K.
     *
     * @param pascal pressure
     */
    public static TableValue boilingPoint(double pascal) {
        double lowest = saturation(ICE);
        if (!(pascal >= lowest && pascal <= CRITICAL_PRESSURE)) {
            Limit limit = pascal > CRITICAL_PRESSURE ? Limit.CRITICAL_POINT : Limit.TRIPLE_POINT;
            return new OutOfRange(limit, pascal / 1000, lowest / 1000, CRITICAL_PRESSURE / 1000, "kPa");
        }
        return new Known(Bisection.rising(Water::saturation, pascal, ICE, CRITICAL_TEMPERATURE, 1e-9), SATURATION);
    }

    private static double saturation(double kelvin) {
        double ratio = 1 - kelvin / CRITICAL_TEMPERATURE;
        double root = Math.sqrt(ratio);
        double cube = ratio * ratio * ratio;
        double sum = -7.85951783 * ratio + 1.84408259 * ratio * root - 11.7866497 * cube
                + 22.6807411 * cube * root - 15.9618719 * cube * ratio + 1.80122502 * cube * cube * ratio * root;
        return CRITICAL_PRESSURE * Math.exp(CRITICAL_TEMPERATURE / kelvin * sum);
    }

    /**
     * Density of air-free water at 101.325 kPa, in kg/m³, from 0 °C to 40 °C; uncertainty 0.001 kg/m³.
     *
     * @param kelvin temperature
     */
    public static TableValue density(double kelvin) {
        double celsius = kelvin - ICE;
        if (!(celsius >= 0 && celsius <= 40)) {
            return new OutOfRange(Limit.TABLE, celsius, 0, 40, "°C");
        }
        double aside = celsius - 3.983035;
        double bent = aside * aside * (celsius + 301.797) / (522528.9 * (celsius + 69.34881));
        return new Known(999.974950 * (1 - bent), TANAKA);
    }
}
