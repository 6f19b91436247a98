package tarewright.chemistry;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;
import tarewright.chemistry.Equation.Term;
import tarewright.exact.IntegerMatrix;

/** What an equation must conserve, as a matrix. */
final class Conservation {
    private Conservation() {
    }

    /** The elements in the order of their first appearance. */
    static List<String> elements(Equation equation) {
        Set<String> elements = new LinkedHashSet<>();
        equation.terms().forEach(term -> elements.addAll(term.species().formula().atoms().keySet()));
        return List.copyOf(elements);
    }

    static boolean hasCharges(Equation equation) {
        return equation.terms().stream().anyMatch(term -> term.species().formula().charge() != 0);
    }

    /** A row for each element in their order, then one for the charge if any species has one. */
    static IntegerMatrix matrix(Equation equation) {
        List<List<BigInteger>> rows = new ArrayList<>();
        for (String element : elements(equation)) {
            rows.add(row(equation, formula -> formula.atoms().getOrDefault(element, 0)));
        }
        if (hasCharges(equation)) {
            rows.add(row(equation, Formula::charge));
        }
        return new IntegerMatrix(rows, equation.terms().size());
    }

    private static List<BigInteger> row(Equation equation, ToIntFunction<Formula> count) {
        List<BigInteger> row = new ArrayList<>();
        for (Term term : equation.terms()) {
            int sign = row.size() < equation.left().size() ? 1 : -1;
            row.add(BigInteger.valueOf((long) sign * count.applyAsInt(term.species().formula())));
        }
        return row;
    }
}
