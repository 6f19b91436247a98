package tarewright.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** The laws of linear algebra: rank and nullity make up the columns, the kernel is what is taken to zero. */
class IntegerMatrixTest {
    @Test
    void theKernelOfASmallMatrix() {
        assertEquals(List.of(vector(1, -2, 1)), IntegerMatrix.of(new long[] {1, 2, 3}, new long[] {4, 5, 6}).kernel());
        assertEquals(List.of(vector(-1, 1, 0), vector(-1, 0, 1)), IntegerMatrix.of(new long[] {3, 3, 3}).kernel());
        assertEquals(List.of(), IntegerMatrix.of(new long[] {1, 0}, new long[] {0, 1}).kernel());
        assertEquals(List.of(vector(1, 0), vector(0, 1)), new IntegerMatrix(List.of(), 2).kernel());
        assertEquals(List.of(vector(1, 0), vector(0, 1)), IntegerMatrix.of(new long[] {0, 0}).kernel());
    }

    /** 1×5 + 2×6 = 17, 3×5 + 4×6 = 39. */
    @Test
    void rowTimesColumn() {
        assertEquals(vector(17, 39), IntegerMatrix.of(new long[] {1, 2}, new long[] {3, 4}).times(vector(5, 6)));
        assertEquals(vector(), new IntegerMatrix(List.of(), 2).times(vector(5, 6)));
    }

    @Test
    void primitiveVectorsKeepTheirSigns() {
        assertEquals(vector(-2, 3, 0), IntegerMatrix.primitive(vector(-4, 6, 0)));
        assertEquals(vector(0, 0), IntegerMatrix.primitive(vector(0, 0)));
    }

    @Test
    void unequalRowsAndVectorsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> IntegerMatrix.of(new long[] {1, 2}, new long[] {1}));
        assertThrows(IllegalArgumentException.class, () -> IntegerMatrix.of(new long[] {1, 2}).times(vector(1)));
    }

    /**
     * The Hilbert matrix of order 12, cleared of its fractions, has full rank though floating point sees it singular: its
     * condition number is about 1.7e16 (Wikipedia, "Hilbert matrix", for n = 12; from memory).
     */
    @Test
    void aHilbertMatrixKeepsItsRank() {
        BigInteger multiple = LongStream.rangeClosed(1, 23).mapToObj(BigInteger::valueOf)
                .reduce(BigInteger.ONE, (a, b) -> a.multiply(b).divide(a.gcd(b)));
        List<List<BigInteger>> rows = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            List<BigInteger> row = new ArrayList<>();
            for (int j = 0; j < 12; j++) {
                row.add(multiple.divide(BigInteger.valueOf(i + j + 1)));
            }
            rows.add(row);
        }
        assertEquals(12, IntegerMatrix.of(rows).rank());
        assertEquals(List.of(), IntegerMatrix.of(rows).kernel());
    }

    @RepeatedTest(300)
    void theKernelIsTakenToZeroAndIsAllThatIs(RepetitionInfo run) {
        SplittableRandom random = new SplittableRandom(run.getCurrentRepetition());
        IntegerMatrix matrix = anyOfLowRank(random);
        List<List<BigInteger>> kernel = matrix.kernel();
        assertEquals(matrix.columns(), matrix.rank() + kernel.size(), "rank and nullity");
        for (List<BigInteger> vector : kernel) {
            assertTrue(matrix.times(vector).stream().allMatch(each -> each.signum() == 0));
            assertEquals(BigInteger.ONE, vector.stream().reduce(BigInteger.ZERO, BigInteger::gcd), "primitive");
        }
        if (!kernel.isEmpty()) {
            assertEquals(kernel.size(), IntegerMatrix.of(kernel).rank(), "independent");
        }
        assertEquals(matrix.rank(), transposed(matrix).rank(), "row rank is column rank");
    }

    /** A product of two random matrices, so that its rank is at most their common side. */
    private static IntegerMatrix anyOfLowRank(SplittableRandom random) {
        int rows = random.nextInt(1, 9);
        int columns = random.nextInt(1, 9);
        int inner = random.nextInt(1, 6);
        long bound = random.nextBoolean() ? 4 : 1_000_000_000L;
        IntegerMatrix left = any(random, rows, inner, bound);
        IntegerMatrix right = any(random, inner, columns, bound);
        return transposed(IntegerMatrix.of(transposed(right).rows().stream().map(left::times).toList()));
    }

    private static IntegerMatrix any(SplittableRandom random, int rows, int columns, long bound) {
        List<List<BigInteger>> entries = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            entries.add(random.longs(columns, -bound, bound).mapToObj(BigInteger::valueOf).toList());
        }
        return IntegerMatrix.of(entries);
    }

    private static IntegerMatrix transposed(IntegerMatrix matrix) {
        List<List<BigInteger>> columns = new ArrayList<>();
        for (int j = 0; j < matrix.columns(); j++) {
            int column = j;
            columns.add(matrix.rows().stream().map(row -> row.get(column)).toList());
        }
        return new IntegerMatrix(columns, matrix.rows().size());
    }

    private static List<BigInteger> vector(long... entries) {
        return LongStream.of(entries).mapToObj(BigInteger::valueOf).toList();
    }
}
