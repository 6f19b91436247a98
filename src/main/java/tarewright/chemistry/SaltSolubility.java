package tarewright.chemistry;

import tarewright.chemistry.TableValue.Known;
import tarewright.chemistry.TableValue.Limit;
import tarewright.chemistry.TableValue.OutOfRange;

/**
 * How much of a solid dissolves in water, by temperature.
 *
 * @param formula of what is counted: anhydrous
 * @param solidPhase formula of the solid that lies in the saturated solution near 20 °C
 * @param saturated temperature in °C to grams of {@code formula} in 100 g of water; one row or more
 * @param note may be empty
 */
public record SaltSolubility(Formula formula, Formula solidPhase, Curve saturated, String note) {
    /**
     * Grams of the anhydrous solid in 100 g of water when saturated.
     *
     * @param kelvin temperature within the table's rows; a table of one row knows that temperature alone
     */
    public TableValue gramsPer100GramsOfWater(double kelvin) {
        double celsius = kelvin - Constants.ICE_POINT.value();
        double rounded = Math.round(celsius * 1e9) / 1e9;
        if (!saturated.holds(rounded)) {
            return new OutOfRange(Limit.TABLE, rounded, saturated.first(), saturated.last(), "°C");
        }
        return new Known(saturated.at(rounded), saturated.provenance(rounded));
    }

    /** Mass fraction (0 to 1) of the anhydrous solid in the saturated solution. */
    public TableValue massFraction(double kelvin) {
        TableValue grams = gramsPer100GramsOfWater(kelvin);
        return grams instanceof Known known ? new Known(known.figure() / (100 + known.figure()), known.provenance()) : grams;
    }
}
