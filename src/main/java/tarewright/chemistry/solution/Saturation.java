package tarewright.chemistry.solution;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.DensityTable;
import tarewright.chemistry.SaltSolubility;
import tarewright.chemistry.TableValue;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;
import tarewright.quantity.UsualUnits;

/**
 * The strength of a saturated solution at 20 °C.
 *
 * @param concentration in mol/L of the anhydrous solute, or of any hydrate of it: they bring the same
 * @param basis how its density was found
 * @param solute the anhydrous formula
 */
public record Saturation(Figure concentration, Basis basis, String solute) {
    /** How the density of the saturated solution was found. */
    public enum Basis {
        /** From the table of densities. */
        TABLE,
        /** From the table's last row on, the solute's apparent volume held: within some 1 %, where the table ends near. */
        BEYOND_TABLE,
        /**
         * No density is known: one litre of solution holds less than what dissolves in one litre of water, since the solute takes
         * room itself. A bound that the strength does not reach, save that highly charged ions draw the water together by a hundredth (trisodium phosphate).
         */
        BOUND
    }

    private static final double KELVIN_AT_20_C = 293.15;
    private static final Unit PER_100_G = new Unit("g/100 g", Dimension.NONE, 0.01);
    private static final double WATER_AT_20_C = 998.2;
    /** Handbooks differ by about this share over one solubility: common practice, no source. */
    private static final double TOLERANCE = 0.01;
    /** What the bound leaves open beside: see {@link Basis#BOUND}. */
    private static final double DRAWN_TOGETHER = 0.015;
    private static final double WIDTH_OF_RECTANGLE = Math.sqrt(3);

    /**
     * The saturated solution; empty where the table does not have 20 °C.
     *
     * @param densities of the solute's solutions, where they are known
     * @param molarMass of the anhydrous solute
     */
    public static Optional<Saturation> of(SaltSolubility salt, Optional<DensityTable> densities, Figure molarMass) {
        if (!(salt.gramsPer100GramsOfWater(KELVIN_AT_20_C) instanceof TableValue.Known known) || !(known.figure() > 0)) {
            return Optional.empty();
        }
        Basis basis = densities.isEmpty() ? Basis.BOUND
                : densities.get().strongest() >= known.figure() / (100 + known.figure()) ? Basis.TABLE : Basis.BEYOND_TABLE;
        Figure grams = Figure.given(Symbol.ofFormula("s", salt.formula().plain()), PER_100_G, known.figure() / 100,
                new Origin.Table(known.provenance().source(), known.provenance().confidence() != Confidence.MEMORY));
        Figure concentration = Figure.of(Symbol.ofName("c", "saturated"), UsualUnits.of(Dimension.CONCENTRATION, 1),
                new Step.Relation("saturated solution", known.provenance().source(), List.of(grams, molarMass),
                        of -> massConcentration(of[0], densities) / of[1]));
        return Optional.of(new Saturation(concentration, basis, salt.formula().unicode()));
    }

    /** Kilograms in a cubic metre of solution. @param ratio mass of solute over mass of water */
    private static double massConcentration(double ratio, Optional<DensityTable> densities) {
        if (densities.isEmpty()) {
            return ratio * WATER_AT_20_C;
        }
        double fraction = ratio / (1 + ratio);
        DensityTable table = densities.get();
        OptionalDouble inside = table.density(fraction).value();
        return fraction * (inside.isPresent() ? inside.getAsDouble() : beyond(fraction, table));
    }

    private static double beyond(double fraction, DensityTable table) {
        double last = table.strongest();
        double water = table.density(0).value().orElse(WATER_AT_20_C);
        double apparent = (1 / table.density(last).value().orElseThrow() - (1 - last) / water) / last;
        return 1 / ((1 - fraction) / water + fraction * apparent);
    }

    /** The trouble, if a strength is beyond it by more than its own digits and the handbooks leave open. */
    public Optional<SolutionTrouble> refuses(Figure strength) {
        double least = strength.value() - WIDTH_OF_RECTANGLE * strength.standardUncertainty();
        double open = basis == Basis.BOUND ? TOLERANCE + DRAWN_TOGETHER : TOLERANCE;
        return least > concentration.value() * (1 + open) ? Optional.of(new SolutionTrouble.BeyondSolubility(solute,
                strength.value(), concentration.value(), basis == Basis.BOUND)) : Optional.empty();
    }
}
