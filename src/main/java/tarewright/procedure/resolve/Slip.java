package tarewright.procedure.resolve;

/**
 * A common mistake with what it gives.
 *
 * @param kind which mistake
 * @param about the formula or name that it is about, for the words; may be empty
 * @param value in the coherent SI unit
 * @param cannotTell whether the value lies within the accepted range, so that only the method tells
 */
public record Slip(Kind kind, String about, double value, boolean cannotTell) {
    /** The mistakes that are looked for. */
    public enum Kind {
        /** 22.4 L/mol, the molar volume at 0 °C and 101.325 kPa, at another temperature. */
        MOLAR_VOLUME_AT_0_C,
        /** Degrees Celsius in the gas law. */
        CELSIUS_IN_GAS_LAW,
        /** Millilitres not turned into litres. */
        MILLILITRES_AS_LITRES,
        COEFFICIENT_IGNORED,
        COEFFICIENT_UPSIDE_DOWN,
        EXCESS_TAKEN_AS_LIMITING,
        WATER_VAPOUR_FORGOTTEN,
        WATER_OF_CRYSTALLISATION_FORGOTTEN,
        DIATOMIC_AS_ATOM,
        DILUTION_INVERTED,
        /** 3 for 3 %. */
        PERCENT_AS_NUMBER;

        /** A lasting name. */
        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }
}
