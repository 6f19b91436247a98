/**
 * Figures that know how they were found. A figure is a value with its unit, its standard uncertainty and the step that made it, which
 * points to the figures it was made from; worked lines, accepted ranges, follow-through, slips and the class on paper are all
 * read off that one graph. May use {@code quantity} and {@code exact}.
 */
package tarewright.derivation;
