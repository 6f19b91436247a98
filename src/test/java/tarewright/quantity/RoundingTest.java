package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tarewright.quantity.Rounding.Direction;

/** Rounding to divisions: laws over random cases, and the cases that binary arithmetic gets wrong. */
class RoundingTest {
    @ParameterizedTest
    @CsvSource({
        "NEAREST, 0.1, 0.26, 0.3", "NEAREST, 0.1, 0.25, 0.3", "NEAREST, 0.1, -0.25, -0.3", "NEAREST, 0.5, 12.2, 12",
        "NEAREST, 0.5, 12.25, 12.5", "NEAREST, 0.05, 23.425, 23.45", "NEAREST, 0.001, 0.0885, 0.089", "UP, 0.5, 12.01, 12.5",
        "UP, 0.5, 12, 12", "UP, 0.5, -0.2, 0", "DOWN, 0.5, 12.49, 12", "DOWN, 0.5, -0.2, -0.5", "NEAREST, 1, 1.005, 1",
        "NEAREST, 0.01, 1.005, 1.01", "UP, 20, 61, 80", "NEAREST, 0.1, 0, 0",
    })
    void isExactInDecimal(Direction direction, double division, double value, double rounded) {
        assertEquals(rounded, new Rounding(direction, division).apply(value) + 0.0);
    }

    /** What sums of tenths make in binary is the tenth that is meant: 0.1 + 0.2 is no reason to round up to 0.4. */
    @ParameterizedTest
    @EnumSource(Direction.class)
    void aMultipleThatBinaryMissesIsThatMultiple(Direction direction) {
        Rounding tenth = new Rounding(direction, 0.1);
        assertEquals(0.3, tenth.apply(0.1 + 0.2));
        assertEquals(0.3, tenth.apply(0.3 * (1 - 5e-10)));
        assertEquals(0.7, tenth.apply(0.1 * 7));
        assertEquals(2.3e-5, new Rounding(direction, 1e-6).apply(23 * 1e-6));
        assertTrue(tenth.isMultiple(0.1 + 0.2));
        assertFalse(tenth.isMultiple(0.30001));
    }

    @ParameterizedTest
    @EnumSource(Direction.class)
    void lawsOverRandomValues(Direction direction) {
        SplittableRandom random = new SplittableRandom(11 + direction.ordinal());
        double[] mantissas = {1, 2, 2.5, 5};
        for (int i = 0; i < 20_000; i++) {
            double division = mantissas[random.nextInt(4)] * Math.pow(10, random.nextInt(12) - 9);
            double value = (random.nextDouble() - 0.4) * Math.pow(10, random.nextInt(8)) * division;
            Rounding rounding = new Rounding(direction, division);
            double rounded = rounding.apply(value);
            double slack = 1.01e-9 * Math.max(division, Math.abs(value));
            assertTrue(rounding.isMultiple(rounded), () -> rounding + " of " + value + " is " + rounded);
            assertEquals(rounded, rounding.apply(rounded), "rounding again changes nothing");
            switch (direction) {
                case NEAREST -> assertTrue(Math.abs(rounded - value) <= division / 2 + slack);
                case UP -> assertTrue(rounded >= value - slack && rounded < value + division + slack);
                case DOWN -> assertTrue(rounded <= value + slack && rounded > value - division - slack);
            }
            double greater = value + random.nextDouble() * division;
            assertTrue(rounding.apply(greater) >= rounded, "order is kept");
            if (direction == Direction.NEAREST) {
                assertEquals(rounded, -rounding.apply(-value) + 0.0, "the sign plays no part");
            }
        }
    }

    /** A thermometer divided in degrees Celsius counts from 0 °C, which is no whole number of kelvins. */
    @Test
    void divisionsCountFromTheZeroOfTheUnit() {
        Unit celsius = Units.symbol("°C").orElseThrow();
        Rounding half = Rounding.of(Direction.NEAREST, 0.5, celsius);
        assertEquals(20.5, celsius.fromSi(half.apply(celsius.toSi(20.3))), 1e-10);
        assertTrue(half.isMultiple(celsius.toSi(20.5)));
        assertFalse(half.isMultiple(celsius.toSi(20.35)));
        Rounding burette = Rounding.of(Direction.NEAREST, 0.05, Units.symbol("mL").orElseThrow());
        assertEquals(23.45e-6, burette.apply(23.43e-6), 1e-18);
    }

    @Test
    void whatCannotBeRounded() {
        for (double division : List.of(0.0, -1.0, Double.NaN, Double.POSITIVE_INFINITY)) {
            assertThrows(IllegalArgumentException.class, () -> new Rounding(Direction.UP, division));
        }
        assertEquals(1e30, new Rounding(Direction.UP, 1e-6).apply(1e30));
    }
}
