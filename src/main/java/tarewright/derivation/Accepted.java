package tarewright.derivation;

import java.util.List;

/**
 * The range within which a value is accepted, and what matters most for it. All values in the coherent SI unit.
 *
 * @param from lower end
 * @param to upper end
 * @param mostImportant the two sources with the largest contributions, largest first
 */
public record Accepted(double from, double to, List<Gradient.Part> mostImportant) {
    /** Coverage factor: about 95 % of results of a normal distribution (JCGM 100:2008, 6.2.1 and 6.3.3). */
    public static final double COVERAGE = 2;

    public Accepted {
        mostImportant = List.copyOf(mostImportant);
    }

    /** Expected value plus and minus twice its combined standard uncertainty. */
    public static Accepted around(Figure figure) {
        double half = COVERAGE * figure.standardUncertainty();
        return new Accepted(figure.value() - half, figure.value() + half, figure.gradient().largest(2));
    }

    /** Expected value plus and minus what the author allows. */
    public static Accepted within(Figure figure, double half) {
        return new Accepted(figure.value() - half, figure.value() + half, figure.gradient().largest(2));
    }

    public boolean holds(double value) {
        return value >= from && value <= to;
    }
}
