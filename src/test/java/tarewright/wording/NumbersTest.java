package tarewright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Symbol;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;

/**
 * How numbers are set. SI Brochure, 9th edition, 5.4.3 (space before the unit, before % too), 5.4.4 (decimal point or comma);
 * ISO 80000-1:2022, 7.3 (minus sign, multiplication cross before a power of ten). Decimal marks by country: Unicode CLDR.
 */
class NumbersTest {
    private static Figure figure(String quantity, double uncertainty) {
        Typed typed = ((QuantityResult.Ok) QuantityText.parse(quantity)).typed();
        return Figure.given(Symbol.words("x"), typed.unit(), typed.si(), new Origin.Author())
                .uncertain(uncertainty * typed.unit().factor());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.0789999 g       | 0.0005    | 0.0790 g
            3.25036 mmol      | 0.024     | 3.25 mmol
            24.305 g/mol      | 0.00115   | 24.305 g/mol
            0.996 g           | 0.0094    | 0.996 g
            1234.5 mL         | 23        | 1230 mL
            0.996 g           | 0.0096    | 1.00 g
            0.3 g             | 4         | 0.3 g
            12.345678912 g    | 1e-9      | 12.3457 g
            0 g               | 0.01      | 0.00 g
            2500000 g         | 10000     | 2.50e6 g
            0.0000123456 mol  | 1e-8      | 1.235e-5 mol
            8.314462618 J/(mol K) | 0     | 8.314 J/(mol K)
            0.100 mol/L       | 0         | 0.1 mol/L
            12345 mL          | 0         | 12345 mL
            24               | 0          | 24
            6.02214076e23     | 0         | 6.022e23
            1e-7 mol/L        | 0         | 1e-7 mol/L
            -5.25 °C          | 0         | -5.25 °C
            85 %              | 0         | 85 %
            """)
    void showsWhatIsKnown(String quantity, double uncertainty, String shown) {
        assertEquals(shown, Numbers.in("es").plain(figure(quantity, uncertainty)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.20 g     | 0.20 g
            25 mL      | 25 mL
            0.00005 g  | 0.00005 g
            1500000 g  | 1500000 g
            1.0e-9 g   | 1.0e-9 g
            6.02e23    | 6.02e23
            1e3 g      | 1000 g
            -0.0 °C    | 0.0 °C
            """)
    void keepsWhatWasTyped(String quantity, String shown) {
        Typed typed = ((QuantityResult.Ok) QuantityText.parse(quantity)).typed();
        assertEquals(shown, Numbers.in("en").plain(figure(quantity, 0).shownTo(typed.decimals())));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en    | 0.25 g           | 0.25~g
            es    | 0.25 g           | 0,25~g
            de    | 0.25 g           | 0,25~g
            es-MX | 0.25 g           | 0.25~g
            en    | -5.5 °C          | −5.5~°C
            en    | 85 %             | 85~%
            en    | 8.3144 J/(mol K) | 8.314~J/(mol~K)
            en    | 6.02214076e23    | 6.022~×~10²³
            es    | 1.5e-7 mol/L     | 1,5~×~10⁻⁷~mol/L
            en    | 1e-7 mol/L       | 10⁻⁷~mol/L
            """)
    void isPrintedInTheLanguage(String language, String quantity, String printed) {
        assertEquals(printed.replace('~', '\u202F'), Numbers.in(language).printed(figure(quantity, 0)));
    }

    /** What is shown reads back as the value, to half of the last place shown or better. */
    @Test
    void readsBackAsTheValue() {
        SplittableRandom random = new SplittableRandom(12);
        Unit gram = ((QuantityResult.Ok) QuantityText.parse("1 g")).typed().unit();
        for (int i = 0; i < 5_000; i++) {
            double value = (random.nextBoolean() ? 1 : -1) * Math.pow(10, random.nextDouble(-8, 9));
            double uncertainty = random.nextBoolean() ? 0 : Math.abs(value) * Math.pow(10, random.nextDouble(-5, 0));
            Figure figure = Figure.given(Symbol.words("x"), gram, gram.toSi(value), new Origin.Author())
                    .uncertain(gram.toSi(uncertainty));
            String shown = Numbers.in("en").plain(figure);
            double back = ((QuantityResult.Ok) QuantityText.parse(shown)).typed().value();
            double allowed = uncertainty == 0 ? 5e-4 * Math.abs(value)
                    : Math.max(uncertainty, 5e-6 * Math.abs(value));
            assertTrue(Math.abs(back - value) <= allowed * 1.0001, shown + " for " + value + " ± " + uncertainty);
        }
    }
}
