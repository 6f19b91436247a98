package tarewright.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.chemistry.Constants;
import tarewright.chemistry.TableValue;
import tarewright.chemistry.TableValue.OutOfRange;
import tarewright.chemistry.Water;

class WaterTest {
    /** General-purpose reference library: IAPWS-IF97 saturation, another equation than ours. */
    @ParameterizedTest
    @MethodSource("oneToForty")
    void vapourPressureAgreesWithTheIndustrialFormulation(int celsius) throws OutOfRangeException {
        double kelvin = celsius + 273.15;
        double other = new IF97(IF97.UnitSystem.SI).saturationPressureT(kelvin);
        double ours = Water.vapourPressure(kelvin).value().orElseThrow();
        assertEquals(1, ours / other, 2e-4);
    }

    static IntStream oneToForty() {
        return IntStream.rangeClosed(1, 40);
    }

    static List<Row> checks() {
        return Rows.of("water-checks.csv").stream().filter(row -> row.number("t_C") > 0).toList();
    }

    /** IAPWS SR1-86(1992) and IAPWS-95 as another library evaluates them, to the digits printed. */
    @ParameterizedTest
    @MethodSource("checks")
    void vapourPressureAndDensityAgreeWithPrintedValues(Row row) {
        double kelvin = row.number("t_C") + 273.15;
        assertEquals(row.number("pv_kPa_iapws") * 1000, Water.vapourPressure(kelvin).value().orElseThrow(), 0.006);
        assertEquals(row.number("density_g_mL_tanaka2001") * 1000, Water.density(kelvin).value().orElseThrow(), 0.0006);
        assertEquals(row.number("density_g_mL_iapws95_101325Pa") * 1000, Water.density(kelvin).value().orElseThrow(), 0.0016);
    }

    /** CRC Handbook 73rd edition, table of vapour pressure; the row of 38 °C there is a misprint. */
    @ParameterizedTest
    @MethodSource("checks")
    void vapourPressureAgreesWithTheHandbook(Row row) {
        double ours = Water.vapourPressure(row.number("t_C") + 273.15).value().orElseThrow();
        boolean misprint = row.number("t_C") == 38;
        assertEquals(misprint, Math.abs(row.number("pv_kPa_crc73") * 1000 / ours - 1) > 1e-3);
    }

    @ParameterizedTest
    @MethodSource("published")
    void vapourPressureAgreesWithWorkedExamples(PublishedCase published) {
        double found = published.has("temperature")
                ? Water.vapourPressure(published.number("temperature")).value().orElseThrow()
                : Water.boilingPoint(published.number("pressure")).value().orElseThrow();
        assertEquals(published.answer(), found, published.allowed());
    }

    static List<PublishedCase> published() {
        return PublishedCase.of("vapour_pressure");
    }

    /** IAPWS: 611.657 Pa at the triple point, 22.064 MPa at 647.096 K; 101.325 kPa at 99.974 °C (ITS-90). */
    @Test
    void fixedPointsOfWater() {
        assertEquals(611.657, Water.vapourPressure(273.16).value().orElseThrow(), 0.01);
        assertEquals(22.064e6, Water.vapourPressure(647.096).value().orElseThrow(), 1);
        assertEquals(99.974, Water.boilingPoint(101325).value().orElseThrow() - 273.15, 0.001);
    }

    @Test
    void boilingPointIsTheInverseOfVapourPressure() {
        for (double kelvin = 273.15; kelvin < 647; kelvin += 0.37) {
            double pressure = Water.vapourPressure(kelvin).value().orElseThrow();
            assertEquals(kelvin, Water.boilingPoint(pressure).value().orElseThrow(), 1e-6);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {450, 1e9, Double.POSITIVE_INFINITY})
    void thereIsNoVapourPressureAboveTheCriticalPoint(double celsius) {
        OutOfRange trouble = assertInstanceOf(OutOfRange.class, Water.vapourPressure(celsius + 273.15));
        assertEquals("above-critical-point-of-water", trouble.id());
        assertEquals(celsius, trouble.asked(), 1e-6);
        assertEquals(373.946, trouble.to(), 1e-3);
        assertEquals("373.95", trouble.fields().get("to"));
    }

    @Test
    void figuresOfATroubleCarryNoNoise() {
        OutOfRange trouble = assertInstanceOf(OutOfRange.class, Water.vapourPressure(450 + 273.15));
        assertEquals("450", trouble.fields().get("asked"));
        assertEquals("0", trouble.fields().get("from"));
        assertEquals("°C", trouble.fields().get("unit"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-5, -400, Double.NaN})
    void iceIsNotWater(double celsius) {
        TableValue found = Water.vapourPressure(celsius + 273.15);
        assertEquals("below-triple-point-of-water", assertInstanceOf(OutOfRange.class, found).id());
    }

    @Test
    void densityIsKnownFromZeroToForty() {
        assertTrue(Water.density(273.15).value().isPresent());
        assertTrue(Water.density(313.15).value().isPresent());
        OutOfRange trouble = assertInstanceOf(OutOfRange.class, Water.density(315));
        assertEquals("out-of-table-range", trouble.id());
        assertEquals(40, trouble.to());
    }

    /** IAPWS-IF97, a general-purpose reference library. */
    @Test
    void heatCapacityIsThatOfLiquidWater() throws OutOfRangeException {
        IF97 other = new IF97(IF97.UnitSystem.SI);
        for (int celsius = 10; celsius <= 60; celsius += 5) {
            double theirs = other.isobaricHeatCapacityPT(101325, celsius + 273.15);
            assertEquals(1, Constants.WATER_HEAT_CAPACITY.value() / theirs, 0.003);
        }
    }
}
