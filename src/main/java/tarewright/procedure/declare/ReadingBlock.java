package tarewright.procedure.declare;

import java.util.Optional;
import tarewright.procedure.expression.Expression;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;

/**
 * A {@code reading}: what the students read off.
 *
 * @param of the figure that it measures
 * @param unit to read it in
 * @param instrument that it is read with
 * @param times how often, at least 1
 * @param concordant the spread within which repeated readings agree
 * @param difference the two readings whose difference it is
 * @param expect what it will be, where nothing computes it
 */
public record ReadingBlock(TypedBlock block, Optional<At<String>> of, Optional<Unit> unit, Optional<At<String>> instrument, int times,
        Optional<At<Typed>> concordant, Optional<Difference> difference, Optional<At<Expression>> expect) {
    public String name() {
        return block.name();
    }

    /** {@code first - second}. */
    public record Difference(At<String> first, At<String> second) {
    }
}
