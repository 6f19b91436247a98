package tarewright.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.chemistry.BalanceResult;
import tarewright.chemistry.BalancedEquation;
import tarewright.chemistry.Balancing;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Equation;
import tarewright.chemistry.FormationEnthalpies;
import tarewright.chemistry.FormationEnthalpy;
import tarewright.chemistry.Formula;
import tarewright.chemistry.Ions;
import tarewright.chemistry.Provenance;
import tarewright.chemistry.ReactionEnthalpy;
import tarewright.chemistry.State;

class EnthalpyTest {
    private static final ReferenceTables TABLES = Tables.load();

    /**
     * Molar enthalpy of solution at infinite dilution and 25 °C: Parker, NSRDS-NBS 2 (1965), as printed in the CRC Handbook,
     * "Enthalpy of Solution of Electrolytes". Formation enthalpies come from another compilation: within 0.6 kJ/mol.
     */
    @ParameterizedTest
    @CsvSource({"NaOH, s, -44.51", "NaCl, s, 3.88", "NaNO3, s, 20.50", "NaNO2, s, 13.89", "NaBr, s, -0.60", "NaI, s, -7.53",
            "NaCH3COO, s, -17.32", "NH4Cl, s, 14.78", "NH4NO3, s, 25.69", "LiCl, s, -37.03", "AgNO3, s, 22.59",
            "HCl, g, -74.84", "HBr, g, -85.14", "HI, g, -81.67", "HNO3, l, -33.28", "KOH, s, -57.61"})
    void enthalpyOfSolutionAgreesWithTheHandbook(String formula, String state, double kilojoules) {
        double dissolved = TABLES.enthalpies().of(formula(formula), State.AQUEOUS).orElseThrow().joulesPerMole();
        double whole = TABLES.enthalpies().of(formula(formula), State.of(state).orElseThrow()).orElseThrow().joulesPerMole();
        assertEquals(kilojoules, (dissolved - whole) / 1000, 0.6);
    }

    /**
     * Enthalpies of reaction printed by OpenStax, Chemistry 2e, chapter 5, and of combustion in its Table 5.2 (25 °C);
     * the neutralisation and the decomposition of chalk as every handbook has them. From memory, to 1 kJ and 0.3 %.
     */
    @ParameterizedTest
    @CsvSource({"C(s) + O2(g) -> CO2(g), -393.5", "H2(g) + O2(g) -> H2O(l), -571.6", "CH4(g) + O2(g) -> CO2(g) + H2O(l), -890.8",
            "C2H2(g) + O2(g) -> CO2(g) + H2O(l), -2602.2", "C2H5OH(l) + O2(g) -> CO2(g) + H2O(l), -1366.8",
            "CH3OH(l) + O2(g) -> CO2(g) + H2O(l), -1453.2", "C8H18(l) + O2(g) -> CO2(g) + H2O(l), -10940",
            "Mg(s) + O2(g) -> MgO(s), -1203.2", "HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l), -55.8",
            "CaCO3(s) -> CaO(s) + CO2(g), 178.3", "Al(s) + Fe2O3(s) -> Al2O3(s) + Fe(s), -851.5",
            "Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g), -466.9", "Zn(s) + CuSO4(aq) -> ZnSO4(aq) + Cu(s), -218.7",
            "H2O2(l) -> H2O(l) + O2(g), -196.1", "N2(g) + H2(g) -> NH3(g), -91.8", "CO(g) + O2(g) -> CO2(g), -566.0"})
    void reactionEnthalpiesAgreeWithPrintedOnes(String equation, double kilojoules) {
        ReactionEnthalpy.Known known = assertInstanceOf(ReactionEnthalpy.Known.class, TABLES.enthalpies().of(balanced(equation)));
        assertEquals(kilojoules, known.joules() / 1000, Math.max(1, Math.abs(kilojoules) * 0.003));
        assertEquals(balanced(equation).terms().size(), known.parts().size());
    }

    static List<PublishedCase> published() {
        return PublishedCase.of("enthalpy").stream().filter(c -> c.has("equation") && c.json().toString().contains("dHf_"))
                .toList();
    }

    /** The textbook's own formation enthalpies put through our sum. */
    @ParameterizedTest
    @MethodSource("published")
    void sumAgreesWithWorkedExamples(PublishedCase c) {
        BalancedEquation equation = balanced(c.text("equation"));
        List<FormationEnthalpy> rows = new ArrayList<>();
        for (BalancedEquation.Term term : equation.terms()) {
            rows.add(new FormationEnthalpy(term.species().formula(), term.species().state().orElseThrow(),
                    c.number("dHf_" + term.species().plain()), new Provenance("the textbook", Confidence.READ)));
        }
        ReactionEnthalpy found = new FormationEnthalpies(rows, Set.of()).of(equation);
        assertEquals(c.answer(), assertInstanceOf(ReactionEnthalpy.Known.class, found).joules(), c.allowed());
    }

    static List<Row> otherSource() {
        return Rows.of("thermo-checks.csv").stream().filter(row -> !row.text("check_dfH").isEmpty()).toList();
    }

    /** Active Thermochemical Tables and other compilations, within the difference that is noted beside each. */
    @ParameterizedTest
    @MethodSource("otherSource")
    void formationEnthalpiesAgreeWithAnotherSource(Row row) {
        double found = TABLES.enthalpies().of(row.formula("formula"), row.state("state")).orElseThrow().joulesPerMole() / 1000;
        assertEquals(row.number("check_dfH"), found, Math.abs(row.number("diff_kJ_mol")) + 0.06);
    }

    @Test
    void elementsInTheirUsualStateAreZero() {
        for (String element : List.of("H2 g", "O2 g", "N2 g", "Cl2 g", "Br2 l", "I2 s", "C s", "S s", "Mg s", "Zn s", "Hg l")) {
            String[] parts = element.split(" ");
            assertEquals(0, TABLES.enthalpies().of(formula(parts[0]), State.of(parts[1]).orElseThrow()).orElseThrow()
                    .joulesPerMole(), element);
        }
    }

    @Test
    void whatIsMissingIsNamed() {
        ReactionEnthalpy found = TABLES.enthalpies().of(balanced("Na(s) + UF6(g) -> NaF(s) + U"));
        ReactionEnthalpy.Missing missing = assertInstanceOf(ReactionEnthalpy.Missing.class, found);
        assertEquals("no-formation-enthalpy", missing.id());
        assertEquals(List.of("U"), missing.withoutState().stream().map(Object::toString).toList());
        assertEquals(List.of("UF6(g)", "NaF(s)"), missing.unknown().stream().map(Object::toString).toList());
    }

    /** Strong electrolytes part into these ions: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"MgCl2, 1 Mg^2+ 2 Cl^-", "Na2CO3, 2 Na^+ 1 CO3^2-", "NaHCO3, 1 Na^+ 1 HCO3^-", "(NH4)2SO4, 2 NH4^+ 1 SO4^2-",
            "NH4NO3, 1 NH4^+ 1 NO3^-", "H2SO4, 2 H^+ 1 SO4^2-", "HNO3, 1 H^+ 1 NO3^-", "Ca(OH)2, 1 Ca^2+ 2 OH^-",
            "CuSO4.5H2O, 1 Cu^2+ 1 SO4^2-", "NaHSO4, 1 Na^+ 1 HSO4^-", "KMnO4, 1 K^+ 1 MnO4^-", "Fe2(SO4)3, 2 Fe^3+ 3 SO4^2-",
            "K3[Fe(CN)6], 3 K^+ 1 Fe(CN)6^3-", "K4[Fe(CN)6], 4 K^+ 1 Fe(CN)6^4-", "Na2S2O3, 2 Na^+ 1 S2O3^2-",
            "(NH4)2Fe(SO4)2, 2 NH4^+ 1 Fe^2+ 2 SO4^2-", "KAl(SO4)2, 1 K^+ 1 Al^3+ 2 SO4^2-", "HC2H3O2, none", "HCN, none",
            "H2C2O4, none", "C2H5OH, none", "CO2, none", "H2O, none", "NH3, none", "H2S, none"})
    void electrolytesPartIntoTheirIons(String formula, String ions) {
        Ions table = new Ions(TABLES.enthalpies().all().stream().map(FormationEnthalpy::formula)
                .filter(each -> each.charge() != 0).toList());
        String found = table.of(formula(formula)).map(split -> String.join(" ",
                split.stream().map(each -> each.count() + " " + each.ion().plain()).sorted().toList())).orElse("none");
        String wanted = ions.equals("none") ? ions : sorted(ions);
        assertEquals(wanted, found);
    }

    private static String sorted(String ions) {
        String[] words = ions.split(" ");
        List<String> pairs = new ArrayList<>();
        for (int i = 0; i < words.length; i += 2) {
            pairs.add(words[i] + " " + words[i + 1]);
        }
        return String.join(" ", pairs.stream().sorted().toList());
    }

    @Test
    void aWeakAcidInWaterIsItsOwnRow() {
        assertTrue(TABLES.enthalpies().of(formula("CH3COOH"), State.AQUEOUS).isPresent());
        assertTrue(TABLES.enthalpies().of(formula("HCN"), State.AQUEOUS).isEmpty());
    }

    private static BalancedEquation balanced(String text) {
        Equation equation = Equation.parse(text).value().orElseThrow();
        return assertInstanceOf(BalanceResult.Ok.class, Balancing.complete(equation)).equation();
    }

    private static Formula formula(String text) {
        return Formula.parse(text).value().orElseThrow();
    }
}
