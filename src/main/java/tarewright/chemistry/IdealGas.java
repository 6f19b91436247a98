package tarewright.chemistry;

/** The ideal gas law, in K, Pa, m³ and mol. */
public final class IdealGas {
    private static final double R = Constants.GAS_CONSTANT.value();

    private IdealGas() {
    }

    /** Volume of one mole in m³/mol, temperature in K and pressure in Pa. */
    public static double molarVolume(double kelvin, double pascal) {
        return R * kelvin / pascal;
    }

    /** Amount in mol that fills a volume in m³. */
    public static double amount(double cubicMetres, double kelvin, double pascal) {
        return pascal * cubicMetres / (R * kelvin);
    }

    /** Volume in m³ that an amount in mol fills. */
    public static double volume(double moles, double kelvin, double pascal) {
        return moles * molarVolume(kelvin, pascal);
    }

    /** Pressure in Pa of an amount in mol in a volume in m³. */
    public static double pressure(double moles, double kelvin, double cubicMetres) {
        return moles * R * kelvin / cubicMetres;
    }
}
