package tarewright.chemistry.solution;

import java.util.List;
import tarewright.chemistry.DensityTable;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;
import tarewright.quantity.UsualUnits;

/** The density of a solution by its mass fraction, as a figure that knows what it was made from. */
public final class SolutionDensity {
    /** The lasting name under which the relation has its words. */
    public static final String RELATION = "density of a solution";
    private static final Unit GRAM_PER_MILLILITRE = UsualUnits.of(Dimension.DENSITY, 1000);

    private SolutionDensity() {
    }

    /**
     * The density as a figure in g/mL, for a fraction that the table knows.
     *
     * @param fraction mass fraction as stated
     * @param dry how much of the table's own solute is in what the fraction counts, by mass: 1, or 0.639 where the fraction
     *        counts copper(II) sulfate pentahydrate and the table the anhydrous salt
     * @param source of the row
     */
    public static Figure figure(Symbol symbol, DensityTable table, Figure fraction, double dry, String source) {
        return Figure.of(symbol, GRAM_PER_MILLILITRE, new Step.Relation(RELATION, source, List.of(fraction),
                of -> table.density(Math.min(Math.max(of[0] * dry, 0), table.strongest())).value().orElse(Double.NaN))).shownTo(4);
    }
}
