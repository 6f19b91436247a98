package tarewright.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The laws of the field of rational numbers are those of any algebra book; the examples are plain arithmetic. */
class RationalTest {
    @ParameterizedTest
    @CsvSource({"2/3, 2/3", "4/6, 2/3", "-4/6, -2/3", "0/5, 0", "7, 7", "+3, 3", "0.25, 1/4", "-0.5, -1/2", "10/5, 2"})
    void readsAndPrintsInLowestTerms(String written, String printed) {
        assertEquals(printed, Rational.parse(written).orElseThrow().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "1/0", "1/00", "1//2", "/2", "1/", "1.", ".5", "1e3", "x", "1 /2", "٣", "--1", "1/-2"})
    void refusesWhatIsNoNumber(String written) {
        assertEquals(Optional.empty(), Rational.parse(written));
    }

    @Test
    void aHundredCharactersAreReadAndNotOneMore() {
        assertEquals("7".repeat(100), Rational.parse("7".repeat(100)).orElseThrow().toString());
        assertEquals(Optional.empty(), Rational.parse("7".repeat(101)));
    }

    @Test
    void wholeNumbers() {
        assertEquals("-7", Rational.of(-7).toString());
        assertEquals(Rational.of(8, 2), Rational.of(BigInteger.valueOf(4)));
        assertTrue(Rational.of(4).isWhole());
        assertFalse(Rational.of(4, 3).isWhole());
        assertEquals("2/3", Rational.of(-2, -3).toString());
    }

    @Test
    void refusesANumberOfAMillionDigits() {
        assertEquals(Optional.empty(), Rational.parse("7".repeat(1_000_000)));
    }

    @Test
    void nothingIsDividedByZero() {
        assertThrows(ArithmeticException.class, () -> Rational.of(1, 0));
        assertThrows(ArithmeticException.class, () -> Rational.ONE.over(Rational.ZERO));
    }

    @RepeatedTest(200)
    void theLawsOfAFieldHold(RepetitionInfo run) {
        SplittableRandom random = new SplittableRandom(run.getCurrentRepetition());
        Rational a = any(random);
        Rational b = any(random);
        Rational c = any(random);
        assertEquals(a.plus(b), b.plus(a));
        assertEquals(a.times(b), b.times(a));
        assertEquals(a.plus(b).plus(c), a.plus(b.plus(c)));
        assertEquals(a.times(b).times(c), a.times(b.times(c)));
        assertEquals(a.times(b.plus(c)), a.times(b).plus(a.times(c)));
        assertEquals(a, a.plus(Rational.ZERO));
        assertEquals(a, a.times(Rational.ONE));
        assertEquals(Rational.ZERO, a.plus(a.negate()));
        assertEquals(a.minus(b), a.plus(b.negate()));
        if (b.signum() != 0) {
            assertEquals(a, a.over(b).times(b));
        }
    }

    @RepeatedTest(200)
    void itIsNormalisedOrderedAndReadBack(RepetitionInfo run) {
        SplittableRandom random = new SplittableRandom(1000 + run.getCurrentRepetition());
        Rational a = any(random);
        Rational b = any(random);
        assertEquals(BigInteger.ONE, a.numerator().gcd(a.denominator()));
        assertEquals(1, a.denominator().signum());
        assertEquals(a, Rational.parse(a.toString()).orElseThrow());
        assertEquals(a.minus(b).signum(), a.compareTo(b));
        assertEquals(a.compareTo(b) == 0, a.equals(b));
        double expected = a.numerator().doubleValue() / a.denominator().doubleValue();
        assertEquals(expected, a.doubleValue(), Math.ulp(expected));
    }

    @Test
    void aDoubleIsTheNearest() {
        assertEquals(1.0 / 3.0, Rational.of(1, 3).doubleValue());
        assertTrue(new Rational(BigInteger.TEN.pow(400), BigInteger.ONE).doubleValue() == Double.POSITIVE_INFINITY);
        assertEquals(1e-5, new Rational(BigInteger.TEN.pow(400), BigInteger.TEN.pow(405)).doubleValue());
    }

    private static Rational any(SplittableRandom random) {
        long bound = random.nextBoolean() ? 12 : 1_000_000_000_000L;
        return Rational.of(random.nextLong(-bound, bound), random.nextLong(1, bound));
    }
}
