package tarewright.procedure.declare;

import java.util.Optional;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Typed;

/**
 * A {@code graph}: axes to plot on.
 *
 * @param x what goes along
 * @param y what goes up
 * @param of what the points belong to: a dilution series
 * @param before the figure that stands on the y axis until two things are mixed
 * @param mixedAt when that is, on the x axis
 * @param drift how fast what stands on the y axis goes back after that, as found on trial
 */
public record GraphBlock(TypedBlock block, Optional<AxisField> x, Optional<AxisField> y, Optional<At<String>> of, Optional<At<String>> before,
        Optional<At<Typed>> mixedAt, Optional<Drift> drift) {
    public String name() {
        return block.name();
    }

    /** Both above zero: {@code back} is a difference, so that the zero of °C plays no part. */
    public record Drift(At<Typed> back, At<Typed> in) {
    }

    /**
     * What an axis shows.
     *
     * @param what a figure by its name; with a range, any words of the author
     * @param range from where to where it goes, where the author says so
     */
    public record AxisField(At<String> what, Optional<At<Typed>> range) {
    }
}
