package tarewright.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/**
 * Either a matrix takes some positive vector to zero, or some sum of its rows is not negative anywhere and not zero
 * everywhere: Stiemke's lemma (Mathematische Annalen 76 (1915) 340-342). Each answer is checked by what it shows.
 */
class PositiveKernelTest {
    @Test
    void smallExamples() {
        assertInstanceOf(PositiveKernel.Found.class, PositiveKernel.of(IntegerMatrix.of(new long[] {1, -1})));
        assertInstanceOf(PositiveKernel.Blocked.class, PositiveKernel.of(IntegerMatrix.of(new long[] {1, 1})));
        assertInstanceOf(PositiveKernel.Blocked.class, PositiveKernel.of(IntegerMatrix.of(new long[] {1, 0})));
        assertInstanceOf(PositiveKernel.Found.class, PositiveKernel.of(IntegerMatrix.of(new long[] {0, 0})));
        assertInstanceOf(PositiveKernel.Found.class, PositiveKernel.of(new IntegerMatrix(List.of(), 3)));
    }

    /** x = y and z = 0: the second row alone forbids a positive one. */
    @Test
    void theProofNamesTheRowToBlame() {
        PositiveKernel answer = PositiveKernel.of(IntegerMatrix.of(new long[] {1, -1, 0}, new long[] {0, 0, 3}));
        assertEquals(List.of(1), assertInstanceOf(PositiveKernel.Blocked.class, answer).rows());
    }

    /** x = 2y and 2x = y: each can be had alone, both only at zero. */
    @Test
    void twoRowsMayBeToBlameTogether() {
        PositiveKernel answer = PositiveKernel.of(IntegerMatrix.of(new long[] {1, -2}, new long[] {-2, 1}));
        assertEquals(List.of(0, 1), assertInstanceOf(PositiveKernel.Blocked.class, answer).rows());
    }

    @RepeatedTest(500)
    void eachAnswerProvesItself(RepetitionInfo run) {
        SplittableRandom random = new SplittableRandom(run.getCurrentRepetition());
        int rows = random.nextInt(1, 7);
        int columns = random.nextInt(1, 10);
        int bound = random.nextInt(2, 6);
        List<List<BigInteger>> entries = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            entries.add(random.ints(columns, -bound, bound).mapToObj(BigInteger::valueOf).toList());
        }
        IntegerMatrix matrix = IntegerMatrix.of(entries);
        provesItself(matrix, PositiveKernel.of(matrix));
    }

    /** Equations that follow from others change nothing: rows are repeated, doubled and added, as many as there are columns twice over. */
    @RepeatedTest(300)
    void equationsThatFollowChangeNothing(RepetitionInfo run) {
        SplittableRandom random = new SplittableRandom(5_000 + run.getCurrentRepetition());
        int columns = random.nextInt(3, 8);
        List<List<BigInteger>> entries = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            entries.add(random.ints(columns, -2, 3).mapToObj(BigInteger::valueOf).toList());
        }
        PositiveKernel alone = PositiveKernel.of(IntegerMatrix.of(entries));
        while (entries.size() < 2 * columns) {
            List<BigInteger> one = entries.get(random.nextInt(entries.size()));
            List<BigInteger> other = entries.get(random.nextInt(entries.size()));
            entries.add(random.nextInt(entries.size()), IntStream.range(0, columns).mapToObj(j -> one.get(j).add(other.get(j))).toList());
        }
        IntegerMatrix matrix = IntegerMatrix.of(entries);
        PositiveKernel all = PositiveKernel.of(matrix);
        assertEquals(alone.getClass(), all.getClass());
        provesItself(matrix, all);
    }

    private static void provesItself(IntegerMatrix matrix, PositiveKernel answer) {
        if (answer instanceof PositiveKernel.Found found) {
            assertTrue(found.vector().stream().allMatch(each -> each.signum() > 0));
            assertTrue(matrix.times(found.vector()).stream().allMatch(each -> each.signum() == 0));
            assertEquals(BigInteger.ONE, found.vector().stream().reduce(BigInteger.ZERO, BigInteger::gcd));
        } else {
            PositiveKernel.Blocked blocked = (PositiveKernel.Blocked) answer;
            IntegerMatrix needed = IntegerMatrix.of(blocked.rows().stream().map(matrix.rows()::get).toList());
            assertInstanceOf(PositiveKernel.Blocked.class, PositiveKernel.of(needed), "the rows that the proof needs suffice");
            List<BigInteger> proof = blocked.proof();
            List<BigInteger> sums = new ArrayList<>();
            for (int j = 0; j < matrix.columns(); j++) {
                BigInteger sum = BigInteger.ZERO;
                for (int i = 0; i < matrix.rows().size(); i++) {
                    sum = sum.add(matrix.rows().get(i).get(j).multiply(proof.get(i)));
                }
                sums.add(sum);
            }
            assertTrue(sums.stream().allMatch(each -> each.signum() >= 0), sums::toString);
            assertTrue(sums.stream().anyMatch(each -> each.signum() > 0), sums::toString);
        }
    }

    @Test
    void bothAnswersCome() {
        int found = 0;
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 200; i++) {
            List<BigInteger> one = random.ints(5, -4, 4).mapToObj(BigInteger::valueOf).toList();
            List<BigInteger> two = random.ints(5, -4, 4).mapToObj(BigInteger::valueOf).toList();
            found += PositiveKernel.of(IntegerMatrix.of(List.of(one, two))) instanceof PositiveKernel.Found ? 1 : 0;
        }
        assertTrue(found > 20 && found < 180, "found " + found + " of 200");
    }
}
