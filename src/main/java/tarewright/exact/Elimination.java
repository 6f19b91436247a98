package tarewright.exact;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A matrix brought to reduced echelon form by Bareiss's fraction-free elimination, above and below each pivot: every entry
 * stays a minor of the first matrix, so that each division is exact and numbers grow no more than they must.
 * After Bareiss, Mathematics of Computation 22 (1968) 565-578.
 *
 * @param rows the reduced rows; the first of them hold the pivots, in the order of {@code pivots}
 * @param pivots the columns of the pivots, rising
 * @param pivot the value that every pivot has in the end
 */
record Elimination(List<BigInteger[]> rows, List<Integer> pivots, BigInteger pivot) {
    static Elimination of(IntegerMatrix matrix) {
        List<BigInteger[]> rows = new ArrayList<>();
        matrix.rows().forEach(row -> rows.add(row.toArray(BigInteger[]::new)));
        List<Integer> pivots = new ArrayList<>();
        BigInteger last = BigInteger.ONE;
        for (int column = 0; column < matrix.columns(); column++) {
            int at = pivots.size();
            int found = firstNonZero(rows, column, at);
            if (found < 0) {
                continue;
            }
            Collections.swap(rows, at, found);
            BigInteger pivot = rows.get(at)[column];
            for (int i = 0; i < rows.size(); i++) {
                if (i != at) {
                    reduce(rows.get(i), rows.get(at), column, pivot, last);
                }
            }
            pivots.add(column);
            last = pivot;
        }
        return new Elimination(rows, pivots, last);
    }

    private static int firstNonZero(List<BigInteger[]> rows, int column, int from) {
        for (int i = from; i < rows.size(); i++) {
            if (rows.get(i)[column].signum() != 0) {
                return i;
            }
        }
        return -1;
    }

    private static void reduce(BigInteger[] row, BigInteger[] by, int column, BigInteger pivot, BigInteger last) {
        BigInteger factor = row[column];
        for (int j = 0; j < row.length; j++) {
            row[j] = pivot.multiply(row[j]).subtract(factor.multiply(by[j])).divide(last);
        }
    }

    /** The kernel vector that is the pivot's size at one free column and zero at the others. */
    List<BigInteger> kernelVector(int free, int columns) {
        BigInteger sign = BigInteger.valueOf(pivot.signum());
        List<BigInteger> vector = new ArrayList<>(Collections.nCopies(columns, BigInteger.ZERO));
        vector.set(free, pivot.abs());
        for (int i = 0; i < pivots.size(); i++) {
            vector.set(pivots.get(i), rows.get(i)[free].negate().multiply(sign));
        }
        return vector;
    }
}
