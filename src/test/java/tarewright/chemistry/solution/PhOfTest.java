package tarewright.chemistry.solution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.chemistry.Acidity;

/** The pH of what stands on the bench or goes into the waste, by its formula. */
class PhOfTest {
    private static final PhOf PH = new PhOf(Shelf.TABLES.acidConstants(), Acidity.AT_25_C);

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
        assertEquals(pH, PH.of(Shelf.formula(formula), strength).orElseThrow().pH(), within);
    }

    /** As much acid as salt: the pKa of acetic acid, 4.76, and of ammonium, 9.25 (CRC Handbook; from memory). */
    @ParameterizedTest
    @CsvSource({"CH3COOH, CH3COONa, 4.76", "NH3, NH4Cl, 9.25"})
    void aBufferHasThePhOfItsPka(String one, String other, double pKa) {
        List<PhOf.Dissolved> both = List.of(new PhOf.Dissolved(Shelf.formula(one), 0.1), new PhOf.Dissolved(Shelf.formula(other), 0.1));
        assertEquals(pKa, PH.of(both).orElseThrow().pH(), 0.02);
    }

    @Test
    void acidAndAlkaliInEqualAmountsAreNeutral() {
        List<PhOf.Dissolved> both = List.of(new PhOf.Dissolved(Shelf.formula("HCl"), 0.1), new PhOf.Dissolved(Shelf.formula("NaOH"), 0.1));
        assertEquals(7.0, PH.of(both).orElseThrow().pH(), 0.01);
    }

    /** How acid a metal ion makes water is not in the table, and is not guessed. */
    @ParameterizedTest
    @ValueSource(strings = {"FeCl3", "CuSO4", "AlCl3", "C6H12O6", "Na^+"})
    void whatIsNotKnownIsNotSaid(String formula) {
        assertTrue(PH.of(Shelf.formula(formula), 0.1).isEmpty());
    }
}
