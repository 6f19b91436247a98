package tarewright.chemistry;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import tarewright.chemistry.Equation.Term;
import tarewright.exact.IntegerMatrix;
import tarewright.exact.Rational;

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

    /**
     * A row for each element in their order, then one for the charge if any species has one. Where a formula holds a fraction
     * of an adduct, its row is multiplied so that it is whole.
     */
    static IntegerMatrix matrix(Equation equation) {
        List<List<Rational>> rows = new ArrayList<>();
        for (String element : elements(equation)) {
            rows.add(row(equation, formula -> formula.count(element)));
        }
        if (hasCharges(equation)) {
            rows.add(row(equation, formula -> Rational.of(formula.charge())));
        }
        return new IntegerMatrix(rows.stream().map(Conservation::cleared).toList(), equation.terms().size());
    }

    private static List<Rational> row(Equation equation, Function<Formula, Rational> count) {
        List<Rational> row = new ArrayList<>();
        for (Term term : equation.terms()) {
            Rational each = count.apply(term.species().formula());
            row.add(row.size() < equation.left().size() ? each : each.negate());
        }
        return row;
    }

    /** Numbers multiplied so that all are whole; left as they are if they are so already. */
    static List<BigInteger> cleared(List<Rational> numbers) {
        BigInteger multiple = BigInteger.ONE;
        for (Rational each : numbers) {
            multiple = multiple.multiply(each.denominator()).divide(multiple.gcd(each.denominator()));
        }
        Rational times = Rational.of(multiple);
        return numbers.stream().map(each -> each.times(times).numerator()).toList();
    }
}
