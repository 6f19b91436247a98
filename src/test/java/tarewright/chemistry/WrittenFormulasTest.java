package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.exact.Rational;

/** What is read off a formula once it is read: its ions, its water, its other spellings, and how long a text may be. */
class WrittenFormulasTest {
    private static Formula formula(String text) {
        return Formula.parse(text).value().orElseThrow();
    }

    private static final Ions IONS = new Ions(Stream.of("Na^+", "K^+", "H^+", "NH4^+", "Ca^2+", "Cu^2+", "Fe^2+", "Fe^3+", "Al^3+", "Mg^2+", "Cl^-", "OH^-", "NO3^-", "SO4^2-",
            "HSO4^-", "S^2-", "O^2-", "CO3^2-", "HCO3^-", "CH3COO^-", "PO4^3-", "HPO4^2-", "S2O3^2-", "F^-").map(WrittenFormulasTest::formula).toList());

    private static String ions(String text) {
        return IONS.of(formula(text)).map(all -> all.stream().map(c -> c.count() + " " + c.ion().plain()).collect(Collectors.joining(", "))).orElse("whole");
    }

    /** Salts, strong bases and strong acids part in much water (IUPAC nomenclature of the ions; common knowledge of chemistry). */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {"NaCl | 1 Na^+, 1 Cl^-", "CuSO4.5H2O | 1 Cu^2+, 1 SO4^2-", "Al2(SO4)3 | 2 Al^3+, 3 SO4^2-", "Fe(NO3)3 | 1 Fe^3+, 3 NO3^-", "FeCl2 | 1 Fe^2+, 2 Cl^-",
        "KAl(SO4)2.12H2O | 1 K^+, 1 Al^3+, 2 SO4^2-", "NH4Fe(SO4)2 | 1 NH4^+, 1 Fe^3+, 2 SO4^2-", "(NH4)2Fe(SO4)2 | 2 NH4^+, 1 Fe^2+, 2 SO4^2-", "Ca(OH)2 | 1 Ca^2+, 2 OH^-", "Na2S2O3 | 2 Na^+, 1 S2O3^2-",
        "HCl | 1 H^+, 1 Cl^-", "HNO3 | 1 H^+, 1 NO3^-", "H2SO4 | 2 H^+, 1 SO4^2-", "NaHSO4 | 1 Na^+, 1 HSO4^-", "NaHCO3 | 1 Na^+, 1 HCO3^-", "CH3COONa | 1 Na^+, 1 CH3COO^-", "Na2HPO4 | 2 Na^+, 1 HPO4^2-",
        "NH4NO3 | 1 NH4^+, 1 NO3^-"})
    void aStrongElectrolyteParts(String text, String parts) {
        assertEquals(parts, ions(text));
    }

    /** A weak acid stays whole, a charged thing is one already, and what has an unknown ion in it is left alone. */
    @ParameterizedTest
    @ValueSource(strings = {"CH3COOH", "HF", "H3PO4", "H2CO3", "H2O", "C6H12O6", "SO4^2-", "AgNO3", "ZnCl2", "O2", "NaCl2"})
    void theRestStaysWhole(String text) {
        assertEquals("whole", ions(text));
    }

    // --- water of crystallisation

    @ParameterizedTest
    @CsvSource({"CuSO4.5H2O, 5, CuSO4", "CaSO4.1/2H2O, 1/2, CaSO4", "NaCl, 0, NaCl", "Na2CO3.NaHCO3.2H2O, 2, Na2CO3.NaHCO3", "CuSO4.H2O, 1, CuSO4", "H2O, 0, H2O", "MgCl2.6NH3, 0, MgCl2.6NH3"})
    void theWaterOfAHydrate(String text, String waters, String dry) {
        assertEquals(waters, formula(text).waters().toString());
        assertEquals(dry, formula(text).anhydrous().plain());
        boolean whole = waters.length() == 1 && !waters.equals("0");
        assertEquals(whole ? OptionalInt.of(Integer.parseInt(waters)) : OptionalInt.empty(), formula(text).watersOfCrystallisation());
    }

    /** Of a charged hydrate the charge stays with what is left. */
    @Test
    void aChargeIsKeptWithoutItsWater() {
        Formula hydrate = formula("[Cu(NH3)4]^2+");
        assertEquals(hydrate, hydrate.anhydrous());
        assertEquals(2, hydrate.anhydrous().charge());
    }

    @Test
    void aFormulaKnowsItsAtoms() {
        assertEquals(Rational.of(9), formula("CuSO4.5H2O").count("O"));
        assertEquals(Rational.of(1), formula("CaSO4.1/2H2O").count("H"));
        assertEquals(Rational.of(0), formula("NaCl").count("O"));
        assertEquals(2, formula("CaSO4.1/2H2O").units());
        assertTrue(formula("e^-").isElectron() && !formula("H^+").isElectron());
        assertTrue(formula("CH3COOH").sameComposition(formula("HC2H3O2")) && !formula("Fe^2+").sameComposition(formula("Fe^3+")) && !formula("CaSO4.1/2H2O").sameComposition(formula("CaSO4.H2O")));
        assertEquals(formula("NaCl").hashCode(), formula("NaCl").hashCode());
        assertFalse(formula("NaCl").equals("NaCl") || formula("NaCl").equals(formula("KCl")));
        assertEquals("SO4^2- SO₄²⁻", formula("SO4^2-") + " " + formula("SO4^2-").unicode());
    }

    // --- species and terms

    @Test
    void aSpeciesIsTheSameWhereItsStateIsNotWritten() {
        Species liquid = new Species(formula("H2O"), Optional.of(State.LIQUID));
        Species gas = new Species(formula("H2O"), Optional.of(State.GAS));
        Species open = new Species(formula("H2O"), Optional.empty());
        assertTrue(liquid.sameAs(open) && open.sameAs(gas) && liquid.sameAs(liquid));
        assertFalse(liquid.sameAs(gas) || liquid.sameAs(new Species(formula("H2O2"), Optional.of(State.LIQUID))));
        assertEquals(List.of("H2O(l)", "H₂O(l)", "H2O"), List.of(liquid.toString(), liquid.unicode(), open.plain()));
        assertEquals(List.of(Optional.of(State.SOLID), Optional.of(State.AQUEOUS), Optional.empty()), List.of(State.of("s"), State.of("aq"), State.of("S")));
    }

    @Test
    void aCoefficientIsFromOneToAMillion() {
        Species water = new Species(formula("H2O"), Optional.empty());
        assertThrows(IllegalArgumentException.class, () -> new BalancedEquation.Term(0, water));
        assertThrows(IllegalArgumentException.class, () -> new BalancedEquation.Term(1_000_001, water));
        assertEquals(1_000_000, new BalancedEquation.Term(1_000_000, water).coefficient());
        assertEquals(1, new BalancedEquation.Term(1, water).coefficient());
        assertThrows(IllegalArgumentException.class, () -> new Equation(List.of(), List.of(new Equation.Term(Optional.empty(), water, 0, 1)), Equation.Sign.YIELDS));
        assertThrows(IllegalArgumentException.class, () -> new Equation(List.of(new Equation.Term(Optional.empty(), water, 0, 1)), List.of(), Equation.Sign.YIELDS));
    }

    /** IUPAC's three arrows, in ASCII and as signs; whether coefficients are meant shows in one of them. */
    @ParameterizedTest
    @CsvSource({"->, →", "=, =", "<=>, ⇌"})
    void theSignsOfAnEquation(String typed, String sign) {
        Equation equation = equation("H2 + Cl2 " + typed + " HCl");
        assertEquals(typed, equation.sign().typed());
        assertEquals(sign, equation.sign().unicode());
        assertEquals(equation.sign(), equation("H2 + Cl2 " + sign + " HCl").sign());
        assertFalse(equation.hasCoefficients());
        assertTrue(equation("H2 + Cl2 " + typed + " 2 HCl").hasCoefficients() && equation("1 H2 + Cl2 " + typed + " HCl").hasCoefficients());
    }

    private static Equation equation(String text) {
        return Equation.parse(text).value().orElseThrow();
    }

    // --- how much is read

    @Test
    void anEquationHasAHundredSpeciesAtMost() {
        String left = Stream.iterate(1, i -> i + 1).limit(60).map(i -> "H" + i).collect(Collectors.joining(" + "));
        String forty = Stream.iterate(1, i -> i + 1).limit(40).map(i -> "Li" + i).collect(Collectors.joining(" + "));
        assertEquals(100, equation(left.replace("H20 ", "H120 ") + " -> " + forty).terms().size());
        assertEquals("too-many-species", trouble(left.replace("H20 ", "H120 ") + " -> " + forty + " + Be"));
        String many = Stream.iterate(1, i -> i + 1).limit(101).map(i -> "Li" + i).collect(Collectors.joining(" + "));
        assertEquals("too-many-species", trouble(many + " -> Be"));
        assertEquals("equation-too-long", trouble("H2 -> " + "H".repeat(Equation.LONGEST)));
        assertEquals("bad-equation-syntax", trouble(" ".repeat(Equation.LONGEST)));
    }

    private static String trouble(String text) {
        return assertInstanceOf(EquationResult.Bad.class, Equation.parse(text)).troubles().get(0).id();
    }

    @Test
    void aFormulaIsOfBoundedLength() {
        String most = "C" + "H".repeat(Formula.LONGEST - 1);
        assertEquals(Formula.LONGEST - 1, formula(most).count("H").numerator().intValueExact());
        assertEquals("formula-too-long", assertInstanceOf(FormulaResult.Bad.class, Formula.parse(most + "H")).trouble().id());
        assertEquals("NaCl", formula("  NaCl ").plain(), "spaces around it do not count");
        assertEquals(most, formula("   " + most + " ").plain(), "nor for its length");
    }

    // --- found by a formula

    /** Written alike goes first, then the same atoms; isomers, and what two rows share, are found by their own formula only. */
    @Test
    void aRowIsFoundByItsAtomsUnlessIsomersShareThem() {
        Set<Composition> isomers = Set.of(Composition.of(formula("C2H6O")));
        FormulaIndex<String> index = new FormulaIndex<>(List.of("CH3COOH", "C2H5OH", "CH3CHO", "C2H4O", "NaCl", "NaCl "), text -> formula(text.strip()), isomers);
        assertEquals(Optional.of("CH3COOH"), index.of(formula("HC2H3O2")));
        assertEquals(Optional.of("C2H5OH"), index.of(formula("C2H5OH")));
        assertEquals(Optional.empty(), index.of(formula("CH3OCH3")), "an isomer of ethanol");
        assertEquals(Optional.of("CH3CHO"), index.of(formula("CH3CHO")));
        assertEquals(Optional.empty(), index.of(formula("OC2H4")), "two rows have these atoms");
        assertEquals(Optional.of("NaCl"), index.of(formula("ClNa")), "an earlier row goes before a later one");
        assertEquals(List.of("CH3COOH", "C2H5OH", "CH3CHO", "C2H4O", "NaCl"), index.all());
    }

    /** A formula that is only shown may have a letter for a count. */
    @Test
    void aShownFormulaMayHideItsNumber() {
        ShownFormula shown = assertInstanceOf(ShownResult.Ok.class, Formula.parseShown("CuSO4.xH2O")).formula();
        assertEquals("CuSO4.xH2O CuSO₄·xH₂O", shown.plain() + " " + shown.unicode());
        assertInstanceOf(ShownResult.Bad.class, Formula.parseShown("CuSO4.xH2O)"));
        assertInstanceOf(FormulaResult.Bad.class, Formula.parse("CuSO4.xH2O"));
    }
}
