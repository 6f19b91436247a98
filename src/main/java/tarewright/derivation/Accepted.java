package tarewright.derivation;

import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * The range within which a value is accepted, and what matters most for it. All values in the coherent SI unit.
 *
 * @param from lower end
 * @param to upper end
 * @param standardUncertainty to first order
 * @param mostImportant the two sources with the largest contributions, largest first
 * @param drawn whether the range comes from a class on paper, because the first-order formula does not hold where the limiting reactant may change
 */
public record Accepted(double from, double to, double standardUncertainty, List<Gradient.Part> mostImportant, boolean drawn) {
    /** Coverage factor: about 95 % of results of a normal distribution (JCGM 100:2008, 6.2.1 and 6.3.3). */
    public static final double COVERAGE = 2;
    /** A turn of the limiting reactant within so many standard uncertainties makes the formula doubtful. */
    private static final double NEAR = 3;
    private static final int DRAWS = 20_000;
    private static final long SEED = 0x7461_7265L;
    private static final double TAIL = 0.025;

    public Accepted {
        mostImportant = List.copyOf(mostImportant);
    }

    /**
     * Expected value plus and minus twice its combined standard uncertainty; near a turn of the limiting reactant the middle 95 % of a class on paper
     * (JCGM 101:2008, 5.3 and 7.7), from a fixed seed.
     */
    public static Accepted around(ByReadings result) {
        Figure figure = result.result();
        double u = result.standardUncertainty();
        if (!nearTurn(figure, Collections.newSetFromMap(new IdentityHashMap<>()))) {
            return new Accepted(figure.value() - COVERAGE * u, figure.value() + COVERAGE * u, u, result.largest(2), false);
        }
        double[] draws = result.draws(DRAWS, new SplittableRandom(SEED));
        Arrays.sort(draws);
        return new Accepted(draws[(int) (TAIL * DRAWS)], draws[(int) ((1 - TAIL) * DRAWS)], u, result.largest(2), true);
    }

    /** Expected value plus and minus what the author allows. */
    public static Accepted within(ByReadings result, double half) {
        double value = result.result().value();
        return new Accepted(value - half, value + half, result.standardUncertainty(), result.largest(2), false);
    }

    /** Whether the smallest or largest of several behind this figure could as well be another of them. */
    private static boolean nearTurn(Figure figure, Set<Figure> seen) {
        if (!seen.add(figure) || figure.step() instanceof Step.Set) {
            return false;
        }
        if (figure.step() instanceof Step.Extreme extreme) {
            Figure chosen = extreme.chosen();
            for (Figure other : extreme.from()) {
                Figure between = Figure.of(Symbol.words("difference"), chosen.unit(), new Step.Sum(List.of(new Step.Term(1, chosen), new Step.Term(-1, other))));
                if (other != chosen && Math.abs(between.value()) < NEAR * between.standardUncertainty()) {
                    return true;
                }
            }
        }
        return figure.from().stream().anyMatch(f -> nearTurn(f, seen));
    }

    public boolean holds(double value) {
        return value >= from && value <= to;
    }
}
