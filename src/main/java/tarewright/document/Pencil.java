package tarewright.document;

import java.util.List;
import java.util.Locale;

/**
 * Shapes of a drawing in black and grey, in millimetres from its top left corner. Numbers are strokes, since text in a
 * drawing is neither read out nor allowed; what they say stands in the drawing's alternative.
 */
final class Pencil {
    static final String BLACK = "#000000";
    static final String GREY = "#9a9a9a";
    static final String WHITE = "#ffffff";
    private static final double DIGIT_WIDTH = 1.1;
    private static final double DIGIT_HEIGHT = 2.2;
    private static final double DIGIT_STEP = 1.8;
    /** Of each digit, the strokes that make it: top, upper right, lower right, bottom, lower left, upper left, middle. */
    private static final int[] STROKES = {0b0111111, 0b0000110, 0b1011011, 0b1001111, 0b1100110, 0b1101101, 0b1111101,
            0b0000111, 0b1111111, 0b1101111};
    private static final double[][] ENDS = {{0, 0, 1, 0}, {1, 0, 1, 0.5}, {1, 0.5, 1, 1}, {0, 1, 1, 1}, {0, 0.5, 0, 1},
        {0, 0, 0, 0.5}, {0, 0.5, 1, 0.5}};

    private final int width;
    private final int height;
    private final StringBuilder shapes = new StringBuilder();

    /** In whole millimetres: the layout engine takes no other view box. */
    Pencil(int width, int height) {
        this.width = width;
        this.height = height;
    }

    Pencil line(double x1, double y1, double x2, double y2, double thick) {
        return add("<line x1=\"%.2f\" y1=\"%.2f\" x2=\"%.2f\" y2=\"%.2f\" stroke=\"" + BLACK + "\" stroke-width=\"%.2f\"/>",
                x1, y1, x2, y2, thick);
    }

    /** A box with an outline. */
    Pencil box(double x, double y, double wide, double high, String fill) {
        return add("<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" fill=\"" + fill + "\" stroke=\"" + BLACK
                + "\" stroke-width=\"0.35\"/>", x, y,
                wide, high);
    }

    /** A closed shape. @param points its corners @param fill a colour or {@code none} @param thick of its outline, 0 for none */
    Pencil shape(List<double[]> points, String fill, double thick) {
        shapes.append("<polygon points=\"");
        points.forEach(p -> add("%.2f,%.2f ", p[0], p[1]));
        return add("\" fill=\"" + fill + "\" stroke=\"" + (thick > 0 ? BLACK : "none") + "\" stroke-width=\"%.2f\"/>", thick);
    }

    /** A whole number, its middle at a place. @param number 0 or more */
    Pencil number(int number, double middle, double top) {
        String digits = Integer.toString(number);
        double x = middle - (digits.length() * DIGIT_STEP - (DIGIT_STEP - DIGIT_WIDTH)) / 2;
        for (char digit : digits.toCharArray()) {
            for (int stroke = 0; stroke < ENDS.length; stroke++) {
                if ((STROKES[digit - '0'] >> stroke & 1) == 1) {
                    double[] e = ENDS[stroke];
                    line(x + e[0] * DIGIT_WIDTH, top + e[1] * DIGIT_HEIGHT, x + e[2] * DIGIT_WIDTH, top + e[3] * DIGIT_HEIGHT,
                            0.28);
                }
            }
            x += DIGIT_STEP;
        }
        return this;
    }

    /** @param spoken what the drawing shows, in words */
    Piece.Drawing done(String spoken) {
        String svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + width + " " + height + "\">" + shapes + "</svg>";
        return new Piece.Drawing(svg, spoken, width, height);
    }

    private Pencil add(String shape, Object... numbers) {
        shapes.append(String.format(Locale.ROOT, shape, numbers));
        return this;
    }
}
