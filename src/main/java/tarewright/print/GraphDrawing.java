package tarewright.print;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tarewright.document.Piece;

/**
 * Ruled axes as a vector drawing in black and grey. The numbers along them are text of the page, not of the drawing, so
 * that they are read out and scale with the print.
 */
final class GraphDrawing {
    private static final int WIDTH = 110;
    private static final int HEIGHT = 70;
    /** Room around, so that no stroke is cut. */
    private static final int EDGE = 1;

    private final Piece.Graph graph;
    private final StringBuilder shapes = new StringBuilder();

    GraphDrawing(Piece.Graph graph) {
        this.graph = graph;
    }

    /** What a template needs beside the names and the numbers: all lengths with their unit. */
    Map<String, Object> facts(Pictures pictures) {
        List<String> up = new ArrayList<>(graph.y().numbers());
        Collections.reverse(up);
        double across = (double) WIDTH / (graph.x().numbers().size() - 1);
        double high = (double) HEIGHT / (up.size() - 1);
        return Map.of("picture", pictures.drawing(drawing()),
                "rows", up, "rowHeight", mm(high), "above", mm(high / 2 - EDGE), "columnWidth", mm(across),
                "columnsWidth", mm(WIDTH + across), "before", mm(-across / 2 + EDGE));
    }

    /** The ruling, and what the key draws on it; made once. */
    Piece.Drawing drawing() {
        return new Piece.Drawing(svg(), graph.spoken(), WIDTH + 2 * EDGE, HEIGHT + 2 * EDGE);
    }

    private static String mm(double length) {
        return String.format(Locale.ROOT, "%.2fmm", length);
    }

    private String svg() {
        rule(graph.x().numbers().size() - 1, graph.x().parts(), true);
        rule(graph.y().numbers().size() - 1, graph.y().parts(), false);
        line(0, 0, 0, HEIGHT, "#000000", 0.5);
        line(0, HEIGHT, WIDTH, HEIGHT, "#000000", 0.5);
        for (int i = 1; i < graph.line().size(); i++) {
            Piece.Spot a = graph.line().get(i - 1);
            Piece.Spot b = graph.line().get(i);
            line(a.x() * WIDTH, (1 - a.y()) * HEIGHT, b.x() * WIDTH, (1 - b.y()) * HEIGHT, "#000000", 0.6);
        }
        for (Piece.Spot spot : graph.points()) {
            double x = spot.x() * WIDTH;
            double y = (1 - spot.y()) * HEIGHT;
            line(x - 1.4, y - 1.4, x + 1.4, y + 1.4, "#000000", 0.5);
            line(x - 1.4, y + 1.4, x + 1.4, y - 1.4, "#000000", 0.5);
        }
        return String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"%s %s %s %s\">", -EDGE, -EDGE,
                WIDTH + 2 * EDGE,
                HEIGHT + 2 * EDGE) + shapes + "</svg>";
    }

    private void rule(int distances, int parts, boolean upright) {
        int lines = distances * parts;
        for (int i = 0; i <= lines; i++) {
            boolean numbered = i % parts == 0;
            double at = (double) (upright ? WIDTH : HEIGHT) * i / lines;
            line(upright ? at : 0, upright ? 0 : at, upright ? at : WIDTH, upright ? HEIGHT : at, numbered ? "#777777"
                    : "#c4c4c4",
                    numbered ? 0.25 : 0.12);
        }
    }

    private void line(double x1, double y1, double x2, double y2, String colour, double width) {
        shapes.append(String.format(Locale.ROOT,
                "<line x1=\"%.2f\" y1=\"%.2f\" x2=\"%.2f\" y2=\"%.2f\" stroke=\"%s\" stroke-width=\"%.2f\"/>",
                x1, y1, x2, y2, colour, width));
    }
}
