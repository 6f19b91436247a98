package tarewright.procedure.expression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.finding.Finding;
import tarewright.finding.Found;

/** The shape that a formula is read into. Precedence: ISO 80000-2:2019, 2-9 (a power binds before a sign in front of it). */
class ExpressionsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            moles of ribbon / volume of acid        | (moles of ribbon DIVIDE volume of acid)
            moles  of\tribbon                       | moles of ribbon
            a + b * c                               | (a ADD (b MULTIPLY c))
            a - b - c                               | ((a SUBTRACT b) SUBTRACT c)
            a / b * c                               | ((a DIVIDE b) MULTIPLY c)
            (a - b) / c                             | ((a SUBTRACT b) DIVIDE c)
            a × b ÷ c − d                           | (((a MULTIPLY b) DIVIDE c) SUBTRACT d)
            a · b                                   | (a MULTIPLY b)
            a^2^3                                   | (a RAISE ([2 ] RAISE [3 ]))
            -a^2                                    | -(a RAISE [2 ])
            a^-2                                    | (a RAISE -[2 ])
            a * -b                                  | (a MULTIPLY -b)
            + a                                     | a
            24.0 L/mol * moles of x                 | ([24.0 L/mol] MULTIPLY moles of x)
            2 L / moles of x                        | ([2 L] DIVIDE moles of x)
            2 L/moles of x                          | ([2 L] DIVIDE moles of x)
            5 g/mol                                 | [5 g/mol]
            5 g/mol/L                               | ([5 g/mol] DIVIDE L)
            8.314 J/(K mol) * temperature of room   | ([8.314 J/(K mol)] MULTIPLY temperature of room)
            8.314 J K^-1 mol^-1                     | [8.314 J/(K mol)]
            mass of a / mass of b * 100 %           | ((mass of a DIVIDE mass of b) MULTIPLY [100 %])
            5 g * h                                 | ([5 g] MULTIPLY h)
            5 g · h                                 | ([5 g] MULTIPLY h)
            4.18 J/(g·K) · rise                     | ([4.18 J/(g K)] MULTIPLY rise)
            1/s                                     | ([1 ] DIVIDE s)
            2 / (s + v)                             | ([2 ] DIVIDE (s ADD v))
            2 * 10^3 * a                            | ([2e3 ] MULTIPLY a)
            10^-3 mol/L                             | [1e-3 mol/L]
            x^2*10^3                                | ((x RAISE [2 ]) MULTIPLY [1e3 ])
            5-3                                     | ([5 ] SUBTRACT [3 ])
            5 mL - 3 mL                             | ([5 mL] SUBTRACT [3 mL])
            25 mL-5 mL                              | ([25 mL] SUBTRACT [5 mL])
            25 mL-5.0 L                             | ([25 mL] SUBTRACT [5.0 L])
            8.314 J K-1 mol-1                       | [8.314 J/(K mol)]
            0.20 ± 0.01 g                           | [0.20 g]
            0.20 g +/- 0.01 g                       | [0.20 g]
            -5 °C                                   | [-5 °C]
            −5 g                                    | -[5 g]
            excess of hypo-like acid - a            | (excess of hypo-like acid SUBTRACT a)
            ratio of acid to ribbon * 2             | (ratio of acid to ribbon MULTIPLY [2 ])
            strength of ladder 2 / 2                | (strength of ladder 2 DIVIDE [2 ])
            2nd titre - 1st titre                   | (2nd titre SUBTRACT 1st titre)
            molar mass of Ca(OH)2 / 2               | (molar mass of Ca(OH)2 DIVIDE [2 ])
            (molar mass of CuSO4.5H2O)              | molar mass of CuSO4.5H2O
            molar mass of CuSO₄·5H₂O·2              | (molar mass of CuSO₄·5H₂O MULTIPLY [2 ])
            molar mass of (NH4)2SO4 + a             | (molar mass of (NH4)2SO4 ADD a)
            molar mass of [Cu(NH3)4]SO4.H2O         | molar mass of [Cu(NH3)4]SO4.H2O
            molar mass of SO4^2- / 2                | (molar mass of SO4^2- DIVIDE [2 ])
            molar mass of Fe(3+)                    | molar mass of Fe(3+)
            molar mass of NaCl^2                    | (molar mass of NaCl RAISE [2 ])
            mass of iron(III) chloride / 2          | (mass of iron(III) chloride DIVIDE [2 ])
            mean of titre / 2                       | (MEAN{titre} DIVIDE [2 ])
            largest of titre - smallest of titre    | (LARGEST{titre} SUBTRACT SMALLEST{titre})
            teacher's acid + teacher’s base         | (teacher's acid ADD teacher’s base)
            """)
    void isReadByItsPrecedence(String text, String tree) {
        assertEquals(tree, drawn(Formulas.parse(text)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            (a + b) * c           | (a + b) * c
            (a + b) * (c - d)     | (a + b) * (c - d)
            a + 5.0 g / b         | a + 5.0 g / b
            """)
    void aSpanTakesInTheBrackets(String text, String whole) {
        assertEquals(whole, Formulas.parse(text).span().text());
    }

    @Test
    void aSpanPointsIntoTheFile() {
        Expression.Binary sum = (Expression.Binary) Formulas.parse("mean of  titre + 5.0 g/mol");
        Expression.Selected mean = (Expression.Selected) sum.left();
        assertEquals("mean of  titre", mean.span().text());
        assertEquals("titre", mean.of().span().text());
        assertEquals("5.0 g/mol", sum.right().span().text());
        assertEquals(4, mean.span().start());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            a +                   | operand-missing      | +
            a * / b               | operand-missing      | /
            (a                    | bracket-not-closed   | (
            a + (b - c            | bracket-not-closed   | (
            a)                    | bracket-not-opened   | )
            ()                    | operand-missing      | ()
            (a + )                | operand-missing      | +
            mean of               | operand-missing      | mean of
            2 moles of acid       | operator-missing     | moles of acid
            5 g acid of us        | operator-missing     | acid of us
            5 % w/w               | operator-missing     | w
            (a) b                 | operator-missing     | b
            a = b                 | stray-character      | =
            a $ b                 | stray-character      | $
            {moles of a} / b      | braces-in-formula    | {moles of a}
            mean(titre)           | no-function          | mean
            sqrt (a)              | no-function          | sqrt
            5 to 10 mL            | range-in-formula     | 5 to 10 mL
            5 mL to 10 mL * a     | range-in-formula     | 5 mL to 10 mL
            5 – 10 mL             | range-in-formula     | 5 – 10 mL
            25.0 Ml / a           | unknown-unit         | Ml
            25.0Ml / a            | unknown-unit         | Ml
            a + 1,234 g           | ambiguous-number     | 1,234
            1e99 g                | number-too-large     | 1e99
            -300 °C               | below-absolute-zero  | -300 °C
            """)
    void oneMistakeIsOneFinding(String text, String id, String at) {
        Finding finding = Formulas.trouble(text);
        assertEquals(id, finding.id());
        assertEquals(at, finding.at().text());
    }

    @Test
    void theMendOfTwoOperandsMultipliesThem() {
        assertEquals(Optional.of("2 * moles of acid"), Formulas.trouble("2 moles of acid").fields().get("instead"));
    }

    @Test
    void depthAndLengthAreBounded() {
        assertEquals("expression-too-deep", Formulas.trouble("(".repeat(1_000) + "a").id());
        assertEquals("expression-too-deep", Formulas.trouble("(".repeat(1_000_000)).id());
        assertEquals("expression-too-deep", Formulas.trouble("-".repeat(500) + "a").id());
        assertEquals("expression-too-deep", Formulas.trouble("2^".repeat(500) + "2").id());
        Formulas.parse("(".repeat(30) + "a" + ")".repeat(30));
        Formulas.parse("a+".repeat(999) + "a");
    }

    @Test
    void anyTextIsReadWithoutThrowing() {
        SplittableRandom random = new SplittableRandom(20410204);
        String[] bits = {"(", ")", "[", "]", "{", "}", "+", "-", "*", "/", "^", "·", "−", "5", "0.5", "1e3", " g", " mol/L",
            " of ", "mean of ", "to", "Ca(OH)2", "°C", " ", ",", ".", "±", "x",
            "\uD83D", "\u0301", "100 %", "\n", "10^", "²", "'", "/("};
        int read = 0;
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            int length = 1 + random.nextInt(14);
            for (int j = 0; j < length; j++) {
                text.append(bits[random.nextInt(bits.length)]);
            }
            Found<Optional<Expression>> found = Expressions.parse(Formulas.piece(text.toString()));
            assertEquals(found.value().isEmpty(), found.hasErrors(), text.toString());
            assertTrue(found.findings().size() <= 1, text.toString());
            read += found.value().isPresent() ? 1 : 0;
        }
        assertTrue(read > 500, "formulas among them: " + read);
    }

    private static String drawn(Expression expression) {
        if (expression instanceof Expression.Quantity quantity) {
            return "[" + quantity.typed().number() + " " + quantity.typed().unit().symbol() + "]";
        }
        if (expression instanceof Expression.Named named) {
            return named.text();
        }
        if (expression instanceof Expression.Negated negated) {
            return "-" + drawn(negated.of());
        }
        if (expression instanceof Expression.Selected selected) {
            return selected.selector() + "{" + selected.of().text() + "}";
        }
        Expression.Binary binary = (Expression.Binary) expression;
        return "(" + drawn(binary.left()) + " " + binary.operator() + " " + drawn(binary.right()) + ")";
    }
}
