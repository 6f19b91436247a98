package tarewright.print;

import java.awt.geom.AffineTransform;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Element;

/**
 * What an SVG file shows and how large: its {@code viewBox}, {@code width} and {@code height}.
 *
 * @param x left edge in user units
 * @param y upper edge in user units
 * @param width in user units
 * @param height in user units
 * @param size as printed
 */
record SvgBox(double x, double y, double width, double height, PrintedSize size) {
    private static final double LEAST = 1e-6;

    /** Empty where it has no size, or none that makes sense. */
    static Optional<SvgBox> of(Element root) {
        Optional<List<Double>> view = SvgLengths.numbers(root.getAttribute("viewBox")).filter(v -> v.size() == 4 && v.get(2) > LEAST && v.get(3) > LEAST);
        Optional<Double> width = length(root.getAttribute("width"));
        Optional<Double> height = length(root.getAttribute("height"));
        if (view.isEmpty()) {
            return root.getAttribute("viewBox").isBlank() && width.isPresent() && height.isPresent()
                    ? Optional.of(new SvgBox(0, 0, width.get(), height.get(), size(width.get(), height.get()))) : Optional.empty();
        }
        List<Double> v = view.get();
        double wide = width.or(() -> height.map(h -> h * v.get(2) / v.get(3))).orElse(v.get(2));
        double high = height.or(() -> width.map(w -> w * v.get(3) / v.get(2))).orElse(v.get(3));
        return Optional.of(new SvgBox(v.get(0), v.get(1), v.get(2), v.get(3), size(wide, high)));
    }

    /** A percentage says nothing on a page. */
    private static Optional<Double> length(String text) {
        return text.contains("%") ? Optional.empty() : SvgLengths.length(text, 16, 100).filter(l -> l > LEAST);
    }

    private static PrintedSize size(double width, double height) {
        return PrintedSize.of(width * SvgLengths.MILLIMETRES, height * SvgLengths.MILLIMETRES);
    }

    /** How long a user unit is printed. */
    double millimetres() {
        return Math.min(size.width() / width, size.height() / height);
    }

    /** User units to a box from 0, 0: as large as fits, in its middle. */
    AffineTransform fitted(double toWidth, double toHeight) {
        double by = Math.min(toWidth / width, toHeight / height);
        return new AffineTransform(by, 0, 0, by, (toWidth - by * width) / 2 - by * x, (toHeight - by * height) / 2 - by * y);
    }

    /** What {@code 100%} is of a length that goes neither along nor up (SVG 1.1, 7.10). */
    double diagonal() {
        return Math.hypot(width, height) / Math.sqrt(2);
    }
}
