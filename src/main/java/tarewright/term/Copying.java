package tarewright.term;

/**
 * How often a document of a section is copied.
 *
 * @param pages of one copy
 * @param copies one or more
 */
public record Copying(String section, String document, int pages, int copies) {
    /** Sheets of paper, printed on both sides; each copy begins on a new one. */
    public int sheets() {
        return (pages + 1) / 2 * copies;
    }
}
