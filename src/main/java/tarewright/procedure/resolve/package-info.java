/**
 * Names, order of evaluation, amounts, rounding, scaling: a declared procedure and a setting become a resolved procedure. Every figure carries its
 * derivation. May use {@code procedure.declare}, {@code procedure.expression}, {@code setting} and below.
 */
package tarewright.procedure.resolve;
