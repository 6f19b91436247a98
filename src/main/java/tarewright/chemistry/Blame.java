package tarewright.chemistry;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tarewright.chemistry.Balance.Impossible;
import tarewright.chemistry.Balance.Impossible.Kind;
import tarewright.chemistry.Equation.Term;
import tarewright.exact.IntegerMatrix;
import tarewright.exact.PositiveKernel;

/** Which elements keep an equation from being balanced. */
final class Blame {
    private static final int MOST_TRIED = 12;

    private Blame() {
    }

    /** Of an equation that no coefficients above zero balance. */
    static Impossible of(Equation equation) {
        boolean helps = Redox.mediumWouldHelp(equation);
        return isOneSided(equation)
                ? new Impossible(Kind.ONE_SIDED, onlyIn(equation.left(), equation.right()),
                        onlyIn(equation.right(), equation.left()), List.of(), helps)
                : together(equation, helps);
    }

    /** Whether an element appears on one side only, so that nothing can balance it. */
    static boolean isOneSided(Equation equation) {
        return !elements(equation.left()).equals(elements(equation.right()));
    }

    private static List<String> onlyIn(List<Term> side, List<Term> other) {
        Set<String> elements = elements(side);
        elements.removeAll(elements(other));
        return List.copyOf(elements);
    }

    private static Set<String> elements(List<Term> side) {
        Set<String> elements = new LinkedHashSet<>();
        side.forEach(term -> elements.addAll(term.species().formula().atoms().keySet()));
        return elements;
    }

    private static Impossible together(Equation equation, boolean mediumHelps) {
        List<String> elements = Conservation.elements(equation);
        IntegerMatrix whole = Conservation.matrix(equation);
        IntegerMatrix atoms = new IntegerMatrix(whole.rows().subList(0, elements.size()), whole.columns());
        PositiveKernel ofAtoms = PositiveKernel.of(atoms);
        boolean charge = ofAtoms instanceof PositiveKernel.Found;
        PositiveKernel.Blocked blocked = (PositiveKernel.Blocked) (charge ? PositiveKernel.of(whole) : ofAtoms);
        List<String> together = fewest(whole, blocked.rows()).stream()
                .filter(row -> row < elements.size())
                .map(elements::get)
                .toList();
        return new Impossible(charge ? Kind.CHARGE : Kind.NO_POSITIVE_SET, List.of(), List.of(), together, mediumHelps);
    }

    /** Of rows that block a positive solution, so few that none could be spared; all of them if they are too many to try. */
    private static List<Integer> fewest(IntegerMatrix matrix, List<Integer> blocking) {
        List<Integer> needed = new ArrayList<>(blocking);
        for (Integer row : blocking.size() > MOST_TRIED ? List.<Integer>of() : blocking) {
            List<List<BigInteger>> rest = needed.stream().filter(each -> !each.equals(row)).map(matrix.rows()::get).toList();
            if (PositiveKernel.of(new IntegerMatrix(rest, matrix.columns())) instanceof PositiveKernel.Blocked) {
                needed.remove(row);
            }
        }
        return needed;
    }
}
