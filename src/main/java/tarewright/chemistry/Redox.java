package tarewright.chemistry;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Equation.Term;

/**
 * Balances a redox equation in water: water, the ion of the medium and, in a half-equation, electrons are added on
 * whichever side they are needed.
 */
public final class Redox {
    private Redox() {
    }

    /**
     * Balances a skeleton with water and the ion of a medium added as needed.
     *
     * @param half whether electrons may be added too
     */
    public static BalanceResult inMedium(Equation skeleton, Medium medium, boolean half) {
        Equation whole = withWater(skeleton, medium, half);
        List<List<BigInteger>> kernel = Conservation.matrix(whole).kernel();
        if (kernel.size() > 1) {
            return new BalanceResult.Bad((BalanceTrouble) Balancing.balance(whole));
        }
        return attempt(whole, kernel, helpers(medium, half)).orElseGet(() -> new BalanceResult.Bad(Blame.of(skeleton)));
    }

    /** The balanced equation, helpers moved to the side where they are needed; empty if another species would have to move. */
    private static Optional<BalanceResult> attempt(Equation whole, List<List<BigInteger>> kernel, List<Formula> helpers) {
        if (kernel.size() != 1) {
            return Optional.empty();
        }
        List<Term> left = new ArrayList<>();
        List<Term> right = new ArrayList<>();
        List<BigInteger> leftCoefficients = new ArrayList<>();
        List<BigInteger> rightCoefficients = new ArrayList<>();
        List<BigInteger> coefficients = directed(whole, kernel.get(0), helpers);
        for (int i = 0; i < coefficients.size(); i++) {
            Term term = whole.terms().get(i);
            BigInteger coefficient = coefficients.get(i);
            if (coefficient.signum() <= 0 && !isOneOf(helpers, term)) {
                return Optional.empty();
            }
            if (coefficient.signum() != 0) {
                boolean onLeft = i < whole.left().size() == coefficient.signum() > 0;
                (onLeft ? left : right).add(term);
                (onLeft ? leftCoefficients : rightCoefficients).add(coefficient.abs());
            }
        }
        leftCoefficients.addAll(rightCoefficients);
        return Optional.of(Balancing.balanced(new Equation(left, right, whole.sign()), leftCoefficients));
    }

    /** The solution or its opposite: that in which the first species that is no helper has a positive coefficient. */
    private static List<BigInteger> directed(Equation whole, List<BigInteger> solution, List<Formula> helpers) {
        for (int i = 0; i < solution.size(); i++) {
            if (!isOneOf(helpers, whole.terms().get(i))) {
                return solution.get(i).signum() < 0 ? solution.stream().map(BigInteger::negate).toList() : solution;
            }
        }
        return solution;
    }

    private static boolean isOneOf(List<Formula> helpers, Term term) {
        return helpers.contains(term.species().formula());
    }

    /** Whether water and its ions are all that is missing: the rest is charged, and in acid it balances. */
    static boolean mediumWouldHelp(Equation equation) {
        List<Formula> helpers = helpers(Medium.ACIDIC, false);
        if (!Conservation.hasCharges(equation) || equation.terms().stream().anyMatch(term -> isOneOf(helpers, term))) {
            return false;
        }
        Equation whole = withWater(equation, Medium.ACIDIC, false);
        return attempt(whole, Conservation.matrix(whole).kernel(), helpers).isPresent();
    }

    private static List<Formula> helpers(Medium medium, boolean half) {
        List<Formula> helpers = new ArrayList<>(List.of(formula("H2O"), medium.ion()));
        if (half) {
            helpers.add(formula("e^-"));
        }
        return helpers;
    }

    private static Equation withWater(Equation skeleton, Medium medium, boolean half) {
        boolean states = skeleton.terms().stream().anyMatch(term -> term.species().state().isPresent());
        List<Term> left = new ArrayList<>(skeleton.left());
        for (Formula helper : helpers(medium, half)) {
            boolean there = skeleton.terms().stream().anyMatch(term -> term.species().formula().equals(helper));
            if (!there) {
                State state = helper.charge() == 0 ? State.LIQUID : State.AQUEOUS;
                Optional<State> shown = states && !helper.isElectron() ? Optional.of(state) : Optional.empty();
                left.add(new Term(Optional.empty(), new Species(helper, shown), 0, 0));
            }
        }
        return new Equation(left, skeleton.right(), skeleton.sign());
    }

    private static Formula formula(String text) {
        return Formula.parse(text).value().orElseThrow();
    }
}
