package tarewright.procedure.declare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.finding.Finding;
import tarewright.procedure.syntax.Fields.Piece;

/**
 * Reads a {@code labels} field: {@code 4 rows; 2 columns; margins 13 mm and 6 mm}. Bare numbers are rows, then columns; the first margin is
 * that at top and foot, the second that at left and right; one alone is both.
 */
public final class LabelPaperReader {
    private static final Pattern COUNT = Pattern.compile("([0-9]{1,3}) ?(rows?|columns?)?");
    private static final Pattern MARGINS = Pattern.compile("(?:margins? )?([0-9]{1,3}(?:\\.[0-9]{1,3})?) ?(mm|cm)(?: and (.*))?");
    private static final double MILLIMETRES_IN_CENTIMETRE = 10;

    private Optional<Integer> rows = Optional.empty();
    private Optional<Integer> columns = Optional.empty();
    private final List<Double> margins = new ArrayList<>();

    private LabelPaperReader() {
    }

    /** The paper; empty where nothing is said, or where something is wrong that a finding tells. */
    public static Optional<LabelPaper> read(List<Piece> pieces, Consumer<Finding> findings) {
        LabelPaperReader reader = new LabelPaperReader();
        for (Piece piece : pieces) {
            if (!reader.took(piece.text().strip().toLowerCase(java.util.Locale.ROOT))) {
                findings.accept(new DeclareFinding.NotLabelPaper(piece.text(), LabelPaper.MOST_ROWS, LabelPaper.MOST_COLUMNS,
                        (int) LabelPaper.WIDEST, piece.span()));
                return Optional.empty();
            }
        }
        return pieces.isEmpty() ? Optional.empty() : Optional.of(reader.paper());
    }

    private LabelPaper paper() {
        LabelPaper usual = LabelPaper.USUAL;
        double top = margins.isEmpty() ? usual.marginTop() : margins.get(0);
        double left = margins.isEmpty() ? usual.marginLeft() : margins.get(margins.size() - 1);
        return new LabelPaper(rows.orElse(usual.rows()), columns.orElse(usual.columns()), top, left);
    }

    private boolean took(String text) {
        Matcher count = COUNT.matcher(text);
        if (count.matches()) {
            return took(Integer.parseInt(count.group(1)), Optional.ofNullable(count.group(2)));
        }
        Matcher margin = MARGINS.matcher(text);
        if (!margin.matches() || margins.size() > 1) {
            return false;
        }
        double width = Double.parseDouble(margin.group(1)) * (margin.group(2).equals("cm") ? MILLIMETRES_IN_CENTIMETRE : 1);
        margins.add(width);
        return width <= LabelPaper.WIDEST && (margin.group(3) == null || took(margin.group(3)));
    }

    private boolean took(int number, Optional<String> word) {
        boolean isRows = word.map(w -> w.startsWith("row")).orElse(rows.isEmpty());
        boolean taken = isRows ? rows.isPresent() : columns.isPresent();
        if (isRows) {
            rows = Optional.of(number);
        } else {
            columns = Optional.of(number);
        }
        return !taken && number >= 1 && number <= (isRows ? LabelPaper.MOST_ROWS : LabelPaper.MOST_COLUMNS);
    }
}
