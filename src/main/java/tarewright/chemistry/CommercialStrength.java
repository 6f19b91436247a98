package tarewright.chemistry;

import java.util.OptionalDouble;

/**
 * A solution as it is sold.
 *
 * @param name as on the bottle
 * @param solute its formula
 * @param household whether shops sell it
 * @param strength in the unit of the basis
 * @param basis what the strength counts
 * @param density in kg/m³ at 20 °C, if known
 * @param concentration in mol/m³ as published
 * @param note may be empty
 * @param provenance of the row
 */
public record CommercialStrength(String name, Formula solute, boolean household, double strength, Basis basis,
        OptionalDouble density, double concentration, String note, Provenance provenance) {
    /** What a printed strength counts. */
    public enum Basis {
        /** Grams in 100 g of solution. */
        MASS_PERCENT("w/w"),
        /** Grams in 100 mL of solution. */
        MASS_BY_VOLUME_PERCENT("w/v"),
        /** Millilitres of the pure liquid in 100 mL of solution. */
        VOLUME_PERCENT("v/v"),
        /** Volumes of oxygen at 0 °C and 101.325 kPa that one volume of hydrogen peroxide solution gives. */
        VOLUMES_OF_OXYGEN("vol O2");

        private final String symbol;

        Basis(String symbol) {
            this.symbol = symbol;
        }

        /** As the table writes it. */
        public String symbol() {
            return symbol;
        }
    }
}
