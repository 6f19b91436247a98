package tarewright.chemistry.solution;

import tarewright.derivation.Figure;

/**
 * The check line of a recipe: the solute that goes in, by what is really weighed or measured out, and the solute that the
 * finished solution must hold, by its strength and volume. The two are worked out apart.
 *
 * @param in amount of substance out of the amount taken
 * @param out strength times volume
 * @param allowed how far the two may differ, relative to {@code out}, for the rounding to an instrument's division
 */
public record AmountCheck(Figure in, Figure out, double allowed) {
    /** (in − out) / out. */
    public double difference() {
        return (in.value() - out.value()) / out.value();
    }

    public boolean agrees() {
        return Math.abs(difference()) <= allowed;
    }
}
