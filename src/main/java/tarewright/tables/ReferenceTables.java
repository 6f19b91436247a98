package tarewright.tables;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.AcidConstant;
import tarewright.chemistry.CommercialStrength;
import tarewright.chemistry.Densities;
import tarewright.chemistry.FlammableLimits;
import tarewright.chemistry.FormationEnthalpies;
import tarewright.chemistry.GasSolubility;
import tarewright.chemistry.SaltSolubility;
import tarewright.chemistry.Substances;
import tarewright.chemistry.Virial;

/**
 * All chemical data of the product.
 *
 * @param substances names, formulas, densities
 * @param densities of solutions
 * @param strengths as sold
 * @param gasSolubilities Henry's law constants
 * @param virials second virial coefficients
 * @param flammableLimits of gases in air
 * @param enthalpies of formation
 * @param saltSolubilities in water
 * @param acidConstants pKa of acids, of the acids of bases, of indicators
 */
public record ReferenceTables(Substances substances, Densities densities, List<CommercialStrength> strengths,
        List<GasSolubility> gasSolubilities, List<Virial> virials, List<FlammableLimits> flammableLimits,
        FormationEnthalpies enthalpies, List<SaltSolubility> saltSolubilities, List<AcidConstant> acidConstants) {
    public ReferenceTables {
        strengths = List.copyOf(strengths);
        gasSolubilities = List.copyOf(gasSolubilities);
        virials = List.copyOf(virials);
        flammableLimits = List.copyOf(flammableLimits);
        saltSolubilities = List.copyOf(saltSolubilities);
        acidConstants = List.copyOf(acidConstants);
    }

    /** Henry's law constant of a gas. */
    public Optional<GasSolubility> gasSolubility(String formula) {
        return gasSolubilities.stream().filter(row -> row.formula().equals(formula)).findFirst();
    }

    /** Second virial coefficient of a gas. */
    public Optional<Virial> virial(String formula) {
        return virials.stream().filter(row -> row.formula().equals(formula)).findFirst();
    }

    /** Limits within which a gas burns in air; empty for a gas that does not or that is not in the table. */
    public Optional<FlammableLimits> flammableLimits(String formula) {
        return flammableLimits.stream().filter(row -> row.formula().equals(formula)).findFirst();
    }

    /** Solubility of a solid, by its anhydrous formula. */
    public Optional<SaltSolubility> saltSolubility(String formula) {
        return saltSolubilities.stream().filter(row -> row.formula().equals(formula)).findFirst();
    }
}
