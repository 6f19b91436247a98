package tarewright.safety;

/**
 * Where a figure of the tables comes from.
 *
 * @param source the publication with its table or clause
 * @param trust how far the figure is proven
 */
public record Reference(String source, Trust trust) {
}
