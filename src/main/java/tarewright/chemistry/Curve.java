package tarewright.chemistry;

import java.util.List;

/**
 * A smooth curve through the rows of a table, without a hump between two rows that the table does not have: a piecewise cubic
 * whose slopes are weighted harmonic means of the neighbouring secants (Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5
 * (1984) 300). It meets every row, rises where the rows rise and falls where they fall.
 *
 * @param rows at least one, x strictly rising
 */
public record Curve(List<Row> rows) {
    public Curve {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("no rows");
        }
        for (int i = 1; i < rows.size(); i++) {
            if (!(rows.get(i).x() > rows.get(i - 1).x())) {
                throw new IllegalArgumentException("rows do not rise at " + rows.get(i).x());
            }
        }
    }

    /**
     * A row of the table.
     *
     * @param x what is asked for
     * @param y what is answered
     * @param provenance where it comes from
     */
    public record Row(double x, double y, Provenance provenance) {
    }

    public double first() {
        return rows.get(0).x();
    }

    public double last() {
        return rows.get(rows.size() - 1).x();
    }

    public boolean holds(double x) {
        return x >= first() && x <= last();
    }

    /** The provenance of the rows on both sides of a place within {@link #holds}. */
    public Provenance provenance(double x) {
        int right = rightOf(x);
        Row row = rows.get(right);
        return row.x() == x || right == 0 ? row.provenance() : rows.get(right - 1).provenance().and(row.provenance());
    }

    /** The value at a place within {@link #holds}. */
    public double at(double x) {
        int right = rightOf(x);
        Row end = rows.get(right);
        if (right == 0 || end.x() == x) {
            return end.y();
        }
        Row start = rows.get(right - 1);
        double width = end.x() - start.x();
        double t = (x - start.x()) / width;
        double u = 1 - t;
        return start.y() * (1 + 2 * t) * u * u + end.y() * t * t * (1 + 2 * u)
                + width * t * u * (u * slope(right - 1) - t * slope(right));
    }

    private int rightOf(double x) {
        int right = 0;
        while (right < rows.size() - 1 && rows.get(right).x() < x) {
            right++;
        }
        return right;
    }

    private double secant(int left) {
        return (rows.get(left + 1).y() - rows.get(left).y()) / (rows.get(left + 1).x() - rows.get(left).x());
    }

    private double slope(int at) {
        int lastRow = rows.size() - 1;
        if (at == 0) {
            return secant(0);
        }
        if (at == lastRow) {
            return secant(lastRow - 1);
        }
        double before = secant(at - 1);
        double after = secant(at);
        if (before * after <= 0) {
            return 0;
        }
        double left = rows.get(at).x() - rows.get(at - 1).x();
        double right = rows.get(at + 1).x() - rows.get(at).x();
        return 3 * (left + right) / ((2 * right + left) / before + (right + 2 * left) / after);
    }
}
