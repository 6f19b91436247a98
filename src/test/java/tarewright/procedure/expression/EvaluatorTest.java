package tarewright.procedure.expression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.finding.Finding;
import tarewright.finding.Found;

/** What formulas come to, what their derivations look like, and what is refused. */
class EvaluatorTest {
    private final Formulas names = new Formulas()
            .with("moles of ribbon", 3.25, "mmol").with("mass of ribbon", 0.079, "g", 0.001)
            .with("volume of acid", 25.0, "mL", 0.05).with("strength of acid", 1.0, "mol/L", 0.01)
            .with("full", 24.35, "mL", 0.02).with("empty", 0.15, "mL", 0.02).with("nothing", 0, "mL")
            .with("room", 20, "°C").with("bath", 65.5, "°C", 0.1).with("kelvin", 300, "K")
            .with("titre", List.of(reading(24.10), reading(24.20), reading(24.15)));

    private static Figure reading(double value) {
        return Formulas.figure("titre", value, "mL", 0.02).shownTo(2);
    }

    /**
     * Values by hand; with the unit that suits: the unit that the terms of a sum share, else the usual one of the kind.
     * Molar volume of an ideal gas at 20 °C and 101.325 kPa from R = 8.314 462 618 J/(mol K) (CODATA 2022): 24.055 L/mol.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            moles of ribbon / volume of acid                       | 0.13     | mol/L
            moles of ribbon * 24.0 L/mol                           | 78       | mL
            8.314462618 J/(mol K) * (20 °C) / 101.325 kPa          | 24.0550  | L/mol
            full - empty                                           | 24.20    | mL
            mass of ribbon + 1 mg                                  | 0.080    | g
            mean of titre                                          | 24.15    | mL
            largest of titre - smallest of titre                   | 0.10     | mL
            bath - room                                            | 45.5     | K
            room + 5 K                                             | 25       | °C
            5 K + room                                             | 25       | °C
            room - 5 K                                             | 15       | °C
            kelvin - room                                          | 6.85     | K
            (bath + room - kelvin) / 2                             | 0        | bad
            -5 °C                                                  | -5       | °C
            2 * 3 + 4                                              | 10       |
            2 / 3 * volume of acid                                 | 16.6667  | mL
            -(2 g - 3 g)                                           | 1        | g
            (2 cm)^3                                               | 8        | mL
            1 / (5 s)                                              | 0.2      | 1/s
            10 % + 5 %                                             | 15       | %
            1 - 10 %                                               | 0.9      |
            4.18 J/(g K) * 50 g * (bath - room)                    | 9.5095   | kJ
            2^-2                                                   | 0.25     |
            """)
    void givesItsValueInAUnitThatSuits(String text, double value, String unit) {
        if ("bad".equals(unit)) {
            assertEquals("temperatures-added", names.finding(text, "").id());
            return;
        }
        Figure figure = names.value(text);
        assertEquals(value, figure.shownValue(), 1e-5 * Math.max(1, Math.abs(value)));
        assertEquals(unit == null ? "" : unit, figure.unit().symbol());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            full - empty                                           | 0.0242   | L
            mass of ribbon / 0.1 g                                 | 79       | %
            bath - room                                            | 45.5     | °C
            bath - room                                            | 45.5     | K
            room                                                   | 293.15   | K
            room + 9 K                                             | 84.2     | °F
            bath - room                                            | 81.9     | °F
            """)
    void isShownInTheUnitWanted(String text, double value, String unit) {
        Figure figure = names.value(text, unit);
        assertEquals(value, figure.shownValue(), 1e-9);
        assertEquals(unit, figure.unit().symbol());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            volume of acid + mass of ribbon    |     | dimensions-differ         | volume of acid + mass of ribbon
            1 - volume of acid                 |     | dimensions-differ         | 1 - volume of acid
            (full - 2 g) / 3                   |     | dimensions-differ         | full - 2 g
            full / (empty - empty)             |     | division-by-zero          | (empty - empty)
            full / nothing                     |     | division-by-zero          | nothing
            1 / 0                              |     | division-by-zero          | 0
            nothing^-1                         |     | division-by-zero          | nothing
            full^0.5                           |     | exponent-not-whole        | 0.5
            full^0                             |     | exponent-not-whole        | 0
            full^10                            |     | exponent-not-whole        | 10
            full^(1+1)                         |     | exponent-not-whole        | (1+1)
            full^empty                         |     | exponent-not-whole        | empty
            bath + room                        |     | temperatures-added        | bath + room
            bath + room + kelvin               |     | temperatures-added        | bath + room
            2 * kelvin                         | °C  | temperature-or-difference | 2 * kelvin
            kelvin                             | °C  | temperature-or-difference | kelvin
            full * empty                       | mL  | wrong-dimension           | full * empty
            ((1e30)^9 * 1e30)^9                |     | result-out-of-range       | (1e30)^9
            1e-30 ^ 9 * full                   |     | result-out-of-range       | 1e-30 ^ 9
            unheard                            |     | unknown-name              | unheard
            full + 5 * unheard                 |     | unknown-name              | unheard
            mean of unheard / (1 g)            | mL  | unknown-name              | unheard
            """)
    void oneMistakeIsOneFinding(String text, String unit, String id, String at) {
        Finding finding = names.finding(text, unit == null ? "" : unit);
        assertEquals(id, finding.id());
        String where = finding.at().text();
        assertTrue(id.equals("result-out-of-range") ? where.startsWith(at) : where.equals(strip(at)), where);
    }

    /** Places are those of what stands inside a bracket. */
    private static String strip(String at) {
        return at.startsWith("(") && at.endsWith(")") ? at.substring(1, at.length() - 1) : at;
    }

    @Test
    void eachUnknownNameIsOneFinding() {
        Found<Optional<Figure>> found = names.evaluate("one + two * mean of three", Optional.empty());
        assertTrue(found.value().isEmpty());
        assertEquals(List.of("one", "two", "three"), found.findings().stream().map(f -> f.at().text()).toList());
    }

    @Test
    void differentKindsAreShownSideBySide() {
        Finding finding = names.finding("volume of acid + 1", "");
        assertEquals("volume", finding.fields().get("leftKind"));
        assertEquals(Optional.of("mL"), finding.fields().get("leftUnit"));
        assertEquals("number", finding.fields().get("rightKind"));
        assertEquals(Optional.empty(), finding.fields().get("rightUnit"));
        assertEquals(List.of("volume of acid", "1"), finding.also().stream().map(s -> s.text()).toList());
    }

    @Test
    void aChainOfProductsIsOneStep() {
        Step.Product product = (Step.Product) names.value("2 * moles of ribbon / (3 * volume of acid) * 24.0 L/mol").step();
        assertEquals(2.0 / 3, product.coefficient());
        assertEquals(List.of(1, -1, 1), product.powers().stream().map(Step.Power::exponent).toList());
        assertSame(names.get("moles of ribbon"), product.powers().get(0).figure());
        assertSame(names.get("volume of acid"), product.powers().get(1).figure());
        Figure typed = product.powers().get(2).figure();
        assertEquals(new Step.Given(0.024, new Origin.Author()), typed.step());
        assertEquals(Working.UNNAMED, typed.symbol());
        assertEquals(OptionalInt.of(1), typed.decimals());
        assertEquals(0, typed.ownUncertainty());
    }

    @Test
    void oneFigureTwiceIsAPower() {
        Step.Product product = (Step.Product) names.value("full * full * empty / full").step();
        assertEquals(List.of(2, 1, -1), product.powers().stream().map(Step.Power::exponent).toList());
    }

    @Test
    void aChainOfSumsIsOneStep() {
        Step.Sum sum = (Step.Sum) names.value("full - (empty - 2 * volume of acid) + 1.5 mL").step();
        assertEquals(List.of(1.0, -1.0, 2.0, 1.0), sum.terms().stream().map(Step.Term::coefficient).toList());
    }

    @Test
    void aSumInsideAProductIsAFigureWithoutAName() {
        Step.Product product = (Step.Product) names.value("(full - empty) * strength of acid").step();
        Figure inner = product.powers().get(0).figure();
        assertEquals(Working.UNNAMED, inner.symbol());
        assertEquals("mL", inner.unit().symbol());
        assertEquals(2, ((Step.Sum) inner.step()).terms().size());
    }

    @Test
    void aMeanIsASumOfEqualShares() {
        Figure mean = names.value("mean of titre");
        Step.Sum sum = (Step.Sum) mean.step();
        assertEquals(List.of(1 / 3.0, 1 / 3.0, 1 / 3.0), sum.terms().stream().map(Step.Term::coefficient).toList());
        assertEquals(OptionalInt.of(2), mean.decimals());
        assertEquals("result", mean.symbol().plain());
        Figure inside = ((Step.Product) names.value("mean of titre * strength of acid").step()).powers().get(0).figure();
        assertEquals("mean of titre", inside.symbol().plain());
        // JCGM 100:2008, 4.2.3: the standard uncertainty of the mean of three is that of one over the root of three.
        assertEquals(0.02e-6 / Math.sqrt(3), mean.standardUncertainty(), 1e-15);
    }

    @Test
    void aNameAloneIsTheSameUnderTheNewSymbol() {
        Figure figure = names.value("mass of ribbon");
        assertSame(names.get("mass of ribbon"), ((Step.Same) figure.step()).other());
        assertEquals("result", figure.symbol().plain());
    }

    /** JCGM 100:2008, 4.3.7: limits that say no more have a standard uncertainty of the half-width over the root of three. */
    @Test
    void limitsTypedAreAnUncertainty() {
        Figure figure = names.value("0.20 ± 0.01 g");
        assertEquals(0.01e-3 / Math.sqrt(3), figure.standardUncertainty(), 1e-12);
        assertEquals(OptionalInt.of(2), figure.decimals());
    }

    @Test
    void aDifferenceKeepsTheDecimalsOfItsReadings() {
        Formulas readings = new Formulas().with("titre", List.of(reading(1)));
        assertEquals(OptionalInt.of(1), readings.value("24.35 mL - 0.2 mL").decimals());
        assertEquals(OptionalInt.of(1), readings.value("24.3 °C - 20.15 °C").decimals());
        assertEquals(OptionalInt.empty(), readings.value("24.35 mL - 0.002 L").decimals());
    }
}
