package tarewright.cases;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import tarewright.chemistry.BalanceResult;
import tarewright.chemistry.BalancedEquation;
import tarewright.chemistry.Balancing;
import tarewright.chemistry.Equation;
import tarewright.chemistry.State;

/**
 * A procedure out of the textbook's commonest reactions with random amounts: everything on the left is typed, everything on the
 * right is made.
 */
final class RandomProcedure {
    private static final List<String> REACTIONS = List.of("Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)",
            "Zn(s) + H2SO4(aq) -> ZnSO4(aq) + H2(g)",
            "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)", "Na2CO3.10H2O(s) + HCl(aq) -> NaCl(aq) + CO2(g) + H2O(l)",
            "CuSO4(aq) + NaOH(aq) -> Cu(OH)2(s) + Na2SO4(aq)", "CuSO4.5H2O(s) + NaOH(aq) -> Cu(OH)2(s) + Na2SO4(aq) + H2O(l)",
            "AgNO3(aq) + CaCl2(aq) -> AgCl(s) + Ca(NO3)2(aq)", "Al(s) + HCl(aq) -> AlCl3(aq) + H2(g)",
                    "FeCl3(aq) + NaOH(aq) -> Fe(OH)3(s) + NaCl(aq)",
            "(NH4)2SO4(s) + NaOH(aq) -> Na2SO4(aq) + NH3(g) + H2O(l)", "Pb(NO3)2(aq) + KI(aq) -> PbI2(s) + KNO3(aq)",
                    "KClO3(s) -> KCl(s) + O2(g)",
            "NaHCO3(s) + CH3COOH(aq) -> NaCH3COO(aq) + CO2(g) + H2O(l)", "Fe2O3(s) + Al(s) -> Fe(s) + Al2O3(s)");

    private final List<String> blocks = new ArrayList<>();
    private final BalancedEquation equation;
    private final Page page;

    private RandomProcedure(SplittableRandom random, BigDecimal scale, String... front) {
        String written = REACTIONS.get(random.nextInt(REACTIONS.size()));
        BalanceResult balanced = Balancing.complete(Equation.parse(written).value().orElseThrow());
        this.equation = ((BalanceResult.Ok) balanced).equation();
        this.page = new Page("At random");
        for (String line : front) {
            page.front(line);
        }
        page.wasted().block("reaction course", written);
        for (BalancedEquation.Term term : equation.reactants()) {
            reactant(random, scale, term, "reactant " + (blocks.size() + 1));
        }
        for (BalancedEquation.Term term : equation.products()) {
            product(random, term, "product " + (blocks.size() + 1));
        }
    }

    /** @param scale of every typed amount */
    static RandomProcedure of(SplittableRandom random, BigDecimal scale, String... front) {
        return new RandomProcedure(random, scale, front);
    }

    private void reactant(SplittableRandom random, BigDecimal scale, BalancedEquation.Term term, String name) {
        String formula = term.species().formula().plain();
        blocks.add(name);
        if (term.species().state().orElseThrow() == State.SOLID) {
            page.block("solid " + name, "substance: " + formula,
                    "mass: " + digits(random, 0.05, 5).multiply(scale).toPlainString() + " g");
        } else {
            page.block("solution " + name, "solute: " + formula,
                    "strength: " + digits(random, 0.05, 2).toPlainString() + " mol/L",
                    "volume: " + digits(random, 1, 50).multiply(scale).toPlainString() + " mL");
        }
    }

    private void product(SplittableRandom random, BalancedEquation.Term term, String name) {
        blocks.add(name);
        String formula = term.species().formula().plain();
        switch (term.species().state().orElseThrow()) {
            case SOLID -> page.block("solid " + name, "substance: " + formula, "made by: course");
            case LIQUID -> page.block("liquid " + name, "substance: " + formula, "made by: course");
            case GAS -> page.block("gas " + name, "substance: " + formula, "made by: course",
                    random.nextBoolean() ? "collected: over water" : "");
            default -> page.block("solution " + name, "solute: " + formula, "made by: course");
        }
    }

    /** Four significant figures, evenly over the magnitudes. */
    private static BigDecimal digits(SplittableRandom random, double from, double to) {
        double value = from * Math.pow(to / from, random.nextDouble());
        return new BigDecimal(value).round(new MathContext(4, RoundingMode.HALF_EVEN));
    }

    Page page() {
        return page;
    }

    BalancedEquation equation() {
        return equation;
    }

    /** In the order of the equation's terms. */
    List<String> blocks() {
        return blocks;
    }
}
