package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.UnaryOperator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.chemistry.Balancing;
import tarewright.chemistry.BalanceResult;
import tarewright.chemistry.BalancedEquation;
import tarewright.chemistry.Equation;
import tarewright.chemistry.EquationResult;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;

import tarewright.chemistry.ShownFormula;
import tarewright.chemistry.ShownResult;
import tarewright.derivation.Symbol;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.wording.DocumentWords;
import tarewright.wording.TableWords;
import tarewright.wording.Spoken;

/**
 * Formulas, equations and symbols as IUPAC sets them: counts below the line, charges above it, states upright in brackets
 * (Nomenclature of Inorganic Chemistry 2005, IR-2.2.3, IR-4.2; Quantities, Units and Symbols in Physical Chemistry, 3rd
 * edition, 2.10.1).
 */
class TypesetTest {
    private static final ReferenceTables TABLES = Tables.load();
    private static final Typeset TYPESET =
            new Typeset(new Spoken(TABLES.substances(), TABLES.elements(), DocumentWords.in("en"), TableWords.in("en")), UnaryOperator.identity());

    private static Formula formula(String text) {
        return ((FormulaResult.Ok) Formula.parse(text)).formula();
    }

    private static ShownFormula shown(String text) {
        return ((ShownResult.Ok) Formula.parseShown(text)).formula();
    }

    private static BalancedEquation equation(String text) {
        Equation read = ((EquationResult.Ok) Equation.parse(text)).equation();
        return ((BalanceResult.Ok) Balancing.complete(read)).equation();
    }

    /** Subscripts as _, superscripts as ^. */
    private static String marked(List<Text> texts) {
        StringBuilder marked = new StringBuilder();
        for (Text text : texts) {
            if (text instanceof Text.Subscript sub) {
                marked.append("_").append(sub.text());
            } else if (text instanceof Text.Superscript sup) {
                marked.append("^").append(sup.text());
            } else if (text instanceof Text.Symbol symbol) {
                marked.append("/").append(symbol.letter()).append("/");
            } else if (text instanceof Text.Chemical chemical) {
                marked.append("<").append(marked(chemical.pieces())).append(">");
            } else if (text instanceof Text.Arrow arrow) {
                marked.append(arrow.sign()).append(arrow.over().isEmpty() ? "" : "{" + marked(arrow.over()) + "}");
            } else {
                marked.append(Plain.of(List.of(text)).replace('\u202F', '~'));
            }
        }
        return marked.toString();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "NaHCO3          | NaHCO_3              | sodium hydrogencarbonate",
        "CuSO4.5H2O      | CuSO_4·5H_2O         | copper(II) sulfate pentahydrate",
        "SO4^2-          | SO_4^2−              | S O 4 2 minus",
        "Fe^3+           | Fe^3+                | iron 3 plus",
        "Ag^+            | Ag^+                 | silver plus",
        "[Cu(NH3)4]^2+   | [Cu(NH_3)_4]^2+      | "
            + "open bracket C u open bracket N H 3 close bracket 4 close bracket 2 plus",
        "Mg              | Mg                   | magnesium"})
    void setsAndSaysAFormula(String typed, String set, String said) {
        Text.Chemical chemical = TYPESET.formula(formula(typed));
        assertEquals(set, marked(chemical.pieces()));
        assertEquals(said, chemical.spoken());
    }

    @Test
    void setsAnEquationWithItsStates() {
        Text.Chemical set = TYPESET.equation(equation("Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)"), List.of(), Typeset.Disguise.NONE);
        assertEquals("Mg(s) + 2~HCl(aq) → MgCl_2(aq) + H_2(g)", marked(set.pieces()));
        assertEquals("magnesium, solid, plus 2 hydrochloric acid, aqueous, gives magnesium chloride, aqueous, plus hydrogen, gas",
                set.spoken());
    }

    @Test
    void aCatalystStandsOverTheArrow() {
        Text.Chemical set = TYPESET.equation(equation("H2O2(aq) -> H2O(l) + O2(g)"), List.of(formula("MnO2")),
                Typeset.Disguise.NONE);
        assertEquals("2~H_2O_2(aq) →{MnO_2} 2~H_2O(l) + O_2(g)", marked(set.pieces()));
        assertTrue(set.spoken().contains("gives, with manganese dioxide over the arrow,")
                || set.spoken().contains("gives, with manganese(IV) oxide over the arrow,"), set.spoken());
    }

    @Test
    void anEquilibriumHasItsOwnArrow() {
        Text.Chemical set = TYPESET.equation(equation("N2(g) + H2(g) <=> NH3(g)"), List.of(), Typeset.Disguise.NONE);
        assertEquals("N_2(g) + 3~H_2(g) ⇌ 2~NH_3(g)", marked(set.pieces()));
        assertTrue(set.spoken().contains("in equilibrium with"), set.spoken());
    }

    /** The number of a hydrate that is to be found stands before the water of its equation too. */
    @Test
    void aHiddenNumberIsHiddenOnBothSides() {
        Formula hydrate = formula("CuSO4.5H2O");
        Typeset.Disguise disguise = f -> f.equals(hydrate) ? Optional.of(shown("CuSO4.xH2O")) : Optional.empty();
        Text.Chemical set = TYPESET.equation(equation("CuSO4.5H2O(s) -> CuSO4(s) + H2O(g)"), List.of(), disguise);
        assertEquals("CuSO_4·xH_2O(s) → CuSO_4(s) + x~H_2O(g)", marked(set.pieces()));
        assertTrue(set.spoken().chars().noneMatch(c -> c == '5') && !set.spoken().contains("penta"), set.spoken());
    }

    @Test
    void setsSymbols() {
        assertEquals("/n/(<SO_4^2−>)", marked(TYPESET.symbol(Symbol.ofFormula("n", "SO4^2-"))));
        assertEquals("/V/(acid)", marked(TYPESET.symbol(Symbol.ofName("V", "acid"))));
        assertEquals("/m///l/(<Mg>)", marked(TYPESET.symbol(Symbol.ofFormula("m/l", "Mg"))));
        assertEquals("mass of crucible", marked(TYPESET.symbol(Symbol.words("mass of crucible"))));
    }

    @ParameterizedTest
    @CsvSource({"cm3,cm³", "mol L-1,mol L⁻¹", "g/cm3,g/cm³", "mL,mL", "J/(g K),J/(g K)", "g/100,g/100"})
    void raisesThePowersOfUnits(String typed, String set) {
        assertEquals(set, Typeset.unit(typed));
    }

    private static final Prose PROSE = new Prose(List.of(formula("H2"), formula("H2O"), formula("BaSO4"), formula("Fe^3+"),
            formula("NaCl"), formula("CuSO4.5H2O"), formula("Ca(OH)2")), List.of(shown("MgSO4.xH2O")), Typeset.Disguise.NONE, TYPESET);

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "The gas is H2.            | The gas is <H_2>.",
        "(H2)                      | (<H_2>)",
        "H2-rich                   | <H_2>-rich",
        "H2O and H₂O               | <H_2O> and <H_2O>",
        "Fe3+, Fe^3+, Fe³⁺, Fe(3+) | <Fe^3+>, <Fe^3+>, <Fe^3+>, <Fe^3+>",
        "CuSO4.5H2O dissolves      | <CuSO_4·5H_2O> dissolves",
        "CuSO4·5H2O.               | <CuSO_4·5H_2O>.",
        "H2(g) escapes             | <H_2(g)> escapes",
        "within 0.10 mL, 25 cm3 at 20 °C | within 0.10~mL, 25~cm³ at 20~°C",
        "3 groups or 2 grams       | 3 groups or 2 grams",
        "some Ca(OH)2, and MgSO4.xH2O | some <Ca(OH)_2>, and <MgSO_4·xH_2O>"})
    void setsTheFormulasThatAreUsed(String text, String set) {
        assertEquals(set, marked(PROSE.of(text)));
    }

    /** Without a digit, bracket or charge; inside another word or formula; of a substance that is not used. */
    @ParameterizedTest
    @ValueSource(strings = {"NaCl", "xH2", "H2SO4", "2H2x", "CuSO4.7H2O", "H2O2", "vitamin H2b", "Fe2+", "FeH2"})
    void leavesOtherWordsAlone(String text) {
        assertEquals(List.of(new Text.Words(text)), PROSE.of(text));
    }
}
