package tarewright.print;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import tarewright.document.Piece;
import tarewright.document.Sheet;

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
                "marginLeft", millimetres(grid.marginLeft()), "print", print(labels, width, height).name().toLowerCase(Locale.ROOT));
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

    /** The largest print in which every label is thought to fit, one for a whole sheet. */
    private static LabelPrint print(Piece.Labels labels, double width, double height) {
        return Stream.of(LabelPrint.values()).filter(p -> labels.labels().stream().allMatch(l -> p.height(l, width) <= height))
                .findFirst().orElse(LabelPrint.SMALL);
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
