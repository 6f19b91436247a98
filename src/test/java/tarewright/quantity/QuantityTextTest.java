package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities as typed. Writing of numbers and units: SI Brochure, 9th edition, 5.4.3 to 5.4.5. */
class QuantityTextTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0.20 g                | 0.2      | g     | 2  | 2", "5 mL                  | 5        | mL    | 0  | 1",
        "-3.5 °C               | -3.5     | °C    | 1  | 2", "\u22123,5 °C          | -3.5     | °C    | 1  | 2",
        "0,20 g                | 0.2      | g     | 2  | 2", "0,200 g               | 0.2      | g     | 3  | 3",
        "10,5 mL               | 10.5     | mL    | 1  | 3", "12,3456 g             | 12.3456  | g     | 4  | 6",
        "1.000 g               | 1        | g     | 3  | 4", "5mL                   | 5        | mL    | 0  | 1",
        "5\u00A0mL             | 5        | mL    | 0  | 1", "5\u202FmL             | 5        | mL    | 0  | 1",
        "1\u202F000 g          | 1000     | g     | 0  | 4", "10 000 Pa             | 10000    | Pa    | 0  | 5",
        "1.0e-3 mol            | 0.001    | mol   | 4  | 2", "9.2e-4                | 0.00092  | ''    | 5  | 2",
        "1e3 g                 | 1000     | g     | -3 | 1", "6.02 × 10^23          | 6.02e23  | ''    | -21 | 3",
        "6.02 × 10²³           | 6.02e23  | ''    | -21 | 3", "6.02x10^23 1/mol      | 6.02e23  | 1/mol | -21 | 3",
        "1.8 × 10\u207B\u2075 mol/L | 1.8e-5 | mol/L | 6 | 2", "10^-3 mol/L           | 0.001    | mol/L | 3  | 1",
        "10\u207B\u00B3 mol    | 0.001    | mol   | 3  | 1", "1.00 M                | 1        | mol/L | 2  | 3",
        "22 degC               | 22       | °C    | 0  | 2", "22 °C\u00A0           | 22       | °C    | 0  | 2",
        "5 eV                  | 5        | eV    | 0  | 1", "5eV                   | 5        | eV    | 0  | 1",
        "85 %                  | 85       | %     | 0  | 2", "4.18 J/(g K)          | 4.18     | J/(g K) | 2 | 3",
        "1.10 g/m              | 1.1      | g/m   | 2  | 3", "3 g/100 mL            | 3        | g/100 mL | 0 | 1",
        "12 drops              | 12       | drops | 0  | 2", "+5 mL                 | 5        | mL    | 0  | 1",
        "25. mL                | 25       | mL    | 0  | 2", ".5 g                  | 0.5      | g     | 1  | 1",
    })
    void isReadWithItsDigits(String text, double value, String unit, int decimals, int figures) {
        Typed typed = read(text);
        assertEquals(value, typed.value());
        assertEquals(unit, typed.unit().symbol());
        assertEquals(!unit.isEmpty(), typed.explicitUnit());
        assertEquals(decimals, typed.decimals());
        assertEquals(figures, typed.significantDigits());
        assertEquals(OptionalDouble.empty(), typed.plusMinus());
        assertEquals(OptionalDouble.empty(), typed.upTo());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "5 to 10 mL | 5 | 10 | mL | 0", "5 mL to 10 mL | 5 | 10 | mL | 0", "5\u201310 mL | 5 | 10 | mL | 0",
        "5to10 mL | 5 | 10 | mL | 0",
        "0.5 to 1.25 g | 0.5 | 1.25 | g | 2", "500 mg to 1 g | 500 | 1000 | mg | 0", "-5 to 5 °C | -5 | 5 | °C | 0",
        "20 °C to 300 K | 20 | 26.85 | °C | 0", "5 to 7 | 5 | 7 | '' | 0", "20 to 25 degC | 20 | 25 | °C | 0",
    })
    void ranges(String text, double from, double to, String unit, int decimals) {
        Typed typed = read(text);
        assertEquals(from, typed.value());
        assertEquals(to, typed.upTo().orElseThrow(), 1e-10);
        assertEquals(unit, typed.unit().symbol());
        assertEquals(decimals, typed.decimals());
        assertEquals(typed.unit().toSi(to), typed.upToSi().orElseThrow(), 1e-10);
    }

    /** JCGM 100:2008, 7.2.2 and 7.2.4, on stating limits behind the sign ±. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0.20 ± 0.01 g | 0.2 | 0.01 | g", "0.20 g ± 0.01 g | 0.2 | 0.01 | g", "(0.20 ± 0.01) g | 0.2 | 0.01 | g",
        "0.20 +/- 0.01 g | 0.2 | 0.01 | g", "20.0 ± 0.5 °C | 20 | 0.5 | °C", "100 g ± 50 mg | 100 | 0.05 | g",
        "200 g ± 5 % | 200 | 10 | g", "50 ± 2 % | 50 | 2 | %", "20 °C ± 1 K | 20 | 1 | °C",
    })
    void limits(String text, double middle, double half, String unit) {
        Typed typed = read(text);
        assertEquals(middle, typed.value());
        assertEquals(half, typed.plusMinus().orElseThrow(), 1e-15);
        assertEquals(unit, typed.unit().symbol());
        assertEquals(half * typed.unit().factor(), typed.plusMinusSi().orElseThrow(), 1e-15);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1,000 g | 1000;1.000", "12,500 mL | 12500;12.500", "-1,000 °C | -1000;-1.000",
    })
    void aCommaThatMayPartThousandsIsAskedAbout(String text, String readings) {
        QuantityTrouble trouble = trouble(text);
        assertEquals("ambiguous-number", trouble.id());
        assertEquals(List.of(readings.split(";")), ((NumberTrouble.Ambiguous) trouble).readings());
    }

    /** Marks of which only one can part decimals leave one meaning; it is written without them, since other countries read them otherwise. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1,000,000 g | 1000000", "1,000.5 g | 1000.5", "1.000,5 g | 1000.5", "1.000.000 g | 1000000", "-1.000,5 °C | -1000.5",
    })
    void marksBetweenThousandsAreNamed(String text, String plain) {
        QuantityTrouble trouble = trouble(text);
        assertEquals("thousands-marked", trouble.id());
        assertEquals(plain, ((NumberTrouble.ThousandsMarked) trouble).plain());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "'' | not-a-number | ''", "g | not-a-number | g", "about 5 g | not-a-number | about", "- 5 g | not-a-number | -",
        "five mL | not-a-number | five", "5 to | not-a-number | ''", "5 ± x g | not-a-number | x",
        "saturated | not-a-number | saturated",
        "٣ g | not-a-number | ٣", "25.0 Ml | unknown-unit | Ml", "0.15 gg | unknown-unit | gg",
        "5 mL water | unknown-unit | water",
        "1e31 g | number-too-large | 1e31", "1e-31 g | number-too-large | 1e-31", "1e99999 g | number-too-large | 1e99999",
        "12345678901234567890123456789012345678901234 g | number-too-large | 12345678901234567890123456789012345678901234",
        "10 to 5 mL | range-backwards | 10 to 5 mL", "5 to 5 mL | range-backwards | 5 to 5 mL",
        "5 J/g/K | bad-unit-syntax | ' J/g/K'",
        "0.20 ± 0 g | not-positive | 0.20 ± 0 g", "5 g to 10 mL | wrong-dimension | 5 g to 10 mL",
        "5 10 mL | bad-unit-syntax | ' 10 mL'",
        "5 g ± 1 mL | wrong-dimension | 5 g ± 1 mL", "5² mL | bad-unit-syntax | ' ² mL'",
    })
    void troublesPointAtTheSmallestStretch(String text, String id, String stretch) {
        QuantityTrouble trouble = trouble(text);
        assertEquals(id, trouble.id());
        if (!text.contains("²")) {
            assertEquals(stretch, text.substring(trouble.from(), trouble.to()));
        }
        assertEquals(trouble.from() + 7, trouble.shifted(7).from());
        assertEquals(trouble.to() + 7, trouble.shifted(7).to());
        assertEquals(trouble.fields(), trouble.shifted(7).fields());
    }

    @ParameterizedTest
    @CsvSource({"10 to 5 mL, 5 to 10 mL", "1 g to 500 mg, 500 mg to 1 g", "5 to 5 mL, 5 mL", "-5 to -10 °C, -10 to -5 °C"})
    void aRangeBackwardsIsTurnedRound(String text, String mended) {
        assertEquals(mended, ((QuantityTrouble.RangeBackwards) trouble(text)).suggestion());
        read(mended);
    }

    @ParameterizedTest
    @CsvSource({"5-10 mL, 5 to 10 mL", "5 - 10 mL, 5 to 10 mL", "0.5 -1 g, 0.5 to 1 g"})
    void aHyphenIsNoRange(String text, String mended) {
        assertEquals(mended, ((NumberTrouble.NotANumber) trouble(text)).suggestion().orElseThrow());
        read(mended);
    }

    @Test
    void theKindIsChecked() {
        QuantityTrouble bare = trouble(QuantityText.parse("0.15", Dimension.MASS));
        assertEquals(new QuantityTrouble.MissingUnit("0.15", Dimension.MASS, List.of("g", "mg", "kg"), 0, 4), bare);
        QuantityTrouble wrong = trouble(QuantityText.parse("5 mL", Dimension.MASS));
        assertEquals(new QuantityTrouble.WrongDimension("5 mL", Dimension.MASS, Dimension.VOLUME, "mL", List.of("g", "mg", "kg"),
                0, 4), wrong);
        assertEquals("volume", wrong.fields().get("found"));
        assertTrue(QuantityText.parse("9.2e-4", Dimension.NONE) instanceof QuantityResult.Ok);
        assertTrue(QuantityText.parse("50 %", Dimension.NONE) instanceof QuantityResult.Ok);
        assertEquals("missing-unit", trouble(QuantityText.parse("50", Dimension.TEMPERATURE)).id());
        assertEquals("not-positive", trouble(QuantityText.parsePositive("0.00 g", Dimension.MASS)).id());
        UnitTrouble.Unknown unknown = (UnitTrouble.Unknown) trouble(QuantityText.parse("22 C", Dimension.TEMPERATURE));
        assertEquals(List.of("°C"), unknown.suggestions());
        assertEquals(List.of(3, 4), List.of(unknown.from(), unknown.to()));
    }

    /** The thermodynamic temperature is above zero; 0 °C is 273.15 K (SI Brochure, 9th edition, 2.3.1). */
    @ParameterizedTest
    @CsvSource({"-300 degC, -300", "-273.15 °C, -273.15", "0 K, -273.15", "-5 K, -278.15", "-459.67 °F, -273.15",
        "-273.16 °C, -273.16"})
    void atAbsoluteZeroNothingIsMeasured(String text, double celsius) {
        QuantityTrouble trouble = trouble(QuantityText.parse(text, Dimension.TEMPERATURE));
        assertEquals("below-absolute-zero", trouble.id());
        assertEquals(celsius, ((QuantityTrouble.BelowAbsoluteZero) trouble).celsius(), 1e-9);
    }

    @Test
    void temperaturesAndTheirDifferencesAreDifferentThings() {
        assertEquals(293.15, ((QuantityResult.Ok) QuantityText.parse("20 °C", Dimension.TEMPERATURE)).typed().si(), 1e-12);
        for (String text : List.of("20 °C", "20 K", "20 degC", "36 °F")) {
            Typed typed = ((QuantityResult.Ok) QuantityText.parseDifference(text)).typed();
            assertEquals(20, typed.si(), 1e-12, text);
            assertTrue(typed.unit().fromZero());
        }
        assertEquals(-300, ((QuantityResult.Ok) QuantityText.parseDifference("-300 °C")).typed().si());
        assertEquals("wrong-dimension", trouble(QuantityText.parseDifference("20 kPa")).id());
        assertEquals("missing-unit", trouble(QuantityText.parseDifference("20")).id());
        assertFalse(read("20 °C").unit().fromZero());
    }

    @ParameterizedTest
    @CsvSource({"104 %, percent-over-100", "0 %, not-positive", "-5 %, not-positive", "0.9, missing-unit", "5 g, wrong-dimension",
        "90 to 104 %, percent-over-100"})
    void aPartIsAtMostTheWhole(String text, String id) {
        assertEquals(id, trouble(QuantityText.parseFraction(text)).id());
    }

    @Test
    void aWholeIsAPart() {
        assertEquals(1, ((QuantityResult.Ok) QuantityText.parseFraction("100 %")).typed().si());
        assertEquals(0.85, ((QuantityResult.Ok) QuantityText.parseFraction("85 %")).typed().si(), 1e-15);
    }

    @Test
    void theExcessOverTheWholeIsSaidInPerCent() {
        assertEquals(104, ((QuantityTrouble.PercentOver100) trouble(QuantityText.parseFraction("104 %"))).percent(), 1e-12);
    }

    /** The middle is given to the last digit of the limits, where both are in one unit. */
    @ParameterizedTest
    @CsvSource({"0.20 ± 0.005 g, 3", "0.200 ± 0.01 g, 3", "100 g ± 0.5 mg, 0", "20.0 °C ± 1 K, 1"})
    void decimalsOfLimits(String text, int decimals) {
        assertEquals(decimals, read(text).decimals());
    }

    /** Numbers up to 10³⁰ and down to 10⁻³⁰, with at most forty digits, are reckoned with, and not one beyond. */
    @ParameterizedTest
    @CsvSource({"1e30, 1e30", "-1e30, -1e30", "1e-30, 1e-30", "0e-999, 0", "1234567890123456789012.345678901234567890, 1.2345678901234568e21",
        "6×10⁰, 6", "1e+3, 1e3", "6×10⁺³, 6000"})
    void theFurthestNumbers(String text, double value) {
        assertEquals(value, read(text).value(), Math.abs(value) * 1e-15);
    }

    @ParameterizedTest
    @CsvSource({"1.01e30", "9.9e-31", "-1.01e30", "1e00001", "1234567890123456789012.3456789012345678901"})
    void beyondTheFurthestNumbers(String text) {
        assertEquals("number-too-large", trouble(text).id());
    }

    /** Of a word that is no number no more than forty characters are shown; a text of two hundred is read, a longer one is not. */
    @Test
    void longTexts() {
        assertEquals("x".repeat(40), ((NumberTrouble.NotANumber) trouble("x".repeat(41))).text());
        assertEquals(40, trouble("x".repeat(41)).to());
        assertEquals(5, read("5 g" + " ".repeat(197)).value());
        assertEquals("not-a-number", trouble("5 g" + " ".repeat(198)).id());
    }

    private static Typed read(String text) {
        QuantityResult result = QuantityText.parse(text);
        assertTrue(result instanceof QuantityResult.Ok, text + ": " + result);
        return ((QuantityResult.Ok) result).typed();
    }

    private static QuantityTrouble trouble(String text) {
        return trouble(QuantityText.parse(text));
    }

    private static QuantityTrouble trouble(QuantityResult result) {
        assertTrue(result instanceof QuantityResult.Bad, result.toString());
        return ((QuantityResult.Bad) result).trouble();
    }
}
