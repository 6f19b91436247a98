package tarewright.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
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
        PositiveKernel answer = PositiveKernel.of(matrix);
        if (answer instanceof PositiveKernel.Found found) {
            assertTrue(found.vector().stream().allMatch(each -> each.signum() > 0));
            assertTrue(matrix.times(found.vector()).stream().allMatch(each -> each.signum() == 0));
            assertEquals(BigInteger.ONE, found.vector().stream().reduce(BigInteger.ZERO, BigInteger::gcd));
        } else {
            List<BigInteger> proof = ((PositiveKernel.Blocked) answer).proof();
            List<BigInteger> sums = new ArrayList<>();
            for (int j = 0; j < columns; j++) {
                BigInteger sum = BigInteger.ZERO;
                for (int i = 0; i < rows; i++) {
                    sum = sum.add(entries.get(i).get(j).multiply(proof.get(i)));
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
