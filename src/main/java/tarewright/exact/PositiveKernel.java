package tarewright.exact;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Whether a matrix takes some vector without zero or negative entries to zero. Decided exactly, by the simplex method with
 * fraction-free pivots: the entries of the tableau stay minors of the first matrix over one common denominator. Bland's rule
 * (Mathematics of Operations Research 2 (1977) 103-107) keeps it from going round in circles.
 */
public sealed interface PositiveKernel {
    /** There is one: whole numbers above zero without a common divisor. */
    record Found(List<BigInteger> vector) implements PositiveKernel {
        public Found {
            vector = List.copyOf(vector);
        }
    }

    /**
     * There is none.
     *
     * @param proof a multiplier for each row: the sum of the rows so multiplied has no negative entry and some above zero, so
     *     that it cannot vanish on a positive vector
     */
    record Blocked(List<BigInteger> proof) implements PositiveKernel {
        public Blocked {
            proof = List.copyOf(proof);
        }

        /** The rows that the proof needs, rising: there would be no vector even if only these counted. */
        public List<Integer> rows() {
            return IntStream.range(0, proof.size()).filter(i -> proof.get(i).signum() != 0).boxed().toList();
        }
    }

    static PositiveKernel of(IntegerMatrix matrix) {
        return new Simplex(matrix).solve();
    }

    /** Phase one for x = 1 + z, z not negative: an artificial variable a row, their sum to be brought to zero. */
    final class Simplex {
        private final int rows;
        private final int columns;
        private final BigInteger[][] tableau;
        private final int[] basis;
        private final boolean[] turned;
        private BigInteger denominator = BigInteger.ONE;

        private Simplex(IntegerMatrix matrix) {
            rows = matrix.rows().size();
            columns = matrix.columns();
            tableau = new BigInteger[rows + 1][columns + rows + 1];
            basis = new int[rows];
            turned = new boolean[rows];
            for (BigInteger[] row : tableau) {
                Arrays.fill(row, BigInteger.ZERO);
            }
            for (int i = 0; i < rows; i++) {
                List<BigInteger> row = matrix.rows().get(i);
                BigInteger wanted = row.stream().reduce(BigInteger.ZERO, BigInteger::add).negate();
                turned[i] = wanted.signum() < 0;
                for (int j = 0; j < columns; j++) {
                    tableau[i][j] = turned[i] ? row.get(j).negate() : row.get(j);
                    tableau[rows][j] = tableau[rows][j].subtract(tableau[i][j]);
                }
                tableau[i][columns + i] = BigInteger.ONE;
                tableau[i][columns + rows] = wanted.abs();
                tableau[rows][columns + rows] = tableau[rows][columns + rows].subtract(wanted.abs());
                basis[i] = columns + i;
            }
        }

        private PositiveKernel solve() {
            for (int entering = entering(); entering >= 0; entering = entering()) {
                pivot(leaving(entering), entering);
            }
            return tableau[rows][columns + rows].signum() == 0 ? found() : blocked();
        }

        private int entering() {
            for (int j = 0; j < columns; j++) {
                if (tableau[rows][j].signum() < 0) {
                    return j;
                }
            }
            return -1;
        }

        /** There is always one: the sum of the artificial variables cannot fall for ever. */
        private int leaving(int entering) {
            int best = -1;
            for (int i = 0; i < rows; i++) {
                if (tableau[i][entering].signum() > 0 && (best < 0 || before(i, best, entering))) {
                    best = i;
                }
            }
            return best;
        }

        private boolean before(int one, int other, int entering) {
            int compared = value(one).multiply(tableau[other][entering]).compareTo(value(other).multiply(tableau[one][entering]));
            return compared < 0 || compared == 0 && basis[one] < basis[other];
        }

        private void pivot(int at, int entering) {
            BigInteger pivot = tableau[at][entering];
            for (int i = 0; i <= rows; i++) {
                BigInteger factor = tableau[i][entering];
                for (int j = 0; i != at && j < tableau[i].length; j++) {
                    tableau[i][j] = pivot.multiply(tableau[i][j]).subtract(factor.multiply(tableau[at][j])).divide(denominator);
                }
            }
            denominator = pivot;
            basis[at] = entering;
        }

        private BigInteger value(int row) {
            return tableau[row][columns + rows];
        }

        private PositiveKernel found() {
            List<BigInteger> vector = new ArrayList<>(Collections.nCopies(columns, denominator));
            for (int i = 0; i < rows; i++) {
                if (basis[i] < columns) {
                    vector.set(basis[i], denominator.add(value(i)));
                }
            }
            return new Found(IntegerMatrix.primitive(vector));
        }

        /** The multipliers of the dual problem, read off the reduced costs of the artificial variables. */
        private PositiveKernel blocked() {
            List<BigInteger> proof = new ArrayList<>();
            for (int i = 0; i < rows; i++) {
                BigInteger multiplier = tableau[rows][columns + i].subtract(denominator);
                proof.add(turned[i] ? multiplier.negate() : multiplier);
            }
            return new Blocked(IntegerMatrix.primitive(proof));
        }
    }
}
