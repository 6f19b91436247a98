package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.chemistry.Cases.formula;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.chemistry.FormulaPart.Kind;
import tarewright.exact.Rational;

/**
 * Formulas as IUPAC writes them: Nomenclature of Inorganic Chemistry 2005 (the Red Book), IR-4, for brackets, charges with the
 * sign behind the number, and adducts with a centred dot. The typing aids are our own.
 */
class FormulaTest {
    @ParameterizedTest
    @CsvSource({
        "NaHCO3, NaHCO3, NaHCO₃",
        "NaHCO₃, NaHCO3, NaHCO₃",
        "' NaHCO3 ', NaHCO3, NaHCO₃",
        "CuSO₄·5H₂O, CuSO4.5H2O, CuSO₄·5H₂O",
        "CuSO4.5H2O, CuSO4.5H2O, CuSO₄·5H₂O",
        "CuSO₄ · 5 H₂O, CuSO4.5H2O, CuSO₄·5H₂O",
        "CuSO4•5H2O, CuSO4.5H2O, CuSO₄·5H₂O",
        "H2C2O4.2H2O, H2C2O4.2H2O, H₂C₂O₄·2H₂O",
        "CaSO4.1H2O, CaSO4.H2O, CaSO₄·H₂O",
        "CaSO₄·½H₂O, CaSO4.1/2H2O, CaSO₄·½H₂O",
        "CaSO4.0.5H2O, CaSO4.1/2H2O, CaSO₄·½H₂O",
        "CaSO4·2/4H2O, CaSO4.1/2H2O, CaSO₄·½H₂O",
        "CdSO4·8/3H2O, CdSO4.8/3H2O, CdSO₄·8/3H₂O",
        "CoCl2·1½H2O, CoCl2.3/2H2O, CoCl₂·3/2H₂O",
        "CuSO4.5.0H2O, CuSO4.5H2O, CuSO₄·5H₂O",
        "(NH4)3PO4·12MoO3, (NH4)3PO4.12MoO3, (NH₄)₃PO₄·12MoO₃",
        "K3[Fe(CN)6], K3[Fe(CN)6], K₃[Fe(CN)₆]",
        "[Cr(N2H4CO)6]4[Cr(CN)6]3, [Cr(N2H4CO)6]4[Cr(CN)6]3, [Cr(N₂H₄CO)₆]₄[Cr(CN)₆]₃",
        "[Cu(NH₃)₄]²⁺, [Cu(NH3)4]^2+, [Cu(NH₃)₄]²⁺",
        "SO₄²⁻, SO4^2-, SO₄²⁻",
        "SO4^2-, SO4^2-, SO₄²⁻",
        "SO4^2−, SO4^2-, SO₄²⁻",
        "SO4(2-), SO4^2-, SO₄²⁻",
        "SO₄2-, SO4^2-, SO₄²⁻",
        "Fe^3+, Fe^3+, Fe³⁺",
        "Fe(3+), Fe^3+, Fe³⁺",
        "Fe³⁺, Fe^3+, Fe³⁺",
        "MnO4^-, MnO4^-, MnO₄⁻",
        "MnO₄⁻, MnO4^-, MnO₄⁻",
        "MnO4^1-, MnO4^-, MnO₄⁻",
        "NH₄+, NH4^+, NH₄⁺",
        "[Cu(NH3)4]+, [Cu(NH3)4]^+, [Cu(NH₃)₄]⁺",
        "Na+, Na^+, Na⁺",
        "Cl-, Cl^-, Cl⁻",
        "Hg2^2+, Hg2^2+, Hg₂²⁺",
        "e^-, e^-, e⁻",
        "e⁻, e^-, e⁻",
        "e-, e^-, e⁻",
        "C1H4, CH4, CH₄",
    })
    void readsAndPrints(String written, String plain, String unicode) {
        assertEquals(plain, formula(written).plain());
        assertEquals(unicode, formula(written).unicode());
    }

    @Test
    void countsAtomsAndCharge() {
        assertEquals(Map.of("Cu", 1, "S", 1, "O", 9, "H", 10), formula("CuSO4.5H2O").atoms());
        assertEquals(Map.of("K", 3, "Fe", 1, "C", 6, "N", 6), formula("K3[Fe(CN)6]").atoms());
        assertEquals(Map.of("Cr", 7, "N", 66, "H", 96, "C", 42, "O", 24), formula("[Cr(N2H4CO)6]4[Cr(CN)6]3").atoms());
        assertEquals(Map.of("N", 3, "H", 12, "P", 1, "O", 40, "Mo", 12), formula("(NH4)3PO4.12MoO3").atoms());
        assertEquals(List.of("Cu", "N", "H"), List.copyOf(formula("[Cu(NH3)4]^2+").atoms().keySet()), "first appearance");
        assertEquals(2, formula("[Cu(NH3)4]^2+").charge());
        assertEquals(-2, formula("SO4^2-").charge());
        assertEquals(0, formula("NaCl").charge());
        assertEquals(Map.of(), formula("e^-").atoms());
        assertEquals(-1, formula("e^-").charge());
        assertTrue(formula("e^-").isElectron());
        assertFalse(formula("H^+").isElectron());
    }

    /** Plaster of Paris and the cadmium sulfate of the Weston cell hold a fraction of water; atoms stay whole numbers. */
    @Test
    void aFractionOfWaterIsCountedInSeveralFormulaUnits() {
        Formula plaster = formula("CaSO4·½H2O");
        assertEquals(2, plaster.units());
        assertEquals(Map.of("Ca", 2, "S", 2, "O", 9, "H", 2), plaster.atoms());
        assertEquals(Rational.of(9, 2), plaster.count("O"));
        assertEquals(Rational.of(1, 2), plaster.waters());
        assertEquals(OptionalInt.empty(), plaster.watersOfCrystallisation());
        assertEquals(formula("CaSO4"), plaster.anhydrous());
        assertEquals(3, formula("CdSO4·8/3H2O").units());
        assertEquals(1, formula("CaSO4.2H2O").units());
        assertTrue(formula("S.1/2O2").sameComposition(formula("SO")));
        assertFalse(plaster.sameComposition(formula("(CaSO4)2.H2O")), "one formula unit is half as much");
    }

    /** Co is cobalt, CO is not; case decides. */
    @Test
    void capitalsDecide() {
        assertEquals(Map.of("Co", 1), formula("Co").atoms());
        assertEquals(Map.of("C", 1, "O", 1), formula("CO").atoms());
        assertNotEquals(formula("NO"), formula("No"));
    }

    @Test
    void equalIfWrittenAlikeSameCompositionIfGroupedOtherwise() {
        assertEquals(formula("CuSO₄·5H₂O"), formula("CuSO4.5H2O"));
        assertEquals(formula("CuSO₄·5H₂O").hashCode(), formula("CuSO4.5H2O").hashCode());
        assertNotEquals(formula("CuSO4.5H2O"), formula("CuSO4(H2O)5"));
        assertTrue(formula("CuSO4.5H2O").sameComposition(formula("CuSO4(H2O)5")));
        assertTrue(formula("CH3COOH").sameComposition(formula("C2H4O2")));
        assertFalse(formula("Fe^2+").sameComposition(formula("Fe^3+")));
        assertFalse(formula("CO").sameComposition(formula("CO2")));
    }

    @Test
    void piecesForTypesetting() {
        assertEquals(List.of(
                new FormulaPart(Kind.OPEN_BRACKET, "["), new FormulaPart(Kind.SYMBOL, "Fe"),
                new FormulaPart(Kind.OPEN_BRACKET, "("), new FormulaPart(Kind.SYMBOL, "H"),
                new FormulaPart(Kind.SUBSCRIPT, "2"), new FormulaPart(Kind.SYMBOL, "O"),
                new FormulaPart(Kind.CLOSE_BRACKET, ")"), new FormulaPart(Kind.SUBSCRIPT, "6"),
                new FormulaPart(Kind.CLOSE_BRACKET, "]"), new FormulaPart(Kind.SUPERSCRIPT, "3+")),
                formula("[Fe(H2O)6]^3+").parts());
        assertEquals(List.of(
                new FormulaPart(Kind.SYMBOL, "Na"), new FormulaPart(Kind.SUBSCRIPT, "2"), new FormulaPart(Kind.SYMBOL, "C"),
                new FormulaPart(Kind.SYMBOL, "O"), new FormulaPart(Kind.SUBSCRIPT, "3"), new FormulaPart(Kind.DOT, "·"),
                new FormulaPart(Kind.MULTIPLIER, "10"), new FormulaPart(Kind.SYMBOL, "H"),
                new FormulaPart(Kind.SUBSCRIPT, "2"), new FormulaPart(Kind.SYMBOL, "O")),
                formula("Na2CO3.10H2O").parts());
        assertEquals(new FormulaPart(Kind.SUPERSCRIPT, "2−"), formula("SO4(2-)").parts().get(3), "the true minus sign");
    }

    @Test
    void waterOfCrystallisation() {
        assertEquals(OptionalInt.of(5), formula("CuSO4.5H2O").watersOfCrystallisation());
        assertEquals(OptionalInt.of(1), formula("CaSO4.H2O").watersOfCrystallisation());
        assertEquals(OptionalInt.empty(), formula("CuSO4").watersOfCrystallisation());
        assertEquals(OptionalInt.empty(), formula("H2O").watersOfCrystallisation());
        assertEquals(OptionalInt.empty(), formula("(NH4)3PO4.12MoO3").watersOfCrystallisation());
        assertEquals(formula("CuSO4"), formula("CuSO4.5H2O").anhydrous());
        assertEquals(formula("CuSO4"), formula("CuSO4").anhydrous());
        assertEquals(formula("(NH4)3PO4.12MoO3"), formula("(NH4)3PO4.12MoO3.3H2O").anhydrous());
        assertEquals(formula("[Fe]^3+"), formula("[Fe].6H2O^3+").anhydrous(), "the charge stays");
    }

    @ParameterizedTest
    @CsvSource({"CuSO4.xH2O, CuSO4.xH2O, CuSO₄·xH₂O", "Na2CO3·nH2O, Na2CO3.nH2O, Na₂CO₃·nH₂O",
        "(C6H10O5)n, (C6H10O5)n, (C₆H₁₀O₅)n",
        "MCO3, '', ''", "NaCl, NaCl, NaCl"})
    void aFormulaToShowMayHoldALetter(String written, String plain, String unicode) {
        ShownResult shown = Formula.parseShown(written);
        if (plain.isEmpty()) {
            assertInstanceOf(ShownResult.Bad.class, shown);
        } else {
            assertEquals(plain, ((ShownResult.Ok) shown).formula().plain());
            assertEquals(unicode, ((ShownResult.Ok) shown).formula().unicode());
        }
    }

    /** A number of a hydrate that is hidden from the students is a formula to show, never one to compute with. */
    @ParameterizedTest
    @ValueSource(strings = {"CuSO4.xH2O", "(C6H10O5)n"})
    void aLetterIsNeverComputedWith(String written) {
        assertInstanceOf(FormulaResult.Bad.class, Formula.parse(written));
    }

    /** IUPAC Periodic Table of the Elements, 4 May 2022: 118 elements, from H to Og. */
    @Test
    void everySymbolIsAFormula() {
        assertEquals(118, Symbols.ALL.size());
        for (String symbol : Symbols.ALL) {
            assertEquals(Map.of(symbol, 1), formula(symbol).atoms());
        }
        for (Map<String, String> row : Cases.table("/tarewright/data/atomic-weights.csv")) {
            assertEquals(row.get("symbol"), Symbols.ALL.get(Integer.parseInt(row.get("z")) - 1));
        }
    }

    /** Of the formulas in the tables that come with the program, those that are none name what is none. */
    @ParameterizedTest
    @CsvSource({"substances.csv, formula", "acid-base.csv, acid_form", "acid-base.csv, base_form", "gas-virial.csv, formula",
        "thermo.csv, formula", "solubility-salts.csv, formula", "solubility-salts.csv, solid_phase",
        "gas-solubility.csv, formula"})
    void everyFormulaOfOurTablesIsReadAndPrintedBack(String table, String column) {
        int read = 0;
        for (Map<String, String> row : Cases.table("/tarewright/data/" + table)) {
            String written = row.get(column);
            if (written.isEmpty() || written.equals("mixture") || written.equals("(C6H10O5)n")) {
                continue;
            }
            Formula formula = formula(written);
            assertEquals(formula, formula(formula.plain()));
            assertEquals(formula, formula(formula.unicode()));
            read++;
        }
        assertTrue(read > 10, "only " + read);
    }
}
