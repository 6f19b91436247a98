package tarewright.procedure.expression;

/** What joins two operands. */
public enum Operator {
    ADD, SUBTRACT, MULTIPLY, DIVIDE, RAISE
}
