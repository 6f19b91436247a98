package tarewright.chemistry.solution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Constants;
import tarewright.chemistry.DilutionHeat;
import tarewright.chemistry.FormationEnthalpies;
import tarewright.chemistry.FormationEnthalpy;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.State;
import tarewright.chemistry.TableValue;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Step.Term;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;
import tarewright.quantity.UsualUnits;

/**
 * The heat of bringing a pure substance into much water, from enthalpies of formation, or of diluting a stock that is a solution already, from a
 * table of heats of dilution; and how far it warms what is made.
 */
public final class DissolvingHeat {
    private static final Unit KILOJOULE_PER_MOLE = UsualUnits.of(Dimension.ENERGY.over(Dimension.AMOUNT), 1);
    private static final Unit HEAT_CAPACITY = UsualUnits.of(Dimension.ENERGY.over(Dimension.MASS).over(Dimension.TEMPERATURE), 1);
    private static final Formula WATER = ((FormulaResult.Ok) Formula.parse("H2O")).formula();
    private static final double WATER_DENSITY = 998.2;

    private final FormationEnthalpies enthalpies;

    public DissolvingHeat(FormationEnthalpies enthalpies) {
        this.enthalpies = enthalpies;
    }

    /**
     * Enthalpy of dissolving one mole in much water, at 25 °C, negative where heat is set free; the water of crystallisation joins
     * the water. Empty where a figure of formation is missing.
     *
     * @param state that it is taken in: solid, liquid or gas
     */
    public Optional<Figure> enthalpy(Formula substance, State state) {
        Optional<FormationEnthalpy> pure = enthalpies.of(substance, state);
        Optional<FormationEnthalpy> dissolved = enthalpies.of(substance.anhydrous(), State.AQUEOUS);
        Optional<FormationEnthalpy> water = enthalpies.of(WATER, State.LIQUID);
        double waters = substance.waters().doubleValue();
        if (pure.isEmpty() || dissolved.isEmpty() || waters > 0 && water.isEmpty()) {
            return Optional.empty();
        }
        List<Term> terms = new ArrayList<>(List.of(new Term(1, row(dissolved.get())), new Term(-1, row(pure.get()))));
        if (waters > 0) {
            terms.add(new Term(waters, row(water.get())));
        }
        return Optional.of(Figure.of(Symbol.alone("ΔH"), KILOJOULE_PER_MOLE, new Step.Sum(terms)));
    }

    /**
     * Enthalpy of diluting one mole in a stock, at 25 °C, negative where heat is set free; empty beyond the rows of the table. Where the stock's density is not known
     * that of water stands in, which makes the molality, and so the heat, larger than it is.
     *
     * @param molarMass of the solute, kg/mol
     * @param made amount concentration of what is made
     */
    public static Optional<Figure> ofDiluting(DilutionHeat table, StockStrength stock, Figure molarMass, Figure made) {
        double strong = stock.concentration(Symbol.alone("c")).value();
        double dense = stock instanceof StockStrength.MassShare share ? share.density().value() : WATER_DENSITY;
        double weak = made.value();
        // Between water and the stock the density is near enough a straight line.
        double from = molality(strong, dense, molarMass.value());
        double to = molality(weak, WATER_DENSITY + (dense - WATER_DENSITY) * weak / strong, molarMass.value());
        if (!(table.between(from, to) instanceof TableValue.Known heat)) {
            return Optional.empty();
        }
        return Optional.of(Figure.given(Symbol.alone("ΔH"), KILOJOULE_PER_MOLE, -1000 * heat.figure(),
                new Origin.Table(heat.provenance().source(), heat.provenance().confidence() != Confidence.MEMORY)).shownTo(1));
    }

    /** Moles in a kilogram of water; infinite where the solute leaves no room for any. All in SI. */
    private static double molality(double concentration, double density, double molarMass) {
        double water = density - concentration * molarMass;
        return water > 0 ? concentration / water : Double.POSITIVE_INFINITY;
    }

    private static Figure row(FormationEnthalpy row) {
        return Figure.given(Symbol.ofFormula("ΔfH°", row.formula().plain()), KILOJOULE_PER_MOLE, row.joulesPerMole(),
                new Origin.Table(row.provenance().source(), row.provenance().confidence() != Confidence.MEMORY)).shownTo(1);
    }

    /**
     * The rise in temperature of a solution that is made from room temperature and keeps all the heat, its heat capacity taken as
     * that of as much water: −c ΔH / (ρ c_p). Negative where it cools.
     *
     * @param strength of what is made
     */
    public static Figure rise(Figure strength, Figure enthalpy) {
        Figure density = Figure.given(Symbol.alone("ρ"), UsualUnits.of(Dimension.DENSITY, 1000), WATER_DENSITY,
                new Origin.Table("water at 20 °C, used for dilute solutions", true)).shownTo(3);
        Figure capacity = Figure.given(Symbol.alone("c"), HEAT_CAPACITY, Constants.WATER_HEAT_CAPACITY.value(),
                new Origin.Constant(Constants.WATER_HEAT_CAPACITY.provenance().source())).shownTo(2);
        return Figure.of(Symbol.alone("ΔT"), UsualUnits.of(Dimension.TEMPERATURE, 1), new Step.Product(-1,
                List.of(new Power(strength, 1), new Power(enthalpy, 1), new Power(density, -1), new Power(capacity, -1))));
    }
}
