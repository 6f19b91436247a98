package tarewright.print;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import tarewright.document.Piece;
import tarewright.document.Sheet;
import tarewright.document.Text;

/** The measures of a page of labels, as text for a style sheet. */
final class LabelPage {
    /** So much less for each row that rounding in the layout never sends the last one to another page. */
    private static final double SLACK = 0.15;

    /** The engine lays out in twentieths of a CSS pixel, 96 of which make an inch. */
    private static final double MILLIMETRES_IN_DOT = 25.4 / 96 / 20;

    private LabelPage() {
    }

    /** Width and height of a label and the page's margins in millimetres, and how small its print has to be. */
    static Map<String, Object> facts(Piece.Labels labels, Sheet.Paper paper) {
        Piece.LabelGrid grid = labels.grid();
        double width = (width(paper) - 2 * grid.marginLeft()) / grid.columns();
        double height = (height(paper) - 2 * grid.marginTop()) / grid.rows() - SLACK;
        return Map.of("width", millimetres(width), "height", millimetres(height), "marginTop", millimetres(grid.marginTop()),
                "marginLeft", millimetres(grid.marginLeft()), "print", print(labels, width * height));
    }

    /** The labels row by row; the last row may be short. */
    static List<List<Piece.Label>> rows(Piece.Labels labels) {
        List<List<Piece.Label>> rows = new ArrayList<>();
        for (int from = 0; from < labels.labels().size(); from += labels.grid().columns()) {
            rows.add(labels.labels().subList(from, Math.min(from + labels.grid().columns(), labels.labels().size())));
        }
        return rows;
    }

    /** Whether a row of labels has grown higher than the page says in {@code data-height}, which pushes the others off their places. */
    static boolean spilled(PdfBoxRenderer laidOut) {
        NodeList divisions = laidOut.getDocument().getElementsByTagName("div");
        for (int i = 0; i < divisions.getLength(); i++) {
            Element row = (Element) divisions.item(i);
            if (row.hasAttribute("data-height")) {
                double height = laidOut.getSharedContext().getBoxById(row.getAttribute("id")).getHeight() * MILLIMETRES_IN_DOT;
                if (height > Double.parseDouble(row.getAttribute("data-height")) + SLACK) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Roomy, large, middle or small print, one size for a whole sheet, by the room that the fullest label leaves for a letter.
     * Small is 7 pt: an x-height of 1.2 mm, the least that Regulation (EU) 2024/2865 asks of a label (from memory).
     */
    private static String print(Piece.Labels labels, double area) {
        int fullest = labels.labels().stream().mapToInt(LabelPage::letters).max().orElse(0);
        double room = 0.55 * area / Math.max(1, fullest);
        return room > 16 ? "roomy" : room > 11 ? "large" : room > 7.5 ? "middle" : "small";
    }

    private static int letters(Piece.Label label) {
        List<Text> big = new ArrayList<>(label.name());
        big.addAll(label.detail());
        int small = label.statements().stream().mapToInt(String::length).sum() + label.foot().stream().mapToInt(String::length)
                .sum();
        return 2 * PlainText.bare(big).length() + small + 30 * label.pictograms().size();
    }

    private static double width(Sheet.Paper paper) {
        return paper == Sheet.Paper.LETTER ? 215.9 : 210;
    }

    private static double height(Sheet.Paper paper) {
        return paper == Sheet.Paper.LETTER ? 279.4 : 297;
    }

    private static String millimetres(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
