package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as text. */
class DigitsTest {
    @ParameterizedTest
    @CsvSource({
        "0.30000000000000004, 2, 0.30", "1.005, 2, 1.01", "2.675, 2, 2.68", "0.15, 1, 0.2", "-0.15, 1, -0.2", "-0.001, 2, 0.00",
        "1234.5, -2, 1200", "1250, -2, 1300", "5, 0, 5", "5, 3, 5.000", "0, 2, 0.00", "1e-7, 8, 0.00000010", "99.99, 1, 100.0",
    })
    void decimals(double value, int decimals, String text) {
        assertEquals(text, Digits.decimals(value, decimals));
    }

    @ParameterizedTest
    @CsvSource({
        "0.0885, 2, 0.089", "99.99, 3, 100", "0.09999, 2, 0.10", "1234, 2, 1200", "0.00012345, 3, 0.000123", "0, 3, 0.00",
        "5, 1, 5",
        "-2.5, 1, -3", "6.0221e23, 3, 602000000000000000000000", "100, 3, 100", "9.995, 3, 10.0",
    })
    void significant(double value, int figures, String text) {
        assertEquals(text, Digits.significant(value, figures));
    }

    /** Half-way to the even digit, as ISO 80000-1:2009, B.3, rule A (from memory), and its rule B, away from zero. */
    @ParameterizedTest
    @CsvSource({"12.25, 1, 12.2, 12.3", "12.35, 1, 12.4, 12.4", "0.125, 2, 0.12, 0.13", "-0.5, 0, 0, -1", "2.5, 0, 2, 3"})
    void halfWayHasTwoRules(double value, int decimals, String even, String away) {
        assertEquals(even, Digits.decimalsHalfEven(value, decimals));
        assertEquals(away, Digits.decimals(value, decimals));
    }

    @ParameterizedTest
    @CsvSource({"6.02214e23, 3, 6.02e23", "0.00012345, 2, 1.2e-4", "9.996, 3, 1.00e1", "0, 2, 0.0e0", "-1500, 2, -1.5e3",
        "1, 1, 1e0"})
    void scientific(double value, int figures, String text) {
        assertEquals(text, Digits.scientific(value, figures));
    }

    @ParameterizedTest
    @CsvSource({"0.034, 1, 2", "0.034, 2, 3", "23, 1, -1", "23, 2, 0", "0.094, 1, 2", "0.097, 1, 1", "0.00035, 1, 4", "1, 1, 0",
        "9.5, 1, -1"})
    void thePlaceOfAnUncertainty(double uncertainty, int figures, int decimals) {
        assertEquals(decimals, Digits.decimalsFor(uncertainty, figures));
    }

    @Test
    void oneDigitOfAnUncertaintyUnlessSaid() {
        assertEquals(2, Digits.decimalsFor(0.034));
        assertEquals(-1, Digits.decimalsFor(23));
    }

    /** Zero to three figures is 0.00, as written by {@link Digits#significant(double, int)}. */
    @Test
    void zeroHasPlacesToo() {
        assertEquals(2, Digits.decimalsOfSignificant(0, 3));
        assertEquals(0, Digits.decimalsOfSignificant(0, 1));
    }

    /** JCGM 100:2008, 7.2.6, from memory: 10,057 62 Ω with u = 27 mΩ is given as 10,058 Ω; 28,05 kHz as 28 kHz. */
    @Test
    void aResultIsRoundedToItsUncertainty() {
        assertEquals("10.058", Digits.decimals(10.05762, Digits.decimalsFor(0.027, 2)));
        assertEquals("28", Digits.decimals(28.05, Digits.decimalsFor(28.05, 2)));
    }

    /** Zeros as in OpenStax, Chemistry 2e, section 1.5; that those at the end of a whole number count is the language's own. */
    @ParameterizedTest
    @CsvSource({"0.20, 2", "0.0885, 3", "1.0e-3, 2", "100, 3", "1e2, 1", "-3.5, 2", "'0,20', 2", "0.00, 1", "0, 1", "3090, 4",
        "0.051065, 5",
        "250., 3"})
    void figuresAsTyped(String typed, int figures) {
        assertEquals(figures, Digits.significantOf(typed));
    }

    @Test
    void whatIsWrittenIsTheValueToItsLastDigit() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 20_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(20) - 10);
            int figures = 1 + random.nextInt(8);
            String written = Digits.significant(value, figures);
            assertTrue(written.matches("-?[0-9]+(\\.[0-9]+)?"), written);
            double half = Math.abs(value) * 0.5000001 * Math.pow(10, 1 - figures);
            assertEquals(value, Double.parseDouble(written), half, written);
            assertEquals(written, Digits.decimals(value, Digits.decimalsOfSignificant(value, figures)));
            double read = Double.parseDouble(written);
            assertEquals(read, Double.parseDouble(Digits.scientific(value, figures)), Math.abs(value) * 1e-15);
            assertEquals(written, Digits.significant(read, figures), "writing again changes nothing");
        }
    }

    @Test
    void whatHasNoPlace() {
        for (double uncertainty : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> Digits.decimalsFor(uncertainty));
        }
    }
}
