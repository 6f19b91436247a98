package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Notations of strength as bottles and recipes bear them. Common practice; one per cent w/v is 1 g in 100 mL. */
class StrengthTextTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1.0 mol/L | Molar | 1000", "0.1 M | Molar | 100", "50 mM | Molar | 50", "2 mol dm^-3 | Molar | 2000",
        "5.0 % w/w | MassFraction | 0.05", "5.0 %w/w | MassFraction | 0.05", "37 % (w/w) | MassFraction | 0.37",
        "37% m/m | MassFraction | 0.37", "37 wt% | MassFraction | 0.37", "37 % by mass | MassFraction | 0.37",
        "35 g/kg | MassFraction | 0.035", "5 g/100 g | MassFraction | 0.05", "10 mg/kg | MassFraction | 1e-5",
        "3 % w/v | MassPerVolume | 30", "3 % (m/v) | MassPerVolume | 30", "30 g/L | MassPerVolume | 30",
        "3 g/100 mL | MassPerVolume | 30", "150 % w/v | MassPerVolume | 1500", "70 % v/v | VolumeFraction | 0.7",
        "70 % V/V | VolumeFraction | 0.7", "40 % vol | VolumeFraction | 0.4", "40 vol% | VolumeFraction | 0.4",
        "500 mL/L | VolumeFraction | 0.5", "20 vol | VolumeStrength | 20", "20vol | VolumeStrength | 20",
        "20 volumes | VolumeStrength | 20", "100 % w/w | MassFraction | 1",
    })
    void notations(String text, String kind, double si) {
        Strength strength = read(text);
        assertEquals(kind, strength.getClass().getSimpleName());
        assertEquals(si, strength.typed().si(), si * 1e-14);
        assertTrue(strength.typed().explicitUnit());
        assertEquals(Optional.empty(), strength.asFormula());
    }

    @ParameterizedTest
    @CsvSource({"3 % w/v as CuSO4, CuSO4, 30", "1.0 mol/L as CuSO₄·5H₂O, CuSO₄·5H₂O, 1000", "5 % w/w as NH3 , NH3, 0.05"})
    void whatIsCountedStandsBehindAs(String text, String formula, double si) {
        assertEquals(Optional.of(formula), read(text).asFormula());
        assertEquals(si, read(text).typed().si(), 1e-14);
    }

    @Test
    void theDigitsAreKept() {
        Typed typed = read("5.0 % w/w").typed();
        assertEquals(List.of(1, 2), List.of(typed.decimals(), typed.significantDigits()));
        assertEquals("5.0", typed.number());
        assertEquals(8, read("5 to 8 % w/v").typed().upTo().orElseThrow());
        assertEquals(0.002, read("0.100 ± 0.002 mol/L").typed().plusMinus().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"5 %, 5 % w/w;5 % w/v;5 % v/v", "5.0%, 5.0 % w/w;5.0 % w/v;5.0 % v/v", "10 ppm, 10 mg/kg;10 mg/L",
        "3 ‰, 3 g/kg;3 g/L;3 mL/L"})
    void aBareFractionIsAskedAboutAndEachReadingIsAStrength(String text, String readings) {
        QuantityTrouble trouble = trouble(text);
        assertEquals("ambiguous-percent", trouble.id());
        List<String> offered = ((StrengthTrouble.AmbiguousPercent) trouble).readings();
        assertEquals(List.of(readings.split(";")), offered);
        offered.forEach(StrengthTextTest::read);
    }

    @ParameterizedTest
    @CsvSource({
        "110 % w/w, percent-over-100", "101 % v/v, percent-over-100", "90 to 110 % w/w, percent-over-100",
        "0 mol/L, not-positive",
        "-1 mol/L, not-positive", "0 % w/w, not-positive", "0 vol, not-positive", "5, missing-unit", "5 g, not-a-strength",
        "5 mol, not-a-strength", "1 mol/kg, not-a-strength", "0.1 m, not-a-strength", "0.1 N, unknown-unit",
        "strong, not-a-number",
        "'', not-a-number", "saturated, not-a-number", "% w/w, not-a-number", "1 mol/L as, no-formula-after-as",
        "1 mol/L as the salt, no-formula-after-as", "5 g vol, not-a-strength", "1 mol/l, unknown-unit",
        "'1,000 mol/L', ambiguous-number",
    })
    void whatIsNoStrength(String text, String id) {
        QuantityTrouble trouble = trouble(text);
        assertEquals(id, trouble.id());
        assertTrue(trouble.from() >= 0 && trouble.from() <= trouble.to() && trouble.to() <= text.length(), trouble.toString());
    }

    @Test
    void theExcessIsSaidInPerCent() {
        assertEquals(110, ((QuantityTrouble.PercentOver100) trouble("110 % w/w")).percent(), 1e-12);
        assertEquals(101, ((QuantityTrouble.PercentOver100) trouble("101 % v/v")).percent(), 1e-12);
    }

    @Test
    void aLongTextIsNoStrength() {
        assertEquals("not-a-number", trouble("5".repeat(1_000_000)).id());
        assertEquals(new StrengthTrouble.NotAStrength("5 g", ((StrengthTrouble.NotAStrength) trouble("5 g")).suggestions(), 0, 200),
                trouble("5 g" + " ".repeat(197)));
    }

    private static Strength read(String text) {
        StrengthResult result = StrengthText.parse(text);
        assertTrue(result instanceof StrengthResult.Ok, text + ": " + result);
        return ((StrengthResult.Ok) result).strength();
    }

    private static QuantityTrouble trouble(String text) {
        StrengthResult result = StrengthText.parse(text);
        assertTrue(result instanceof StrengthResult.Bad, text + ": " + result);
        return ((StrengthResult.Bad) result).trouble();
    }
}
