/**
 * Formulas of the author's: what stands in {@code is} and {@code value}, read into a tree that knows its places and worked
 * out into figures that know how they were found. What a name stands for is asked of a {@link
 * tarewright.procedure.expression.Lookup}. May use {@code procedure.syntax}, {@code derivation}, {@code quantity}, {@code
 * finding} and {@code text}.
 */
package tarewright.procedure.expression;
