package tarewright.chemistry;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Balance.Check;
import tarewright.chemistry.Balance.ElementCount;
import tarewright.chemistry.Equation.Term;
import tarewright.exact.IntegerMatrix;
import tarewright.exact.Rational;

/**
 * Balances an equation by its conservation matrix: a row for each element and one for the charge, a column for each species,
 * those of the right side negative. Its kernel holds all sets of coefficients. Exact throughout.
 */
public final class Balancing {
    private Balancing() {
    }

    /** Finds the coefficients, whatever is written. */
    public static Balance balance(Equation equation) {
        IntegerMatrix matrix = Conservation.matrix(equation);
        List<List<BigInteger>> kernel = matrix.kernel();
        if (kernel.size() == 1 && allPositive(kernel.get(0))) {
            return new Balance.Unique(kernel.get(0));
        }
        if (kernel.size() > 1 && !Blame.isOneSided(equation)) {
            Optional<List<List<BigInteger>>> reactions = Reactions.independent(matrix, kernel);
            if (reactions.isPresent()) {
                return new Balance.Ambiguous(reactions.get(), check(equation) instanceof Check.Correct,
                        reactions.get().stream().map(each -> Reactions.written(equation, each)).toList());
            }
        }
        return Blame.of(equation);
    }

    /** Checks the coefficients as written, 1 where none is. */
    public static Check check(Equation equation) {
        List<ElementCount> unequal = new ArrayList<>();
        for (String element : Conservation.elements(equation)) {
            Rational left = atoms(equation.left(), element);
            Rational right = atoms(equation.right(), element);
            if (!left.equals(right)) {
                unequal.add(new ElementCount(element, left, right));
            }
        }
        if (!unequal.isEmpty()) {
            return new Check.Unbalanced(unequal);
        }
        Rational left = charge(equation.left());
        Rational right = charge(equation.right());
        return left.equals(right) ? new Check.Correct(equation.terms().stream().map(Term::coefficient).toList())
                : new Check.ChargeImbalance(left, right);
    }

    /**
     * The equation to compute with. Coefficients that are written are checked and kept, fractions cleared; where none is
     * written they are found, and an equation with several solutions is taken as it stands if it balances so.
     */
    public static BalanceResult complete(Equation equation) {
        Check check = check(equation);
        if (check instanceof Check.Correct correct) {
            return balanced(equation, Conservation.cleared(correct.coefficients()));
        }
        if (equation.hasCoefficients()) {
            return new BalanceResult.Bad((BalanceTrouble) check);
        }
        Balance balance = balance(equation);
        return balance instanceof Balance.Unique unique ? balanced(equation, unique.coefficients())
                : new BalanceResult.Bad((BalanceTrouble) balance);
    }

    /** Strikes out of a complete ionic equation, coefficients as written, what stands on both sides in the same state. */
    public static NetIonic net(Equation equation) {
        Check check = check(equation);
        if (!(check instanceof Check.Correct correct)) {
            return new NetIonic.Bad((BalanceTrouble) check);
        }
        return Onlookers.strike(equation, Conservation.cleared(correct.coefficients()));
    }

    static BalanceResult balanced(Equation equation, List<BigInteger> coefficients) {
        BigInteger limit = BigInteger.valueOf(BalancedEquation.LARGEST_COEFFICIENT);
        List<BalancedEquation.Term> terms = new ArrayList<>();
        for (int i = 0; i < coefficients.size(); i++) {
            if (coefficients.get(i).compareTo(limit) > 0) {
                return new BalanceResult.Bad(new BalanceTrouble.CoefficientTooLarge(coefficients.get(i).toString(),
                        BalancedEquation.LARGEST_COEFFICIENT));
            }
            terms.add(new BalancedEquation.Term(coefficients.get(i).intValueExact(), equation.terms().get(i).species()));
        }
        int left = equation.left().size();
        return new BalanceResult.Ok(
                new BalancedEquation(terms.subList(0, left), terms.subList(left, terms.size()), equation.sign()));
    }

    static boolean allPositive(List<BigInteger> vector) {
        return vector.stream().allMatch(each -> each.signum() > 0);
    }

    private static Rational atoms(List<Term> side, String element) {
        return side.stream()
                .map(term -> term.coefficient().times(term.species().formula().count(element)))
                .reduce(Rational.ZERO, Rational::plus);
    }

    private static Rational charge(List<Term> side) {
        return side.stream()
                .map(term -> term.coefficient().times(Rational.of(term.species().formula().charge())))
                .reduce(Rational.ZERO, Rational::plus);
    }
}
