package tarewright.chemistry;

/**
 * Where a datum comes from.
 *
 * @param source edition, table or equation; never empty
 * @param confidence how well it is proven
 */
public record Provenance(String source, Confidence confidence) {
    public Provenance {
        if (source.isBlank()) {
            throw new IllegalArgumentException("a datum without a source");
        }
    }

    /** The provenance of a figure made from two data. */
    public Provenance and(Provenance other) {
        String both = source.equals(other.source) ? source : source + "; " + other.source;
        return new Provenance(both, confidence.weaker(other.confidence));
    }
}
