package tarewright.chemistry.solution;

import java.util.List;
import tarewright.chemistry.Constants;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.UsualUnits;

/** The strength of a solution in any notation, and the amount concentration that it comes to. */
public sealed interface StockStrength {
    /** The product that gives the amount concentration. */
    Step.Product product();

    /** Amount concentration, in mol/L. */
    default Figure concentration(Symbol symbol) {
        return Figure.of(symbol, UsualUnits.of(Dimension.CONCENTRATION, 1), product());
    }

    /** @param concentration as stated */
    record Molar(Figure concentration) implements StockStrength {
        @Override
        public Step.Product product() {
            return new Step.Product(1, List.of(new Power(concentration, 1)));
        }

        @Override
        public Figure concentration(Symbol symbol) {
            return concentration;
        }
    }

    /** c = w ρ / M. @param share of the mass, 0 to 1 @param density of the solution @param molarMass of what the share counts */
    record MassShare(Figure share, Figure density, Figure molarMass) implements StockStrength {
        @Override
        public Step.Product product() {
            return new Step.Product(1, List.of(new Power(share, 1), new Power(density, 1), new Power(molarMass, -1)));
        }
    }

    /** c = γ / M. @param massConcentration mass over the volume of the solution @param molarMass of what it counts */
    record MassByVolume(Figure massConcentration, Figure molarMass) implements StockStrength {
        @Override
        public Step.Product product() {
            return new Step.Product(1, List.of(new Power(massConcentration, 1), new Power(molarMass, -1)));
        }
    }

    /** c = φ ρ / M. @param share of the volume, 0 to 1 @param pureDensity of the pure liquid @param molarMass of it */
    record VolumeShare(Figure share, Figure pureDensity, Figure molarMass) implements StockStrength {
        @Override
        public Step.Product product() {
            return new Step.Product(1, List.of(new Power(share, 1), new Power(pureDensity, 1), new Power(molarMass, -1)));
        }
    }

    /**
     * Volumes of oxygen at 0 °C and 101.325 kPa from one of hydrogen peroxide: two of peroxide give one of oxygen, so
     * c = 2 × volumes / Vm with Vm = 22.414 L/mol.
     */
    record VolumesOfOxygen(Figure volumes) implements StockStrength {
        @Override
        public Step.Product product() {
            Constants constant = Constants.MOLAR_VOLUME_101_325_KPA;
            Figure molarVolume = Figure.given(Symbol.alone("Vm"), UsualUnits.of(Dimension.MOLAR_VOLUME, 1), constant.value(),
                    new Origin.Constant(constant.provenance().source()));
            return new Step.Product(2, List.of(new Power(volumes, 1), new Power(molarVolume, -1)));
        }
    }
}
