package tarewright.procedure.declare;

import java.util.Optional;
import tarewright.procedure.expression.Expression;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Unit;

/** A {@code value}: any other typed quantity, or a formula over others. @param is none if it could not be read, which was a finding */
public record ValueBlock(TypedBlock block, Optional<At<Expression>> is, Optional<Unit> unit, Precision precision) {
    public String name() {
        return block.name();
    }
}
