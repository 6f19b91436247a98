package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.chemistry.Cases.equation;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.wording.FindingWords;

/** Each trouble of formulas and equations is said in a sentence of its own; the facts in them are those the examiner asks for. */
class TroubleWordsTest {
    private static final FindingWords WORDS = FindingWords.in("en");

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        Na2Jo3        | `Jo` is not an element
        CaOH)2        | the closing bracket `)` has no opening one
        Ca(OH         | the opening bracket `(` has no closing one
        Ca(OH]        | the bracket `]` closes one of another kind
        Ca(OH)0       | the group `OH` is repeated 0 times
        H0Cl          | the count of `H` is 0
        .5H2O         | there is nothing before the dot `.`
        CuSO4.        | there is nothing after the dot in `.`
        (CuSO4.5H2O)2 | a dot `.` stands between brackets
        CaSO4.0.512H2O| `0.512` is too fine a fraction of an adduct
        2H2O          | the formula starts with the number `2`
        Na₂3          | the number `3` counts nothing
        H2S04         | `04` holds the digit 0 where the letter O seems to be meant
        Na Cl         | there is a space within `Na Cl`
        Cu^SO4        | the charge mark `^` has no charge behind it
        Cu^0+         | the charge `^0+` is zero
        Fe^+3         | the charge `^+3` does not have its number before one sign
        Cu^2+SO4      | the charge `^2+` does not stand at the end of the formula
        H2+O2         | the sign `+` stands within a formula
        Fe(II)        | the oxidation number `(II)` does not belong to a formula
        H2O(l)        | the state `(l)` does not belong to a formula
        NaCl!         | `!` does not belong to a formula
        ''            | a formula should stand here
        Mg()2         | the brackets `()` are empty
        Na2CO3.xH2O   | `x` is not a number
        Fe3+          | in `3+` the number may count atoms or charges
        C10000        | `10000` is more than 9999
        """)
    void ofFormulas(String text, String headline) {
        assertEquals(headline, words(formulaTrouble(text)).headline());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        nacl        | `NaCl`: the symbol of an element starts with a capital and goes on with a small letter
        Na2Jo3      | the symbol of an element, such as `Co`, `Mo` or `Ho`
        Sodium      | the symbol of an element
        Fe3+        | `Fe^3+` or `Fe3^+`, whichever you mean
        H2S04       | `H2SO4`
        Cu^SO4      | the charge, as in `SO4^2-`; without a charge no `^`
        H2+O2       | spaces around the plus between two substances, instead of `+` alone
        Cu^2+SO4    | one charge for the whole, at its end, instead of `^2+`
        Na2CO3.xH2O | the number of `H2O`; to keep it from the students, write `shown as:` with the letter beside it
        (C6H10O5)n  | the repeated unit `C6H10O5` alone, or the number of its repeats
        """)
    void whatToWriteInsteadOfAFormula(String text, String mend) {
        assertEquals(List.of(mend), words(formulaTrouble(text)).mend());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        H2O                      | there is no arrow or sign in `H2O`
        H2 + O2 = H2O -> x       | a second arrow or sign `->`: one is expected
        H2 => H2                 | `=>` is not a sign between the sides of an equation
        -> H2O                   | the left side of `->` is empty
        H2O ->                   | the right side of `->` is empty
        H2 + + O2 -> H2O         | there is no substance on one side of the plus: `+ +`
        2 -> H2O                 | the coefficient `2` has no formula
        0 H2 -> H2O              | the coefficient `0` is zero
        0.5 O2 -> O3             | the coefficient `0.5` is neither a whole number nor a fraction
        1000000 O2 -> O3         | the coefficient `1000000` is too large
        (s) -> O3                | the state `(s)` has no formula before it
        ''                       | an equation should stand here
        H2(x) -> H2O             | the state `(x)` is not s, l, g or aq
        H2 + H2 -> H2O           | `H2` is given twice on one side
        H2 -> H2                 | `H2` stands on both sides
        """)
    void ofEquations(String text, String headline) {
        assertEquals(headline, words(equationTrouble(text)).headline());
    }

    /** What the examiner's cases bad-003 to bad-011 ask the message to say. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        2 KClO3 -> 2 KCl + 2 O2                    | the equation is not balanced: `O` is 6 on the left, 4 on the right
        NaCl + H2O -> NaOH + H2                    | the equation cannot be balanced: only on the left `Cl`
        H2 -> H2O                                  | the equation cannot be balanced: only on the right `O`
        CuSO4 + Zn -> Cu + ZnCO3                   | the equation cannot be balanced: only on the left `S`, only on the right `C`
        H2O -> H2O2                                | no coefficients above zero balance these together: `H, O`
        Fe^2+ -> Fe^3+                             | the atoms can be balanced, but not together with the charge: `Fe`
        Fe^2+ + Cl2 -> Fe^3+ + 2 Cl^-              | the atoms balance, but the charge is +2 on the left, +1 on the right
        C + O2 -> CO + CO2                         | several independent reactions are possible between these substances
        H9999 + Li9998 -> H9998Li9999              | the coefficient 99960004 is more than 1000000
        """)
    void ofBalance(String text, String headline) {
        assertEquals(headline, words(balanceTrouble(text)).headline());
    }

    @Test
    void whatElseIsKnownOfABalance() {
        assertEquals(List.of("what takes part of the water too: `H2O` with `H^+` in acid, with `OH^-` in base"),
                words(balanceTrouble("Fe^2+ + MnO4^- -> Fe^3+ + Mn^2+")).mend());
        assertEquals(List.of(), words(balanceTrouble("NaCl + H2O -> NaOH + H2")).mend());
        assertEquals(List.of("Left and right of the others: `Cl 2 | 1; O 6 | 2`."),
                words(balanceTrouble("2 KClO3 -> KCl + O2")).more());
        assertEquals(List.of("Each of these balances, and so does any mixture of them: `2 C + O2 -> 2 CO` or `C + O2 -> CO2`."),
                words(balanceTrouble("C + O2 -> CO + CO2")).more());
    }

    @Test
    void ofCompositions() {
        Map<CompositionTrouble, String> said = new LinkedHashMap<>();
        said.put(new CompositionTrouble.PercentSumOver100(125), "the percentages add up to 125 %");
        said.put(new CompositionTrouble.PercentSumUnder100(80.5), "the percentages add up to 80.5 % only: something is missing");
        said.put(new CompositionTrouble.NothingOfElement("H", 0), "there is no `H` in an amount of 0");
        said.put(new CompositionTrouble.NoAtomicWeight(List.of("Tc", "Ra")), "there is no standard atomic weight of `Tc, Ra`");
        said.put(new CompositionTrouble.NoSimpleRatio(List.of("C", "H"), List.of(1.0, 1.2345)),
                "the amounts of `C, H` are in no simple ratio");
        said.put(new CompositionTrouble.NoMultiple("CH", 13.019, 30, 2.3043),
                "30 g/mol is no multiple of the 13.02 g/mol of `CH`");
        said.forEach((trouble, words) -> assertEquals(words, WORDS.words(trouble.id(), trouble.fields()).headline()));
    }

    /** Every mistake has its own words: none is said by the line that stands for the empty text. */
    @Test
    void everyMistakeHasItsOwnWords() {
        Set<String> said = new HashSet<>();
        for (FormulaMistake reason : FormulaMistake.values()) {
            said.add(WORDS.words("bad-formula-syntax", Map.of(reason.field(), "X")).headline());
        }
        for (EquationMistake reason : EquationMistake.values()) {
            said.add(WORDS.words("bad-equation-syntax", Map.of(reason.field(), "X")).headline());
        }
        assertEquals(FormulaMistake.values().length + EquationMistake.values().length, said.size());
    }

    /** A trouble whose id has no words is said by its id alone: none of ours may be. */
    @Test
    void noTroubleGoesWithoutWords() {
        Stream.of(new FormulaTrouble.FormulaTooLong(201, 200, 0, 201), new EquationTrouble.EquationTooLong(1, 2, 0, 1),
                new EquationTrouble.TooManySpecies(101, 100, 0, 1)).forEach(trouble -> {
                    String headline = WORDS.words(trouble.id(), trouble.fields()).headline();
                    assertFalse(headline.equals(trouble.id().replace('-', ' ')), headline);
                    assertTrue(headline.matches(".*[0-9].*"), headline);
                });
    }

    private static FindingWords.Words words(EquationTrouble trouble) {
        return WORDS.words(trouble.id(), trouble.fields());
    }

    private static FindingWords.Words words(BalanceTrouble trouble) {
        return WORDS.words(trouble.id(), trouble.fields());
    }

    private static EquationTrouble formulaTrouble(String text) {
        return ((FormulaResult.Bad) Formula.parse(text)).trouble();
    }

    private static EquationTrouble equationTrouble(String text) {
        return ((EquationResult.Bad) Equation.parse(text)).troubles().get(0);
    }

    private static BalanceTrouble balanceTrouble(String text) {
        return ((BalanceResult.Bad) Balancing.complete(equation(text))).trouble();
    }
}
