package tarewright.chemistry;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import tarewright.chemistry.Balance.Impossible;
import tarewright.chemistry.Balance.Impossible.Kind;
import tarewright.chemistry.Equation.Term;
import tarewright.exact.IntegerMatrix;
import tarewright.exact.PositiveKernel;

/** Which elements keep an equation from being balanced. */
final class Blame {
    private Blame() {
    }

    /** Of an equation that no coefficients above zero balance. */
    static Impossible of(Equation equation) {
        List<String> onlyLeft = new ArrayList<>();
        List<String> onlyRight = new ArrayList<>();
        for (String element : Conservation.elements(equation)) {
            boolean left = holds(equation.left(), element);
            boolean right = holds(equation.right(), element);
            if (left != right) {
                (left ? onlyLeft : onlyRight).add(element);
            }
        }
        boolean helps = Redox.mediumWouldHelp(equation);
        if (!onlyLeft.isEmpty() || !onlyRight.isEmpty()) {
            return new Impossible(Kind.ONE_SIDED, onlyLeft, onlyRight, List.of(), helps);
        }
        return together(equation, helps);
    }

    private static boolean holds(List<Term> side, String element) {
        return side.stream().anyMatch(term -> term.species().formula().atoms().containsKey(element));
    }

    private static Impossible together(Equation equation, boolean mediumHelps) {
        List<String> elements = Conservation.elements(equation);
        List<List<BigInteger>> rows = Conservation.matrix(equation).rows();
        int columns = equation.terms().size();
        IntegerMatrix atoms = new IntegerMatrix(rows.subList(0, elements.size()), columns);
        boolean chargeOnly = PositiveKernel.of(atoms) instanceof PositiveKernel.Found;
        List<String> together = new ArrayList<>();
        for (int row : fewest(chargeOnly ? new IntegerMatrix(rows, columns) : atoms)) {
            if (row < elements.size()) {
                together.add(elements.get(row));
            }
        }
        return new Impossible(chargeOnly ? Kind.CHARGE : Kind.NO_POSITIVE_SET, List.of(), List.of(), together, mediumHelps);
    }

    /** Rows that block a positive solution, none of which could be spared. */
    private static List<Integer> fewest(IntegerMatrix matrix) {
        List<Integer> blocking = new ArrayList<>(((PositiveKernel.Blocked) PositiveKernel.of(matrix)).rows());
        for (Integer row : List.copyOf(blocking)) {
            List<List<BigInteger>> rest = blocking.stream().filter(each -> !each.equals(row)).map(matrix.rows()::get).toList();
            if (PositiveKernel.of(new IntegerMatrix(rest, matrix.columns())) instanceof PositiveKernel.Blocked) {
                blocking.remove(row);
            }
        }
        return blocking;
    }
}
