package tarewright.chemistry;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import tarewright.chemistry.Equation.Term;
import tarewright.exact.IntegerMatrix;

/** Strikes out what stands on both sides of an equation. */
final class Onlookers {
    private Onlookers() {
    }

    static NetIonic strike(Equation equation, List<BigInteger> coefficients) {
        int left = equation.left().size();
        List<Term> terms = equation.terms();
        List<BigInteger> rest = new ArrayList<>(coefficients);
        List<Species> onlookers = new ArrayList<>();
        for (int i = 0; i < left; i++) {
            for (int j = left; j < terms.size(); j++) {
                if (terms.get(i).species().equals(terms.get(j).species())) {
                    BigInteger common = rest.get(i).min(rest.get(j));
                    rest.set(i, rest.get(i).subtract(common));
                    rest.set(j, rest.get(j).subtract(common));
                    onlookers.add(terms.get(i).species());
                }
            }
        }
        if (rest.stream().allMatch(each -> each.signum() == 0)) {
            return new NetIonic.NoReaction();
        }
        List<BigInteger> lowest = IntegerMatrix.primitive(rest);
        Equation kept = new Equation(kept(terms, lowest, 0, left), kept(terms, lowest, left, terms.size()), equation.sign());
        BalanceResult net = Balancing.balanced(kept, lowest.stream().filter(each -> each.signum() > 0).toList());
        return net instanceof BalanceResult.Bad bad ? new NetIonic.Bad(bad.trouble())
                : new NetIonic.Net(((BalanceResult.Ok) net).equation(), onlookers);
    }

    private static List<Term> kept(List<Term> terms, List<BigInteger> coefficients, int from, int to) {
        List<Term> kept = new ArrayList<>();
        for (int i = from; i < to; i++) {
            if (coefficients.get(i).signum() > 0) {
                kept.add(terms.get(i));
            }
        }
        return kept;
    }
}
