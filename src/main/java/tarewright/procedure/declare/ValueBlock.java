package tarewright.procedure.declare;

import java.util.List;
import java.util.Optional;
import tarewright.procedure.expression.Expression;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Unit;

/**
 * A {@code value}: any other typed quantity, or a formula over others.
 *
 * @param is none if it could not be read, which was a finding
 * @param versions what it is in each version of the questions' numbers, where the author typed that: {@code is} is then the first of them
 */
public record ValueBlock(TypedBlock block, Optional<At<Expression>> is, List<At<Expression>> versions, Optional<Unit> unit, Precision precision) {
    public ValueBlock {
        versions = List.copyOf(versions);
    }

    public String name() {
        return block.name();
    }

    /** The same with another formula or quantity. */
    public ValueBlock being(At<Expression> other) {
        return new ValueBlock(block, Optional.of(other), versions, unit, precision);
    }
}
