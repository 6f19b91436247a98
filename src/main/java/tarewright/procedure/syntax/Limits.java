package tarewright.procedure.syntax;

/** How much of anything is read. Far above what a person writes; they keep hostile text from costing time or memory. */
final class Limits {
    /** UTF-16 units in a file. */
    static final int FILE = 1 << 20;
    /** Lists and quotes one inside another. */
    static final int NESTING = 20;
    /** Emphasis and links one inside another; deeper marks stay text. */
    static final int INLINE_NESTING = 32;
    /** Runs of emphasis marks in one block; further ones stay text. */
    static final int MARKS = 2_000;
    /** Typed blocks in one file. */
    static final int BLOCKS = 300;
    /** References in running text of one file. */
    static final int REFERENCES = 2_000;
    /** Findings of the notation that are told one by one. */
    static final int FINDINGS = 200;
    /** Fields in one block or in the front matter. */
    static final int FIELDS = 500;
    /** UTF-16 units in the value of one field. */
    static final int VALUE = 20_000;
    /** Cells in one table, those of the head included. */
    static final int CELLS = 5_000;
    /** UTF-16 units between the braces of a reference; a longer one is taken for a brace that was not closed. */
    static final int REFERENCE = 300;

    private Limits() {
    }
}
