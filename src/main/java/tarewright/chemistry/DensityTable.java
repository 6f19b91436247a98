package tarewright.chemistry;

import tarewright.chemistry.TableValue.Known;
import tarewright.chemistry.TableValue.Limit;
import tarewright.chemistry.TableValue.OutOfRange;

/**
 * How dense a solution is at 20 °C, by its mass fraction, for one solute from water to the last row. Between rows that are
 * 6 % apart or less the curve lies within 0.3 kg/m³ of the handbook's own figures; where a table has wider steps
 * (nitric acid above 40 %, sucrose above 50 %), within 0.2 %.
 *
 * @param solute formula of what the mass fraction counts; for a salt the anhydrous one
 * @param name of the solute
 * @param densities mass fraction (0 to 1) to density in kg/m³, from 0
 */
public record DensityTable(Formula solute, String name, Curve densities) {
    /** The greatest mass fraction that is known. */
    public double strongest() {
        return densities.last();
    }

    /**
     * Density in kg/m³ at 20 °C.
     *
     * @param massFraction of the solute, 0 to 1
     */
    public TableValue density(double massFraction) {
        if (!densities.holds(massFraction)) {
            return new OutOfRange(Limit.SATURATION, massFraction * 100, 0, strongest() * 100, "%");
        }
        return new Known(densities.at(massFraction), densities.provenance(massFraction));
    }

    /**
     * Amount concentration in mol/m³ at 20 °C.
     *
     * @param massFraction of the solute, 0 to 1
     * @param molarMass of the solute in kg/mol
     */
    public TableValue concentration(double massFraction, double molarMass) {
        if (!densities.holds(massFraction)) {
            return density(massFraction);
        }
        return new Known(massConcentration(massFraction) / molarMass, densities.provenance(massFraction));
    }

    /**
     * Mass fraction (0 to 1) of a solution of this amount concentration at 20 °C, to 10⁻¹².
     *
     * @param concentration in mol/m³
     * @param molarMass of the solute in kg/mol
     */
    public TableValue massFraction(double concentration, double molarMass) {
        double wanted = concentration * molarMass;
        double most = massConcentration(strongest());
        if (!(wanted >= 0 && wanted <= most)) {
            return new OutOfRange(Limit.SATURATION, concentration / 1000, 0, most / molarMass / 1000, "mol/L");
        }
        double fraction = Bisection.rising(this::massConcentration, wanted, 0, strongest(), 1e-12);
        return new Known(fraction, densities.provenance(fraction));
    }

    private double massConcentration(double massFraction) {
        return massFraction * densities.at(massFraction);
    }
}
