package tarewright.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Step.Term;
import tarewright.quantity.Rounding;

/** What each step gives and how strongly it is moved, against hand calculation and analytic derivatives. */
class StepTest {
    /** Two moles of an ideal gas at 300 K in 0.05 m³: p = 2 × 8.314462618 × 300 / 0.05 = 99 773.55 Pa (R: CODATA 2018). */
    @Test
    void aProductIsTheGasLaw() {
        Figure n = Nodes.exact(2);
        Figure t = Nodes.exact(300);
        Figure v = Nodes.exact(0.05);
        Step law = new Step.Product(8.314462618, List.of(new Power(n, 1), new Power(t, 1), new Power(v, -1)));
        double[] of = {2, 300, 0.05};
        assertEquals(99_773.551, law.value(of), 0.001);
        assertEquals(49_886.776, law.partial(0, of), 0.001);
        assertEquals(332.57850, law.partial(1, of), 0.00001);
        // -p/V
        assertEquals(-1_995_471.03, law.partial(2, of), 0.01);
        assertEquals(List.of(n, t, v), law.from());
    }

    /** Euler's theorem: Σ x ∂f/∂x is the sum of the exponents times f. And each partial is exponent × f / x. */
    @Test
    void productsKeepEulersTheorem() {
        SplittableRandom random = new SplittableRandom(1_707_041_5L);
        for (int round = 0; round < 200; round++) {
            int factors = 1 + random.nextInt(4);
            double[] of = random.doubles(factors, 0.2, 5).toArray();
            List<Power> powers = random.ints(factors, 1, 4).mapToObj(e -> new Power(Nodes.exact(1), random.nextBoolean() ? e : -e)).toList();
            Step.Product product = new Step.Product(-1.5, powers);
            double f = product.value(of);
            double sum = 0;
            for (int i = 0; i < factors; i++) {
                assertEquals(powers.get(i).exponent() * f / of[i], product.partial(i, of), 1e-12 * Math.abs(f / of[i]) * 3);
                sum += of[i] * product.partial(i, of);
            }
            assertEquals(powers.stream().mapToInt(Power::exponent).sum() * f, sum, 1e-11 * Math.abs(f));
        }
    }

    /** Nothing weighed of one reactant: the amount is nothing, and still moves with the mass. */
    @Test
    void aProductMovesAtZero() {
        Step.Product product = new Step.Product(2, List.of(new Power(Nodes.exact(0), 1), new Power(Nodes.exact(3), 1)));
        assertEquals(0, product.value(new double[] {0, 3}));
        assertEquals(6, product.partial(0, new double[] {0, 3}));
        assertEquals(0, product.partial(1, new double[] {0, 3}));
    }

    @Test
    void aFactorHasAnExponent() {
        Figure x = Nodes.exact(1);
        assertThrows(IllegalArgumentException.class, () -> new Power(x, 0));
    }

    /** 2 × 1.5 - 4 × 0.25 = 2. */
    @Test
    void aSumWeighsItsTerms() {
        Figure a = Nodes.exact(1.5);
        Figure b = Nodes.exact(0.25);
        Step sum = new Step.Sum(List.of(new Term(2, a), new Term(-4, b)));
        double[] of = {1.5, 0.25};
        assertEquals(2, sum.value(of));
        assertEquals(2, sum.partial(0, of));
        assertEquals(-4, sum.partial(1, of));
        assertEquals(List.of(a, b), sum.from());
    }

    /** The limiting reactant: only the one that is least moves the result; of two alike the first. */
    @Test
    void onlyTheChosenOneMovesAnExtreme() {
        Figure a = Nodes.exact(0.3);
        Figure b = Nodes.exact(0.2);
        Figure c = Nodes.exact(0.4);
        Step.Extreme least = new Step.Extreme(true, List.of(a, b, c));
        Step.Extreme largest = new Step.Extreme(false, List.of(a, b, c));
        double[] of = {0.3, 0.2, 0.4};
        assertEquals(0.2, least.value(of));
        assertEquals(0.4, largest.value(of));
        assertEquals(b, least.chosen());
        assertEquals(c, largest.chosen());
        assertEquals(List.of(0.0, 1.0, 0.0), partials(least, of));
        assertEquals(List.of(0.0, 0.0, 1.0), partials(largest, of));
        double[] alike = {0.2, 0.2, 0.2};
        assertEquals(List.of(1.0, 0.0, 0.0), partials(least, alike));
        assertEquals(List.of(1.0, 0.0, 0.0), partials(largest, alike));
    }

    private static List<Double> partials(Step step, double[] of) {
        return IntStream.range(0, of.length).mapToObj(i -> step.partial(i, of)).toList();
    }

    /** A burette divided in 0.05 mL: 12.37 is set and read as 12.35. What is set hides the target's error; what is read shows the truth's. */
    @Test
    void whatIsSetHidesItsTargetAndWhatIsReadDoesNot() {
        Rounding division = new Rounding(Rounding.Direction.NEAREST, 0.05);
        Figure target = Nodes.input(12.37, 0.2);
        Figure set = Nodes.of(new Step.Set(target, division, Reason.INSTRUMENT));
        Figure read = Nodes.of(new Step.Read(target, division));
        assertEquals(12.35, set.value());
        assertEquals(12.35, read.value());
        assertEquals(0, set.standardUncertainty());
        assertEquals(0.2, read.standardUncertainty());
        assertEquals(0.03, set.uncertain(0.03).standardUncertainty());
        // √(0.2² + 0.15²) = 0.25
        assertEquals(0.25, read.uncertain(0.15).standardUncertainty(), 1e-15);
        assertEquals(List.of(target), set.from());
        assertEquals(List.of(target), read.from());
    }

    @Test
    void whatIsGivenStandsOnNothing() {
        Step given = new Step.Given(3, new Origin.Author());
        assertEquals(3, given.value(new double[0]));
        assertEquals(List.of(), given.from());
        assertThrows(IndexOutOfBoundsException.class, () -> given.partial(0, new double[0]));
    }

    /**
     * The Antoine equation of water, log10(p/mmHg) = 8.07131 - 1730.63/(233.426 + t/°C) (coefficients from memory, as commonly tabulated): 23.7 mmHg at
     * 25 °C, and dp/dt = p ln(10) × 1730.63/(233.426 + t)².
     */
    @Test
    void aRelationMovesByItsAnalyticDerivative() {
        ToDoubleFunction<double[]> antoine = of -> Math.pow(10, 8.07131 - 1730.63 / (233.426 + of[0]));
        double[] at25 = {25};
        Step relation = relation(1, antoine);
        double p = relation.value(at25);
        assertEquals(23.7, p, 0.05);
        double derivative = p * Math.log(10) * 1730.63 / Math.pow(258.426, 2);
        assertEquals(derivative, relation.partial(0, at25), 1e-8 * derivative);
    }

    /** x² y + sin x at negative, zero and large arguments: 2xy + cos x, and x². */
    @Test
    void aRelationOfTwoMovesByEach() {
        Step relation = relation(2, of -> of[0] * of[0] * of[1] + Math.sin(of[0]));
        for (double[] of : List.of(new double[] {-3, 2}, new double[] {0, 2}, new double[] {1.5, 0}, new double[] {2, -1e6})) {
            double byX = 2 * of[0] * of[1] + Math.cos(of[0]);
            assertEquals(byX, relation.partial(0, of), 1e-7 * Math.max(1, Math.abs(byX)));
            assertEquals(of[0] * of[0], relation.partial(1, of), 1e-7 * Math.max(1, of[0] * of[0]));
        }
        double[] asked = {-3, 2};
        relation.partial(0, asked);
        assertEquals(List.of(-3.0, 2.0), List.of(asked[0], asked[1]));
    }

    private static Step relation(int arguments, ToDoubleFunction<double[]> function) {
        return new Step.Relation("test", "analysis", IntStream.range(0, arguments).mapToObj(i -> Nodes.exact(1)).toList(), function);
    }
}
