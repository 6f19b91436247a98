package tarewright.exact;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A matrix of whole numbers of any size.
 *
 * @param rows the rows from the top, all of one length; none for a matrix of no rows
 * @param columns how many columns, which the rows alone cannot say where there are none
 */
public record IntegerMatrix(List<List<BigInteger>> rows, int columns) {
    public IntegerMatrix {
        rows = rows.stream().map(List::copyOf).toList();
        for (List<BigInteger> row : rows) {
            if (row.size() != columns) {
                throw new IllegalArgumentException("a row of " + row.size() + " in a matrix of " + columns + " columns");
            }
        }
    }

    /** The matrix of these rows, which must be of one length and at least one. */
    public static IntegerMatrix of(List<List<BigInteger>> rows) {
        return new IntegerMatrix(rows, rows.get(0).size());
    }

    /** The matrix of these rows, which must be of one length and at least one. */
    public static IntegerMatrix of(long[]... rows) {
        return of(Arrays.stream(rows)
                .map(row -> Arrays.stream(row).mapToObj(BigInteger::valueOf).toList())
                .toList());
    }

    /**
     * This matrix times a column vector.
     *
     * @throws IllegalArgumentException unless the vector has an entry for each column
     */
    public List<BigInteger> times(List<BigInteger> vector) {
        if (vector.size() != columns) {
            throw new IllegalArgumentException("a vector of " + vector.size() + " for " + columns + " columns");
        }
        return rows.stream().map(row -> product(row, vector)).toList();
    }

    private static BigInteger product(List<BigInteger> row, List<BigInteger> vector) {
        BigInteger sum = BigInteger.ZERO;
        for (int j = 0; j < row.size(); j++) {
            sum = sum.add(row.get(j).multiply(vector.get(j)));
        }
        return sum;
    }

    /** How many rows are independent. */
    public int rank() {
        return Elimination.of(this).pivots().size();
    }

    /**
     * A basis of the vectors that this matrix takes to zero: one for each column without a pivot, in their order, each of
     * whole numbers without a common divisor, its entry at that column positive. Exact whatever the size of the entries.
     */
    public List<List<BigInteger>> kernel() {
        Elimination reduced = Elimination.of(this);
        List<List<BigInteger>> basis = new ArrayList<>();
        for (int free = 0; free < columns; free++) {
            if (!reduced.pivots().contains(free)) {
                basis.add(primitive(reduced.kernelVector(free, columns)));
            }
        }
        return List.copyOf(basis);
    }

    /** A vector divided by the greatest common divisor of its entries, its signs kept; the zero vector as it is. */
    public static List<BigInteger> primitive(List<BigInteger> vector) {
        BigInteger common = vector.stream().reduce(BigInteger.ZERO, BigInteger::gcd);
        return common.signum() == 0 ? List.copyOf(vector) : vector.stream().map(each -> each.divide(common)).toList();
    }
}
