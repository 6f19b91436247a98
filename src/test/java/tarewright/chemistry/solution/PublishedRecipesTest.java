package tarewright.chemistry.solution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.chemistry.solution.Shelf.byMass;
import static tarewright.chemistry.solution.Shelf.grams;
import static tarewright.chemistry.solution.Shelf.millilitres;
import static tarewright.chemistry.solution.Shelf.molar;
import static tarewright.chemistry.solution.Shelf.molarMass;
import static tarewright.chemistry.solution.Shelf.plan;
import static tarewright.chemistry.solution.Shelf.solid;
import static tarewright.chemistry.solution.Shelf.typed;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.derivation.Figure;

/** Recipes that are printed somewhere. */
class PublishedRecipesTest {
    /**
     * "Composition of concentrated reagent-grade acids, ammonium hydroxide, and sodium and potassium hydroxide solutions", a
     * supplier's reference table: millilitres for one litre of 1 mol/L, rounded to the nearest 0.5 mL, with the density that it
     * prints. The density is printed to three figures, so that the volume is known to half a unit of its last: some 0.5 %.
     */
    @ParameterizedTest
    @CsvSource({"HCl, 37.2, 1.19, 82.5", "H2SO4, 96, 1.84, 55.5", "HNO3, 69.6, 1.41, 64", "H3PO4, 85.5, 1.71, 67.5",
            "CH3COOH, 99.8, 1.05, 57.5", "NaOH, 50.5, 1.53, 51.5", "KOH, 45, 1.45, 85.5", "HClO4, 70.5, 1.67, 85.5",
            "HF, 49, 1.19, 34.5", "NH3, 28.0, 0.90, 69"})
    void aLitreOfOneMolar(String solute, String percent, String density, double volume) {
        Plan plan = plan("1 mol/L", "1 L", byMass(solute, percent + " %", density + " g/mL"));
        // 69 mL of ammonia is for 14.5 mol/L as the table has it; 28.0 % and 0.90 g/mL give 14.80 mol/L, 67.6 mL.
        double difference = solute.equals("NH3") ? 1.5 : 0.25 + 0.005 * volume;
        assertEquals(volume, millilitres(plan.first().exact()), difference);
        assertEquals(1, plan.steps().size());
        assertTrue(plan.check().agrees());
    }

    /**
     * Hydrochloric acid of 37 % w/w with the density out of our table: OpenStax, Chemistry 2e, Appendix F and suppliers' tables
     * have 12.0 to 12.1 mol/L for 37 % to 37.2 %, so that 2 mol/L takes 165 mL to 167 mL for a litre; measured out: 166 mL or
     * 167 mL.
     */
    @Test
    void dilutedHydrochloricAcid() {
        Plan plan = plan("2 mol/L", "1 L", byMass("HCl", "37 %"));
        assertEquals(166, millilitres(plan.first().exact()), 1.0);
        assertEquals(Math.rint(millilitres(plan.first().exact())), millilitres(plan.first().taken()), 1e-9);
        assertEquals(Delivery.CYLINDER, plan.first().delivery());
        assertEquals(2.0, plan.check().in().value(), 0.01);
    }

    /**
     * "Bulk recipes" for school practical work in Ireland: 10 g of sodium hydroxide for 2.5 L of 0.1 mol/L, 5.85 g of sodium chloride
     * for 1 L of 0.1 mol/L. A handout on dilute reagents (D. Lloyd, "Concentrated acids, sodium hydroxide and ammonia"): 200 g of
     * sodium hydroxide for 1 L of 5 mol/L, 112 g of potassium hydroxide for 1 L of 2 mol/L.
     */
    @ParameterizedTest
    @CsvSource({"NaOH, 0.1, 2.5, 10, 0.05", "NaCl, 0.1, 1, 5.85, 0.01", "NaOH, 5, 1, 200, 0.5", "KOH, 2, 1, 112, 0.5"})
    void weighed(String formula, String strength, String litres, double mass, double within) {
        Plan plan = plan(strength + " mol/L", litres + " L", solid(formula));
        assertEquals(mass, grams(plan.first().exact()), within);
        assertEquals(mass, grams(plan.first().taken()), within);
        assertTrue(plan.check().agrees());
        assertEquals(Delivery.BALANCE, plan.first().delivery());
    }

    /**
     * The same handout: 86 mL of hydrochloric acid of 36 % and 1.18 g/mL for a litre of 1 mol/L, 172 mL of 2 mol/L; 56 mL of
     * sulfuric acid of 95 % and 1.84 g/mL. Its 122 mL of nitric acid for 2 mol/L is for the 16.4 mol/L that it prints; the 69 % and
     * 1.42 g/mL beside it come to 15.6 mol/L, 129 mL.
     */
    @ParameterizedTest
    @CsvSource({"HCl, 36, 1.18, 1, 86", "HCl, 36, 1.18, 2, 172", "H2SO4, 95, 1.84, 1, 56"})
    void handout(String solute, String percent, String density, String strength, double volume) {
        Plan plan = plan(strength + " mol/L", "1 L", byMass(solute, percent + " %", density + " g/mL"));
        assertEquals(volume, millilitres(plan.first().exact()), 0.5 + 0.003 * volume);
    }

    /**
     * 5 % w/v as CuSO4 from the crystals. Tables of concentrative properties print for 5.00 % anhydrous copper(II) sulfate 7.82 % of
     * the pentahydrate (CRC Handbook, columns A % and H %; from memory), the ratio of the molar masses.
     */
    @Test
    void copperSulfateFromItsCrystals() {
        StockStrength five = new StockStrength.MassByVolume(typed("50 g/L"), molarMass("CuSO4"));
        Figure strength = Source.Stock.of("wanted", five).concentration();
        assertEquals(313.3, strength.value(), 0.05);
        Plan plan = Plan.of(strength, typed("100 mL"), solid("CuSO4.5H2O"), Optional.of(Shelf.saturation("CuSO4"))).value()
                .orElseThrow();
        assertEquals(7.82, grams(plan.first().taken()), 1e-9);
        assertTrue(plan.check().agrees());
    }

    /**
     * A worked dilution in four steps (wizedu.com, chemistry question 168823): 3.00 mol/L; 10.00 mL to 100 mL, 0.300 mol/L; 25.00 mL
     * to 100 mL, 0.0750 mol/L; 50.00 mL to 250 mL, 0.0150 mol/L; 1.00 mL to 500 mL, 0.0000300 mol/L.
     */
    @Test
    void fourSteps() {
        String[] strengths = {"3.00 mol/L", "0.3 mol/L", "0.075 mol/L", "0.015 mol/L", "0.00003 mol/L"};
        String[] volumes = {"100 mL", "100 mL", "250 mL", "500 mL"};
        double[] aliquots = {10, 25, 50, 1};
        for (int i = 0; i < volumes.length; i++) {
            Plan plan = plan(strengths[i + 1], volumes[i], molar(strengths[i]));
            if (i < 3) {
                assertEquals(1, plan.steps().size());
                assertEquals(aliquots[i], millilitres(plan.first().taken()), 1e-9);
                assertEquals(Delivery.BULB_PIPETTE, plan.first().delivery());
            } else {
                // The book dilutes five hundredfold at once; we do it in two steps, to the same end.
                assertEquals(2, plan.steps().size());
                assertEquals(500, plan.first().factor() * plan.last().factor(), 1e-6);
            }
            assertTrue(plan.check().agrees());
        }
        assertEquals(0.00003 * 0.5, plan("0.00003 mol/L", "500 mL", molar("0.015 mol/L")).check().in().value(), 1e-8);
    }

    /**
     * University of York, "Preparing solutions via accurate dilution": for 15 mL of solution the next flask is 25 mL; 0.02 mol/L in a
     * flask of 10 mL takes 2 mL of 0.1 mol/L.
     */
    @Test
    void flaskAndAliquot() {
        assertEquals(25, Flasks.holding(15e-6).orElseThrow() * 1e6, 1e-9);
        assertEquals(2, millilitres(plan("0.02 mol/L", "10 mL", molar("0.1 mol/L")).first().taken()), 1e-9);
    }

    /** OpenStax, Chemistry 2e, section 3.4, exercise 71: 114 g of 97.0 % sodium hydroxide for 1.00 L of 10.0 % of 1.109 g/mL. */
    @Test
    void impureSolid() {
        Figure strength = byMass("NaOH", "10.0 %", "1.109 g/mL").concentration();
        Plan plan = Plan.of(strength, typed("1.00 L"), solid("NaOH", "97.0 %"), Optional.empty()).value().orElseThrow();
        assertEquals(114, grams(plan.first().exact()), 0.5);
    }

    /** OpenStax, Chemistry 2e, section 3.3, dilutions of Example 3.20 and exercise 61, and the molarity of exercise 47 and 49. */
    @Test
    void textbookDilutions() {
        assertEquals(250, millilitres(plan("0.125 mol/L", "3.76 L", molar("1.88 mol/L")).first().exact()), 0.5);
        assertEquals(1.9, millilitres(plan("0.025 mol/L", "25 mL", molar("0.33 mol/L")).first().exact()), 0.05);
        assertEquals(27, grams(plan("0.30 mol/L", "0.500 L", solid("C6H12O6")).first().exact()), 0.5);
        assertEquals(10500, grams(plan("1.752 mol/L", "18.60 L", solid("Na2SO4.10H2O")).first().exact()), 50);
    }
}
