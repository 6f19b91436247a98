package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.chemistry.TableValue.Known;
import tarewright.chemistry.TableValue.OutOfRange;

/** Where a table or an equation ends, in the units that a reader of the message knows. Nothing is extrapolated. */
class RangesTest {
    private static final Provenance SOURCE = new Provenance("invented for this test", Confidence.MEMORY);
    private static final Formula GAS = Formula.parse("CO2").value().orElseThrow();
    private static final Virial VIRIAL = new Virial(GAS, "gas", List.of(-127.0, -288.0, -118.0), SOURCE);

    private static OutOfRange outside(TableValue value) {
        return assertInstanceOf(OutOfRange.class, value);
    }

    private static void range(TableValue value, double asked, double from, double to, String unit) {
        OutOfRange outside = outside(value);
        assertEquals(asked, outside.asked(), 1e-9);
        assertEquals(from, outside.from(), 1e-9);
        assertEquals(to, outside.to(), 1e-9);
        assertEquals(unit, outside.unit());
    }

    @Test
    void waterBoilsBetweenItsTripleAndItsCriticalPoint() {
        // IAPWS: 0.6112 kPa over water at 0 °C, 22.064 MPa and 373.946 °C at the critical point.
        OutOfRange low = outside(Water.boilingPoint(500));
        assertEquals("below-triple-point-of-water", low.id());
        assertEquals(0.5, low.asked(), 1e-12);
        assertEquals(0.6112, low.from(), 0.00005);
        assertEquals(22_064, low.to(), 1e-9);
        assertEquals("above-critical-point-of-water", outside(Water.boilingPoint(23e6)).id());
        assertEquals(647.096, Water.boilingPoint(22.064e6).value().orElseThrow(), 1e-6);
        range(Water.vapourPressure(673.15), 400, 0, 373.946, "°C");
        range(Water.vapourPressure(263.15), -10, 0, 373.946, "°C");
    }

    @Test
    void aVirialCoefficientIsKnownFromZeroToAHundredDegrees() {
        range(VIRIAL.coefficient(273.14), -0.01, 0, 100, "°C");
        range(VIRIAL.coefficient(373.16), 100.01, 0, 100, "°C");
        range(VIRIAL.molarVolume(298.15, 200_001), 200.001, 0, 200, "kPa");
        range(VIRIAL.molarVolume(298.15, 0), 0, 0, 200, "kPa");
        range(VIRIAL.molarVolume(200, 100_000), -73.15, 0, 100, "°C");
        assertInstanceOf(Known.class, VIRIAL.coefficient(273.15));
        assertInstanceOf(Known.class, VIRIAL.coefficient(373.15));
        assertInstanceOf(Known.class, VIRIAL.molarVolume(298.15, 200_000));
    }

    /** At 298.15 K only the first coefficient is left; and the molar volume solves p V²= R T (V + B). */
    @ParameterizedTest
    @ValueSource(doubles = {280, 298.15, 330, 373})
    void theMolarVolumeSolvesTheVirialEquation(double kelvin) {
        double b = VIRIAL.coefficient(kelvin).value().orElseThrow();
        double v = VIRIAL.molarVolume(kelvin, 100_000).value().orElseThrow();
        assertEquals(100_000, 8.31446261815324 * kelvin / v * (1 + b / v), 1e-6);
        double x = 298.15 / kelvin - 1;
        assertEquals((-127 - 288 * x - 118 * x * x) * 1e-6, b, 1e-15);
    }

    /** A solution of density 1000 + 500 w kg/m³ at mass fractions to 0.4, of a solute of 0.1 kg/mol: at most 0.4 × 1200 / 0.1 = 4800 mol/m³. */
    @Test
    void aSolutionIsNoStrongerThanItsTable() {
        DensityTable table = new DensityTable(GAS, "solute", new Curve(List.of(new Curve.Row(0, 1000, SOURCE), new Curve.Row(0.4, 1200, SOURCE))));
        range(table.density(0.5), 50, 0, 40, "%");
        range(table.concentration(0.5, 0.1), 50, 0, 40, "%");
        range(table.massFraction(4801, 0.1), 4.801, 0, 4.8, "mol/L");
        assertEquals(0.4, table.massFraction(4800, 0.1).value().orElseThrow(), 1e-11);
        assertEquals(0, table.massFraction(0, 0.1).value().orElseThrow(), 1e-11);
        // 0.2 × 1100 / 0.1 = 2200
        assertEquals(2200, table.concentration(0.2, 0.1).value().orElseThrow(), 1e-9);
        assertEquals(0.2, table.massFraction(2200, 0.1).value().orElseThrow(), 1e-11);
    }

    /** Between two rows alone a curve is a straight line, over a width of one or not. */
    @Test
    void twoRowsMakeALine() {
        Curve curve = new Curve(List.of(new Curve.Row(10, 3, SOURCE), new Curve.Row(14, 11, SOURCE)));
        assertEquals(10, curve.first());
        assertEquals(14, curve.last());
        assertEquals(5, curve.at(11), 1e-12);
        assertEquals(9, curve.at(13), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"400, 400", "12.345678, 12.346", "0, 0", "-0.01, -0.01", "123456789, 123460000", "1e12, 1E+12", "1e-12, 1E-12", "NaN, NaN", "Infinity, Infinity"})
    void figuresOfAMessageAreReadable(double asked, String text) {
        assertEquals(Map.of("asked", text, "from", "0", "to", "100", "unit", "°C"), new OutOfRange(TableValue.Limit.TABLE, asked, 0, 100, "°C").fields());
    }

    /** The author wrote water on the wrong side: Cl2 + 6 H2O → 2 ClO3⁻ + 12 H⁺ + 10 e⁻ (oxygen 6 = 6, charge 0 = -2 + 12 - 10). */
    @Test
    void waterOnTheWrongSideIsMoved() {
        BalanceResult result = Redox.inMedium(Equation.parse("Cl2 = ClO3^- + H2O").value().orElseThrow(), Medium.ACIDIC, true);
        BalancedEquation balanced = assertInstanceOf(BalanceResult.Ok.class, result).equation();
        assertEquals("Cl2 + 6 H2O", balanced.plain().split(" (=|->|→) ")[0]);
    }
}
