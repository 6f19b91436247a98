package tarewright.print;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.w3c.dom.Element;

/** The basic shapes of SVG 1.1 (W3C, 2011, chapter 9) and its paths, from their attributes. */
final class SvgShapes {
    private final SvgBox box;
    private final double em;
    private final Consumer<String> notPrinted;

    SvgShapes(SvgBox box, double em, Consumer<String> notPrinted) {
        this.box = box;
        this.em = em;
        this.notPrinted = notPrinted;
    }

    /** Empty where nothing is seen of it, or where it cannot be read, which is noted. */
    Optional<Shape> of(Element e) {
        return switch (e.getLocalName()) {
            case "path" -> path(e);
            case "rect" -> rectangle(e);
            case "circle" -> ellipse(e, along(e, "r", box.diagonal()), along(e, "r", box.diagonal()));
            case "ellipse" -> ellipse(e, x(e, "rx"), y(e, "ry"));
            case "line" -> Optional.of(new Line2D.Double(x(e, "x1"), y(e, "y1"), x(e, "x2"), y(e, "y2")));
            default -> corners(e);
        };
    }

    private Optional<Shape> path(Element e) {
        Optional<Shape> path = AuthorSvg.pathOf(e.getAttribute("d"));
        if (path.isEmpty()) {
            notPrinted.accept("d: " + e.getAttribute("d"));
        }
        return path;
    }

    private Optional<Shape> rectangle(Element e) {
        double width = x(e, "width");
        double height = y(e, "height");
        if (width <= 0 || height <= 0) {
            return Optional.empty();
        }
        double rx = e.hasAttribute("rx") ? x(e, "rx") : y(e, "ry");
        double ry = e.hasAttribute("ry") ? y(e, "ry") : rx;
        return Optional.of(rx > 0 && ry > 0
                ? new RoundRectangle2D.Double(x(e, "x"), y(e, "y"), width, height, 2 * Math.min(rx, width / 2), 2 * Math.min(ry, height / 2))
                : new Rectangle2D.Double(x(e, "x"), y(e, "y"), width, height));
    }

    private Optional<Shape> ellipse(Element e, double rx, double ry) {
        return rx <= 0 || ry <= 0 ? Optional.empty() : Optional.of(new Ellipse2D.Double(x(e, "cx") - rx, y(e, "cy") - ry, 2 * rx, 2 * ry));
    }

    private Optional<Shape> corners(Element e) {
        Optional<List<Double>> points = SvgLengths.numbers(e.getAttribute("points"));
        if (points.isEmpty() || points.get().size() % 2 != 0) {
            notPrinted.accept("points: " + e.getAttribute("points"));
            return Optional.empty();
        }
        List<Double> p = points.get();
        Path2D line = new Path2D.Double();
        for (int i = 0; i < p.size(); i += 2) {
            if (i == 0) {
                line.moveTo(p.get(0), p.get(1));
            } else {
                line.lineTo(p.get(i), p.get(i + 1));
            }
        }
        if (e.getLocalName().equals("polygon") && !p.isEmpty()) {
            line.closePath();
        }
        return Optional.of(line);
    }

    private double x(Element e, String name) {
        return along(e, name, box.width());
    }

    private double y(Element e, String name) {
        return along(e, name, box.height());
    }

    /** 0 where it is not given. */
    private double along(Element e, String name, double whole) {
        String given = e.getAttribute(name);
        if (given.isBlank() || given.strip().equals("auto")) {
            return 0;
        }
        Optional<Double> length = SvgLengths.length(given, em, whole);
        if (length.isEmpty()) {
            notPrinted.accept(name + ": " + given);
        }
        return length.orElse(0.0);
    }
}
