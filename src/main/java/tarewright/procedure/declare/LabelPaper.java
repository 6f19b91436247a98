package tarewright.procedure.declare;

/**
 * Where the labels lie on a page of label paper: all of one size, without gaps, with the same margin at opposite edges.
 *
 * @param rows 1 to {@value #MOST_ROWS}
 * @param columns 1 to {@value #MOST_COLUMNS}
 * @param marginTop in millimetres, also at the foot; at most {@value #WIDEST}
 * @param marginLeft in millimetres, also at the right; at most {@value #WIDEST}
 */
public record LabelPaper(int rows, int columns, double marginTop, double marginLeft) {
    public static final int MOST_ROWS = 20;
    public static final int MOST_COLUMNS = 6;
    public static final double WIDEST = 60;
    /** Where nothing is said: eight fields, large enough for a concentrated acid in readable print. */
    public static final LabelPaper USUAL = new LabelPaper(4, 2, 13, 6);

    public LabelPaper {
        if (rows < 1 || rows > MOST_ROWS || columns < 1 || columns > MOST_COLUMNS || !(marginTop >= 0 && marginTop <= WIDEST)
                || !(marginLeft >= 0 && marginLeft <= WIDEST)) {
            throw new IllegalArgumentException(rows + " rows, " + columns + " columns, margins " + marginTop + " and " + marginLeft + " mm");
        }
    }
}
