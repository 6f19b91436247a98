package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tarewright.chemistry.Balance.Check;
import tarewright.chemistry.Equation.Sign;
import tarewright.chemistry.Equation.Term;
import tarewright.exact.IntegerMatrix;
import tarewright.exact.PositiveKernel;
import tarewright.exact.Rational;

/** Laws over ten thousand seeded random equations, half of them made to balance, half left to chance. */
class BalancingLawsTest {
    private static final int EQUATIONS = 10_000;

    @Test
    void whateverIsFoundKeepsTheLaws() {
        Map<String, Integer> outcomes = new HashMap<>();
        for (int seed = 0; seed < EQUATIONS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            boolean made = seed % 2 == 0;
            Equation equation = made ? balanceable(random) : byChance(random);
            Balance balance = Balancing.balance(equation);
            outcomes.merge(balance.getClass().getSimpleName(), 1, Integer::sum);
            if (balance instanceof Balance.Unique unique) {
                obeysTheLaws(equation, unique);
                isUnmovedByReordering(equation, unique, random);
            } else if (balance instanceof Balance.Ambiguous ambiguous) {
                areIndependentReactions(equation, ambiguous);
            } else {
                assertTrue(!made, "made to balance: " + Reactions.written(equation, ones(equation)));
                isBlockedByThoseBlamed(equation, (Balance.Impossible) balance);
            }
        }
        assertTrue(outcomes.get("Unique") > 1500, outcomes::toString);
        assertTrue(outcomes.get("Ambiguous") > 500, outcomes::toString);
        assertTrue(outcomes.get("Impossible") > 1500, outcomes::toString);
    }

    private static void obeysTheLaws(Equation equation, Balance.Unique unique) {
        assertTrue(isZero(Conservation.matrix(equation).times(unique.coefficients())));
        assertTrue(unique.coefficients().stream().allMatch(each -> each.signum() > 0));
        assertEquals(BigInteger.ONE, unique.coefficients().stream().reduce(BigInteger.ZERO, BigInteger::gcd));
        assertInstanceOf(Check.Correct.class, Balancing.check(with(equation, unique.coefficients())));
    }

    private static void isUnmovedByReordering(Equation equation, Balance.Unique unique, SplittableRandom random) {
        Map<Term, BigInteger> expected = new HashMap<>();
        for (int i = 0; i < unique.coefficients().size(); i++) {
            expected.put(equation.terms().get(i), unique.coefficients().get(i));
        }
        Equation shuffled = new Equation(shuffled(equation.left(), random), shuffled(equation.right(), random), equation.sign());
        assertEquals(new Balance.Unique(shuffled.terms().stream().map(expected::get).toList()), Balancing.balance(shuffled));
        Equation turned = new Equation(shuffled.right(), shuffled.left(), equation.sign());
        assertEquals(new Balance.Unique(turned.terms().stream().map(expected::get).toList()), Balancing.balance(turned));
    }

    private static void areIndependentReactions(Equation equation, Balance.Ambiguous ambiguous) {
        IntegerMatrix matrix = Conservation.matrix(equation);
        List<List<BigInteger>> reactions = ambiguous.reactions();
        assertEquals(Math.min(6, matrix.kernel().size()), reactions.size());
        assertEquals(reactions.size(), IntegerMatrix.of(reactions).rank());
        for (List<BigInteger> reaction : reactions) {
            assertTrue(isZero(matrix.times(reaction)));
            assertTrue(reaction.stream().allMatch(each -> each.signum() >= 0));
            assertEquals(BigInteger.ONE, reaction.stream().reduce(BigInteger.ZERO, BigInteger::gcd));
        }
    }

    /** One-sided elements are so indeed; those blamed together block it alone, and would not if one of them did not count. */
    private static void isBlockedByThoseBlamed(Equation equation, Balance.Impossible impossible) {
        switch (impossible.kind()) {
            case ONE_SIDED -> {
                assertTrue(!impossible.onlyLeft().isEmpty() || !impossible.onlyRight().isEmpty());
                assertTrue(impossible.onlyLeft().stream().noneMatch(each -> occurs(equation.right(), each)));
                assertTrue(impossible.onlyRight().stream().noneMatch(each -> occurs(equation.left(), each)));
            }
            case NO_POSITIVE_SET, CHARGE -> {
                boolean charge = impossible.kind() == Balance.Impossible.Kind.CHARGE;
                assertTrue(!balances(equation, impossible.together(), charge));
                for (String spared : impossible.together()) {
                    List<String> rest = impossible.together().stream().filter(each -> !each.equals(spared)).toList();
                    assertTrue(balances(equation, rest, charge), spared + " is blamed for nothing");
                }
            }
            default -> throw new AssertionError();
        }
    }

    private static boolean balances(Equation equation, List<String> elements, boolean charge) {
        List<String> all = Conservation.elements(equation);
        IntegerMatrix matrix = Conservation.matrix(equation);
        List<List<BigInteger>> rows = new ArrayList<>();
        for (int i = 0; i < matrix.rows().size(); i++) {
            if (i < all.size() ? elements.contains(all.get(i)) : charge) {
                rows.add(matrix.rows().get(i));
            }
        }
        return PositiveKernel.of(new IntegerMatrix(rows, matrix.columns()))
                instanceof PositiveKernel.Found;
    }

    private static boolean occurs(List<Term> side, String element) {
        return side.stream().anyMatch(term -> term.species().formula().atoms().containsKey(element));
    }

    /** The atoms of some random species, each taken a few times, dealt out to new species. */
    private static Equation balanceable(SplittableRandom random) {
        int elements = random.nextInt(2, 6);
        List<Term> left = new ArrayList<>();
        Map<String, Integer> pool = new LinkedHashMap<>();
        for (int i = random.nextInt(1, 4); i > 0; i--) {
            Map<String, Integer> atoms = atoms(random, elements);
            int times = random.nextInt(1, 5);
            left.add(term(atoms));
            atoms.forEach((symbol, count) -> pool.merge(symbol, count * times, Integer::sum));
        }
        List<Term> right = new ArrayList<>();
        for (int i = random.nextInt(0, 4); i > 0 && pool.size() > 0; i--) {
            Map<String, Integer> taken = new LinkedHashMap<>();
            for (String symbol : List.copyOf(pool.keySet())) {
                int count = random.nextInt(0, pool.get(symbol) + 1);
                if (count > 0) {
                    taken.put(symbol, count);
                }
            }
            taken.forEach((symbol, count) -> pool.computeIfPresent(symbol, (s, had) -> had == count ? null : had - count));
            if (!taken.isEmpty()) {
                right.add(term(taken));
            }
        }
        if (!pool.isEmpty()) {
            right.add(term(pool));
        }
        return new Equation(left, right, Sign.YIELDS);
    }

    private static Equation byChance(SplittableRandom random) {
        int elements = random.nextInt(1, 5);
        List<Term> left = new ArrayList<>();
        List<Term> right = new ArrayList<>();
        for (int i = random.nextInt(1, 4); i > 0; i--) {
            left.add(charged(atoms(random, elements), random));
        }
        for (int i = random.nextInt(1, 4); i > 0; i--) {
            right.add(charged(atoms(random, elements), random));
        }
        return new Equation(left, right, Sign.YIELDS);
    }

    private static Map<String, Integer> atoms(SplittableRandom random, int elements) {
        Map<String, Integer> atoms = new LinkedHashMap<>();
        for (int i = random.nextInt(1, 4); i > 0; i--) {
            atoms.put(Symbols.ALL.get(random.nextInt(elements)), random.nextInt(1, 7));
        }
        return atoms;
    }

    private static Term term(Map<String, Integer> atoms) {
        StringBuilder text = new StringBuilder();
        atoms.forEach((symbol, count) -> text.append(symbol).append(count));
        return term(text.toString());
    }

    private static Term charged(Map<String, Integer> atoms, SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        atoms.forEach((symbol, count) -> text.append(symbol).append(count));
        boolean ion = random.nextInt(5) == 0;
        return term(ion ? text + "^" + random.nextInt(1, 4) + (random.nextBoolean() ? "+" : "-") : text.toString());
    }

    /** Twenty hydrogens alone would be read as water mistyped. */
    private static Term term(String text) {
        String safe = text.equals("H20") ? "H10H10" : text;
        return new Term(Optional.empty(), new Species(Cases.formula(safe), Optional.empty()), 0, 0);
    }

    private static List<Term> shuffled(List<Term> terms, SplittableRandom random) {
        List<Term> shuffled = new ArrayList<>(terms);
        for (int i = shuffled.size() - 1; i > 0; i--) {
            Collections.swap(shuffled, i, random.nextInt(i + 1));
        }
        return shuffled;
    }

    private static Equation with(Equation equation, List<BigInteger> coefficients) {
        List<Term> terms = new ArrayList<>();
        for (int i = 0; i < coefficients.size(); i++) {
            terms.add(new Term(Optional.of(Rational.of(coefficients.get(i))), equation.terms().get(i).species(), 0, 0));
        }
        int left = equation.left().size();
        return new Equation(terms.subList(0, left), terms.subList(left, terms.size()), equation.sign());
    }

    private static List<BigInteger> ones(Equation equation) {
        return equation.terms().stream().map(term -> BigInteger.ONE).toList();
    }

    private static boolean isZero(List<BigInteger> vector) {
        return vector.stream().allMatch(each -> each.signum() == 0);
    }
}
