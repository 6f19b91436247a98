package tarewright.print;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.AWTTransformProducer;
import org.apache.batik.parser.ParseException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import tarewright.procedure.syntax.PictureFile;

/**
 * An SVG file of the author's as a drawing that {@link SafeSvg} takes: basic shapes, paths and simple text in flat colours, written anew. Titles,
 * descriptions, metadata, comments and what other programs put in for themselves are left behind; what would be seen and cannot be printed is refused by name.
 */
final class AuthorSvg {
    static final String NAMESPACE = "http://www.w3.org/2000/svg";
    static final int MOST_SHAPES = 10_000;
    private static final int DEEPEST = 60;
    private static final int MOST_TOLD = 8;
    /** Dashes of all lines; a dash shorter than can be seen would make a line endless work. */
    private static final double MOST_DASHES = 100_000;
    /** View boxes of ours are in whole tenths of a millimetre: the layout engine takes none with a fraction. */
    private static final int PER_MILLIMETRE = 10;
    /** ISO 3098-1 (2015) has no lower capitals than 1.8 mm; ours are 0.66 of the size. */
    private static final double LOWEST_CAPITALS = 1.8;
    private static final double CAPITAL = 0.66;
    private static final Set<String> SHAPES = Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon");
    /** Never seen by themselves. */
    private static final Set<String> UNSEEN = Set.of("title", "desc", "metadata", "defs", "symbol", "linearGradient", "radialGradient", "pattern", "clipPath", "mask",
            "marker", "filter", "view", "font", "font-face", "color-profile");

    private final String file;
    private final Outlines outlines;
    private final Set<String> notPrinted = new LinkedHashSet<>();
    private final Set<Integer> missing = new TreeSet<>();
    private final StringBuilder out = new StringBuilder();
    private SvgBox box;
    private int shapes;
    private double dashes;
    private double lowestCapitals = Double.MAX_VALUE;

    private AuthorSvg(String file, Outlines outlines) {
        this.file = file;
        this.outlines = outlines;
    }

    /**
     * What was read.
     *
     * @param lowestCapitals the height of the lowest capital letters as printed, in millimetres, where that is too low
     */
    record Read(PictureFile.Shapes shapes, Optional<Double> lowestCapitals) {
    }

    static Read read(String file, byte[] bytes, String sha256, Outlines outlines) throws Refused {
        return new AuthorSvg(file, outlines).read(bytes, sha256);
    }

    private Read read(byte[] bytes, String sha256) throws Refused {
        Element root = parsed(bytes).getDocumentElement();
        if (!"svg".equals(root.getLocalName()) || !NAMESPACE.equals(root.getNamespaceURI())) {
            throw damaged("<svg xmlns=\"" + NAMESPACE + "\">");
        }
        box = SvgBox.of(root).orElseThrow(() -> damaged("viewBox"));
        SvgStyle style = SvgStyle.initial(this::note).of(root);
        events(root);
        if (style.shown()) {
            children(root, style, new AffineTransform(), 0);
        }
        if (!notPrinted.isEmpty()) {
            throw new Refused(place -> new PictureFinding.PictureHolds(file, notPrinted.stream().limit(MOST_TOLD).toList(), place));
        }
        if (!missing.isEmpty()) {
            throw new Refused(place -> new PictureFinding.PictureLetters(file, SvgText.shown(missing), place));
        }
        if (shapes > MOST_SHAPES) {
            throw new Refused(place -> new PictureFinding.PictureTooLarge(file, shapes, MOST_SHAPES, "shapes", place));
        }
        return new Read(new PictureFile.Shapes(whole(), box.size().width(), box.size().height(), sha256),
                Optional.of(lowestCapitals).filter(c -> c < LOWEST_CAPITALS));
    }

    private String whole() {
        long width = Math.max(1, Math.round(box.size().width() * PER_MILLIMETRE));
        long height = Math.max(1, Math.round(box.size().height() * PER_MILLIMETRE));
        return "<svg xmlns=\"" + NAMESPACE + "\" viewBox=\"0 0 " + width + " " + height + "\"><g transform=\"" + matrix(box.fitted(width, height)) + "\">" + out + "</g></svg>";
    }

    private Document parsed(byte[] bytes) throws Refused {
        try {
            return new SafeXml().read(bytes);
        } catch (SAXParseException e) {
            if (new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1).contains("<!DOCTYPE")) {
                throw new Refused(place -> new PictureFinding.PictureHolds(file, List.of("<!DOCTYPE"), place));
            }
            throw damaged(e.getLineNumber() > 0 ? "line " + e.getLineNumber() : "");
        } catch (SAXException e) {
            throw damaged("");
        }
    }

    private Refused damaged(String where) {
        return new Refused(place -> new PictureFinding.PictureDamaged(file, "SVG", Optional.of(where).filter(w -> !w.isEmpty()), place));
    }

    /** What is noted may be as long as the author's file. */
    private void note(String what) {
        String one = SafeXml.clean(what).replaceAll("\\s+", " ").strip();
        notPrinted.add(one.length() > 60 ? one.substring(0, 59) + "…" : one);
    }

    private void children(Element parent, SvgStyle style, AffineTransform to, int depth) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element && NAMESPACE.equals(element.getNamespaceURI())) {
                element(element, style, to, depth);
            }
        }
    }

    private void element(Element element, SvgStyle outer, AffineTransform to, int depth) {
        String name = element.getLocalName();
        if (UNSEEN.contains(name) || shapes > MOST_SHAPES) {
            return;
        }
        boolean group = name.equals("g");
        if (!group && !name.equals("text") && !SHAPES.contains(name)) {
            note("<" + name + ">");
            return;
        }
        if (depth > DEEPEST) {
            note("<g> in <g>, " + DEEPEST + " deep");
            return;
        }
        events(element);
        SvgStyle style = outer.of(element);
        Optional<AffineTransform> own = transform(element);
        if (!style.shown() || own.isEmpty()) {
            return;
        }
        AffineTransform all = new AffineTransform(to);
        all.concatenate(own.get());
        boolean moved = !own.get().isIdentity();
        out.append(moved ? "<g transform=\"" + matrix(own.get()) + "\">" : "");
        if (group) {
            children(element, style, all, depth + 1);
        } else if (name.equals("text")) {
            text(element, style, all);
        } else if (style.visible()) {
            shape(element, style, all);
        }
        out.append(moved ? "</g>" : "");
    }

    private void events(Element element) {
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            String name = element.getAttributes().item(i).getNodeName();
            if (name.startsWith("on")) {
                note(name);
            }
        }
    }

    /** Empty where it makes everything vanish, or cannot be read (which is noted). */
    private Optional<AffineTransform> transform(Element element) {
        String given = element.getAttribute("transform").strip();
        if (given.isEmpty() || given.equals("none")) {
            return Optional.of(new AffineTransform());
        }
        try {
            AffineTransform read = AWTTransformProducer.createAffineTransform(given);
            double[] numbers = new double[6];
            read.getMatrix(numbers);
            if (!java.util.Arrays.stream(numbers).allMatch(SvgLengths::near)) {
                note("transform: " + given);
                return Optional.empty();
            }
            return Optional.of(read).filter(t -> Math.abs(t.getDeterminant()) > 1e-12);
        } catch (ParseException e) {
            note("transform: " + given);
            return Optional.empty();
        }
    }

    private void text(Element element, SvgStyle style, AffineTransform to) {
        SvgText text = new SvgText(outlines, this::note);
        text.draw(element, style, (outline, each) -> path(outline, each));
        missing.addAll(text.missing());
        if (text.smallest() < Double.MAX_VALUE) {
            lowestCapitals = Math.min(lowestCapitals, text.smallest() * CAPITAL * Math.sqrt(Math.abs(to.getDeterminant())) * box.millimetres());
        }
    }

    private void shape(Element element, SvgStyle style, AffineTransform to) {
        Optional<Shape> shape = new SvgShapes(box, style.size(), this::note).of(element);
        if (shape.isEmpty()) {
            return;
        }
        if (style.dash() > 0) {
            // A pattern too fine to see counts for its true length all the same: that is how often it would be painted.
            dashes += length(shape.get()) / style.dash();
            if (dashes > MOST_DASHES) {
                note("stroke-dasharray");
            }
        }
        path(shape.get(), style);
    }

    private void path(Shape shape, SvgStyle style) {
        String data = data(shape);
        shapes++;
        if (!data.isEmpty()) {
            out.append("<path d=\"").append(data).append('"').append(style.attributes()).append("/>");
        }
    }

    private static String matrix(AffineTransform t) {
        double[] m = new double[6];
        t.getMatrix(m);
        List<String> numbers = new ArrayList<>();
        for (double each : m) {
            numbers.add(SvgStyle.number(each));
        }
        return "matrix(" + String.join(" ", numbers) + ")";
    }

    /** Of a curve, the length of the lines between its points, which is never less. */
    private static double length(Shape shape) {
        double sum = 0;
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            int kind = i.currentSegment(p);
            int points = kind == PathIterator.SEG_CLOSE ? 0 : kind == PathIterator.SEG_CUBICTO ? 3 : kind == PathIterator.SEG_QUADTO ? 2 : 1;
            for (int n = 0; n < points; n++) {
                sum += kind == PathIterator.SEG_MOVETO ? 0 : Math.hypot(p[2 * n] - x, p[2 * n + 1] - y);
                x = p[2 * n];
                y = p[2 * n + 1];
            }
        }
        return sum;
    }

    private String data(Shape shape) {
        StringBuilder data = new StringBuilder();
        double[] p = new double[6];
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            int kind = i.currentSegment(p);
            data.append("MLQCZ".charAt(kind));
            int numbers = new int[] {2, 2, 4, 6, 0}[kind];
            for (int n = 0; n < numbers; n++) {
                if (!SvgLengths.near(p[n])) {
                    note("d: " + p[n]);
                    return "";
                }
                data.append(n == 0 ? "" : " ").append(SvgStyle.number(p[n]));
            }
        }
        return data.toString();
    }

    /** A path, or empty where its data cannot be read. */
    static Optional<Shape> pathOf(String data) {
        try {
            return Optional.of(AWTPathProducer.createShape(new StringReader(data), Path2D.WIND_NON_ZERO));
        } catch (ParseException | java.io.IOException e) {
            return Optional.empty();
        }
    }
}
