package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.chemistry.Cases.equation;
import static tarewright.chemistry.Cases.formula;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.chemistry.Equation.Sign;
import tarewright.chemistry.Equation.Term;
import tarewright.chemistry.EquationTrouble.BadEquationSyntax;
import tarewright.chemistry.EquationTrouble.EquationTooLong;
import tarewright.chemistry.EquationTrouble.SpeciesGivenTwice;
import tarewright.chemistry.EquationTrouble.SpeciesOnBothSides;
import tarewright.chemistry.EquationTrouble.TooManySpecies;
import tarewright.chemistry.EquationTrouble.UnknownState;
import tarewright.exact.Rational;

/**
 * Equations as IUPAC writes them: Quantities, Units and Symbols in Physical Chemistry (3rd edition 2007), 2.10.1, for the three
 * signs and the states; the typing aids are our own.
 */
class EquationTest {
    private static final String LETTERS = "H2 + O(aq)(s)->=<⇌½1/2 ClNa^+-e. (C)[]x⁺²";

    @Test
    void readsTermsWithTheirPlaces() {
        Equation equation = equation("Mg(s) + 2 HCl(aq) -> MgCl2(aq) + H2(g)");
        assertEquals(Sign.YIELDS, equation.sign());
        assertEquals(new Term(Optional.empty(), new Species(formula("Mg"), Optional.of(State.SOLID)), 0, 5),
                equation.left().get(0));
        assertEquals(new Term(Optional.of(Rational.of(2)), new Species(formula("HCl"), Optional.of(State.AQUEOUS)), 8, 17),
                equation.left().get(1));
        assertEquals(38, equation.right().get(1).to());
        assertTrue(equation.hasCoefficients());
        assertFalse(equation("Mg + HCl -> MgCl2 + H2").hasCoefficients());
    }

    /** Each with its species in plain form, a semicolon at the sign. */
    @ParameterizedTest
    @CsvSource({
        "Mg(s)+2HCl(aq)→MgCl2(aq)+H2(g), Mg(s) 2 HCl(aq) YIELDS MgCl2(aq) H2(g)",
        "Mg (s) + 2 HCl (aq) → MgCl2 (aq) + H2 (g), Mg(s) 2 HCl(aq) YIELDS MgCl2(aq) H2(g)",
        "H2 + ½ O2 -> H2O, H2 1/2 O2 YIELDS H2O",
        "H2 + 1/2O2 = H2O, H2 1/2 O2 STOICHIOMETRIC H2O",
        "C4H10 + 6½O2 = 4CO2 + 5H2O, C4H10 13/2 O2 STOICHIOMETRIC 4 CO2 5 H2O",
        "N2 + 3 H2 ⇌ 2 NH3, N2 3 H2 EQUILIBRIUM 2 NH3",
        "N2 + 3 H2 <=> 2 NH3, N2 3 H2 EQUILIBRIUM 2 NH3",
        "Fe^3+ + SCN^- ⇌ FeSCN^2+, Fe^3+ SCN^- EQUILIBRIUM FeSCN^2+",
        "Fe³⁺ + SCN⁻ ⇌ FeSCN²⁺, Fe^3+ SCN^- EQUILIBRIUM FeSCN^2+",
        "Fe(3+)(aq) + e- -> Fe(2+)(aq), Fe^3+(aq) e^- YIELDS Fe^2+(aq)",
        "Ag+ + Cl- -> AgCl, Ag^+ Cl^- YIELDS AgCl",
        "Ag^+ + Cl^--> AgCl, Ag^+ Cl^- YIELDS AgCl",
        "Ag+ + Cl-->AgCl, Ag^+ Cl^- YIELDS AgCl",
        "MnO4^- + 8 H^+ + 5 e^- -> Mn^2+ + 4 H2O, MnO4^- 8 H^+ 5 e^- YIELDS Mn^2+ 4 H2O",
        "Ca(OH)2(aq) + CO2(g) -> CaCO3(s) + H2O(l), Ca(OH)2(aq) CO2(g) YIELDS CaCO3(s) H2O(l)",
        "Fe(s) + S(s) -> FeS(s), Fe(s) S(s) YIELDS FeS(s)",
        "CuSO4·5H2O(s) -> CuSO4(s) + 5H2O(g), CuSO4.5H2O(s) YIELDS CuSO4(s) 5 H2O(g)",
        "CuSO4 · 5 H2O -> CuSO4 + 5 H2O, CuSO4.5H2O YIELDS CuSO4 5 H2O",
        "H2O(l) -> H2O(g), H2O(l) YIELDS H2O(g)",
    })
    void readsAllWaysOfTyping(String text, String expected) {
        Equation equation = equation(text);
        assertEquals(expected, side(equation.left()) + " " + equation.sign() + " " + side(equation.right()));
    }

    private static String side(List<Term> terms) {
        return terms.stream().map(term -> term.written().map(each -> each + " ").orElse("") + term.species().plain())
                .collect(Collectors.joining(" "));
    }

    static Stream<JsonNode> refused() {
        return Cases.refused("bad_equation_syntax", "unknown_state");
    }

    @ParameterizedTest
    @MethodSource("refused")
    void refusedWithTheRightKindOfMessage(JsonNode row) {
        EquationTrouble trouble = troubles(row.get("given").get("equation").asText()).get(0);
        assertEquals(row.get("message_kind").asText().replace('_', '-'), trouble.id());
    }

    @Test
    void thereAreFourSuchCases() {
        assertEquals(4, refused().count());
    }

    @ParameterizedTest
    @CsvSource({
        "'', EMPTY, ''",
        "H2O, NO_SIGN, H2O",
        "2 H2 + O2 = 2 H2O -> x, TWO_SIGNS, ->",
        "A == B, OTHER_SIGN, ==",
        "NaCl --> Na + Cl2, OTHER_SIGN, -->",
        "NaCl => Na + Cl2, OTHER_SIGN, =>",
        "N2 ↔ N2, OTHER_SIGN, ↔",
        "-> 2 H2O, LEFT_SIDE_EMPTY, ->",
        "2 H2O →, RIGHT_SIDE_EMPTY, →",
        "2 H2 + + O2 -> 2 H2O, EMPTY_TERM, + +",
        "+ O2 -> O3, EMPTY_TERM, +",
        "O2 -> O3 +, EMPTY_TERM, +",
        "2 + O2 -> O3, COEFFICIENT_ALONE, 2",
        "0 H2 + O2 -> H2O, ZERO_COEFFICIENT, 0",
        "1/0 H2 + O2 -> H2O, ZERO_COEFFICIENT, 1/0",
        "H2 + 0.5 O2 -> H2O, DECIMAL_COEFFICIENT, 0.5",
        "'H2 + 0,5 O2 -> H2O', DECIMAL_COEFFICIENT, '0,5'",
        "1000000 H2 -> H2O, COEFFICIENT_TOO_LARGE, 1000000",
        "(aq) -> H2O, STATE_ALONE, (aq)",
    })
    void mistakes(String text, EquationMistake reason, String piece) {
        BadEquationSyntax bad = assertInstanceOf(BadEquationSyntax.class, troubles(text).get(0));
        assertEquals(reason, bad.reason());
        assertEquals(piece, bad.piece());
        assertEquals(piece, text.substring(bad.from(), bad.to()));
    }

    @Test
    void everyTermIsReadWhateverStandsBefore() {
        String text = "2 Naa + h2o(l) -> NaOH(x) + H0";
        List<EquationTrouble> troubles = troubles(text);
        assertEquals(List.of("unknown-element", "unknown-element", "unknown-state", "zero-count"),
                troubles.stream().map(EquationTrouble::id).toList());
        assertEquals(List.of("Naa", "h", "(x)", "H0"),
                troubles.stream().map(each -> text.substring(each.from(), each.to())).toList());
        assertEquals(List.of("H2O"), ((FormulaTrouble.UnknownElement) troubles.get(1)).formulas());
    }

    @Test
    void statesAndWhatOnlyLooksLikeOne() {
        assertEquals(new UnknownState("x", 4, 7), troubles("2 H2(x) + O2(g) -> 2 H2O(l)").get(0));
        assertEquals("unknown-state", troubles("H2O(ice) -> H2O(l)").get(0).id());
        assertEquals(Optional.empty(), equation("Ca(OH)2 -> CaO + H2O").left().get(0).species().state());
        assertEquals("CaS2", equation("Ca(S)2 -> Ca + S").left().get(0).species().formula().plain().replaceAll("[()]", ""));
    }

    @Test
    void aSpeciesStandsOnce() {
        assertEquals(List.of(new SpeciesGivenTwice("H2", 10, 12, 0, 2)), troubles("H2 + O2 + H2 -> H2O"));
        assertEquals("species-given-twice", troubles("H2(g) + O2 + H2 -> H2O").get(0).id());
        assertEquals(List.of(new SpeciesOnBothSides("MnO2", 21, 25, 7, 11)), troubles("H2O2 + MnO2 -> H2O + MnO2 + O2"));
        assertInstanceOf(EquationResult.Ok.class, Equation.parse("I2(s) + H2O(l) -> I2(aq) + H2O(g)"));
        String ionic = "Na^+ + Cl^- + Ag^+ -> AgCl + Na^+";
        assertInstanceOf(EquationResult.Bad.class, Equation.parse(ionic));
        assertInstanceOf(EquationResult.Ok.class, Equation.parseIonic(ionic));
    }

    @Test
    void aPlusBelongsToTheChargeOrPartsTwoTerms() {
        assertEquals(FormulaMistake.SIGN_INSIDE,
                ((FormulaTrouble.BadFormulaSyntax) troubles("H2+O2 -> H2O").get(0)).reason());
        assertEquals("ambiguous-charge", troubles("Fe3+ + e^- -> Fe2+").get(0).id());
        assertEquals(2, troubles("Fe3+ + e^- -> Fe2+").size());
    }

    @Test
    void hostileTextsAreRefused() {
        assertEquals(List.of(new EquationTooLong(10_001, 10_000, 0, 10_001)), troubles("H".repeat(10_001)));
        assertInstanceOf(TooManySpecies.class, troubles(String.join(" + ", Collections.nCopies(500, "H2")) + " -> H2O").get(0));
        String many = IntStream.rangeClosed(1, 60).mapToObj(i -> "C" + i + "H2").collect(Collectors.joining(" + "));
        assertEquals(new TooManySpecies(120, 100, 0, 2 * many.length() + 4),
                troubles(many + " -> " + many.replace("H2", "H4")).get(0));
        assertEquals("formula-too-long", troubles("(".repeat(9000) + " -> H").get(0).id());
        assertEquals("bad-equation-syntax", troubles("->".repeat(5000)).get(0).id());
        assertEquals("too-many-species", troubles("+".repeat(1) + " +".repeat(4000) + " -> H").get(0).id());
    }

    @Test
    void anyTextIsReadWithoutAnException() {
        SplittableRandom random = new SplittableRandom(11);
        int read = 0;
        for (int i = 0; i < 30_000; i++) {
            StringBuilder text = new StringBuilder(random.nextBoolean() ? "H2 -> " : "");
            for (int j = random.nextInt(1, 25); j > 0; j--) {
                text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
            }
            EquationResult result = Equation.parse(text.toString());
            if (result instanceof EquationResult.Ok ok) {
                Balancing.complete(ok.equation());
                read++;
            } else {
                for (EquationTrouble trouble : ((EquationResult.Bad) result).troubles()) {
                    assertTrue(trouble.from() >= 0 && trouble.from() <= trouble.to() && trouble.to() <= text.length(),
                            () -> text + " " + trouble);
                    assertEquals(trouble, trouble.shifted(9).shifted(-9));
                }
            }
        }
        assertTrue(read > 100, "some of them are equations: " + read);
    }

    private static List<EquationTrouble> troubles(String text) {
        return assertInstanceOf(EquationResult.Bad.class, Equation.parse(text), text).troubles();
    }
}
