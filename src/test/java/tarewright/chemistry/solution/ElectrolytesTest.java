package tarewright.chemistry.solution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.chemistry.Acidity;

/** The pH of what stands on the bench or goes into the waste, by its formula. */
class ElectrolytesTest {
    private static final Electrolytes ALL = new Electrolytes(Shelf.TABLES.acidConstants());

    private static InWater in(String formula, double molesPerLitre) {
        return ALL.of(Shelf.formula(formula)).orElseThrow().times(molesPerLitre);
    }

    private static double pH(InWater solution) {
        return solution.pH(Acidity.AT_25_C);
    }

    /**
     * Textbook values at 25 °C with concentrations for activities (from memory; general chemistry texts print them as worked examples): acetic acid 0.10 mol/L 2.88,
     * ammonia 0.10 mol/L 11.12, ammonium chloride 0.10 mol/L 5.13, sodium acetate 0.10 mol/L 8.88, sodium carbonate 0.10 mol/L 11.66, sodium
     * hydrogencarbonate 0.10 mol/L 8.3, phosphoric acid 0.10 mol/L 1.63, sulfuric acid 0.10 mol/L 0.96.
     */
    @ParameterizedTest
    @CsvSource({"HCl, 0.10, 1.00, 0.01", "HNO3, 0.010, 2.00, 0.01", "NaOH, 0.10, 13.00, 0.01", "Ca(OH)2, 0.010, 12.30, 0.02", "NaCl, 0.10, 7.00, 0.01",
        "CH3COOH, 0.10, 2.88, 0.02", "NH3, 0.10, 11.12, 0.03", "NH4Cl, 0.10, 5.13, 0.03", "CH3COONa, 0.10, 8.88, 0.03", "Na2CO3, 0.10, 11.66, 0.05",
        "NaHCO3, 0.10, 8.3, 0.1", "H3PO4, 0.10, 1.63, 0.05", "H2SO4, 0.10, 0.96, 0.03"})
    void aSolutionHasItsTextbookPh(String formula, double strength, double pH, double within) {
        assertEquals(pH, pH(in(formula, strength)), within);
    }

    /** As much acid as salt: the pKa of acetic acid, 4.76, and of ammonium, 9.25 (CRC Handbook; from memory). */
    @ParameterizedTest
    @CsvSource({"CH3COOH, CH3COONa, 4.76", "NH3, NH4Cl, 9.25"})
    void aBufferHasThePhOfItsPka(String one, String other, double pKa) {
        assertEquals(pKa, pH(in(one, 0.1).and(in(other, 0.1))), 0.02);
    }

    @Test
    void acidAndAlkaliInEqualAmountsAreNeutral() {
        assertEquals(7.0, pH(in("HCl", 0.1).and(in("NaOH", 0.1))), 0.01);
        assertEquals(7.0, pH(InWater.NOTHING), 0.01);
    }

    /** Water of crystallisation is water: soda crystals are as alkaline as soda ash. */
    @Test
    void aHydrateIsAsItsSalt() {
        assertEquals(pH(in("Na2CO3", 0.05)), pH(in("Na2CO3.10H2O", 0.05)), 1e-12);
    }

    /** How acid a metal ion makes water is not in the table, and is not guessed. */
    @ParameterizedTest
    @ValueSource(strings = {"FeCl3", "CuSO4", "AlCl3", "C6H12O6", "Cu^2+", "Al2(SO4)3"})
    void whatIsNotKnownIsNotSaid(String formula) {
        assertTrue(ALL.of(Shelf.formula(formula)).isEmpty());
    }

    /** Of an ion alone the charge is known, and what it gives or takes; one that is part of water brings nothing. */
    @Test
    void anIonBringsItsCharge() {
        assertEquals(new InWater(1, List.of()), in("Na^+", 1));
        assertEquals(new InWater(-2, List.of()), in("Cl^-", 2));
        assertEquals(InWater.NOTHING, in("OH^-", 1));
        assertEquals(0.2, in("Ba(OH)2", 0.1).strongCharge(), 1e-12);
        assertEquals(1, in("HCO3^-", 1).weak().size());
    }

    /**
     * The acid that is said to take a solution to a pH takes it there: added as hydrochloric acid or as sodium hydroxide, and at half of pKw, where the free
     * ions of water are equal, the solver finds that very pH. Two hundred mixtures by chance.
     */
    @Test
    void whatIsToBeTakenUpTakesItThere() {
        List<String> bottles = List.of("HCl", "H2SO4", "HNO3", "CH3COOH", "H3PO4", "NaOH", "Ca(OH)2", "NH3", "Na2CO3", "NaHCO3", "KMnO4", "Na2HPO4",
                "(NH4)2SO4", "KNO3", "HMnO4", "KHC8H4O4");
        SplittableRandom random = new SplittableRandom(7);
        double middle = Acidity.AT_25_C.pKw() / 2;
        for (int i = 0; i < 200; i++) {
            InWater solution = InWater.NOTHING;
            for (int k = random.nextInt(1, 5); k > 0; k--) {
                solution = solution.and(in(bottles.get(random.nextInt(bottles.size())), random.nextDouble(0.001, 0.5)));
            }
            double acid = solution.acidAt(middle);
            InWater taken = solution.and(acid > 0 ? in("NaOH", acid) : in("HCl", -acid));
            assertEquals(middle, pH(taken), 1e-6);
        }
    }
}
