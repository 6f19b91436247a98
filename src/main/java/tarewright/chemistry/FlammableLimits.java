package tarewright.chemistry;

/**
 * Between which shares of the air a gas or vapour burns or explodes.
 *
 * @param formula of the gas
 * @param lower volume fraction (0 to 1), the lower of the two published
 * @param upper volume fraction (0 to 1), the higher of the two published
 * @param provenance of the row
 */
public record FlammableLimits(Formula formula, double lower, double upper, Provenance provenance) {
}
