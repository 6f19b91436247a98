package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The safety panel of every procedure of the library is readable: its first page from two metres, the rest in 12 pt. From two metres: letters a 300th
 * of the distance high (ANSI Z535.2, favourable light, from memory), signs a 100th (ISO 3864-1, distance factor 100, from memory).
 */
class PanelSizesTest {
    private static final double MILLIMETRE = 72 / 25.4;
    private static final double DISTANCE = 2000 * MILLIMETRE;
    /** Height of a capital in Source Sans 3, in parts of the size (the face's own figure, 660 of 1000). */
    private static final double CAPITAL = 0.66;
    private static final double SMALLEST = 12;
    /** Subscripts and superscripts are 70 % of what they stand beside. */
    private static final double BESIDE = 0.7;

    @TempDir
    private Path folder;

    private List<Path> panels(String paper) throws IOException {
        StringWriter err = new StringWriter();
        int status = Main.run(new String[] {"print", "--only", "safety", "--paper", paper, "--out", folder.toString(), "procedures"},
                new PrintWriter(new StringWriter()), new PrintWriter(err));
        assertEquals(0, status, err.toString());
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith("-safety.pdf")).sorted().toList();
        }
    }

    @Test
    void theFirstPageOfEveryPanelIsReadFromTwoMetres() throws IOException {
        for (String paper : List.of("A4", "Letter")) {
            for (Path panel : panels(paper)) {
                try (PDDocument document = Loader.loadPDF(panel.toFile())) {
                    List<TextPosition> letters = letters(document, 1);
                    String far = said(letters.stream().filter(l -> l.getYScale() * CAPITAL >= DISTANCE / 300).toList());
                    assertTrue(far.contains("DANGER") || far.contains("WARNING") || far.contains("Nohazardclass") || far.contains("Sinclasedepeligro") || far.contains("HAZARDSNOTKNOWN")
                            || far.contains("PELIGROSNOCONOCIDOS"), panel + far);
                    assertTrue(far.contains("goggles") || far.contains("Eyeprotection") || far.contains("Gafas"), panel + far);
                    assertTrue(far.contains("Washhands") && far.contains("Nofood") || far.contains("Lavarselasmanos") && far.contains("Nicomer"), panel + " leaves equipment to the next page: " + far);
                    List<Rectangle2D> drawn = new Drawings(document.getPage(0)).found();
                    assertTrue(drawn.size() >= 4, panel + " " + drawn);
                    drawn.forEach(d -> assertTrue(Math.min(d.getWidth(), d.getHeight()) >= DISTANCE / 100 * 0.9,
                            panel + ": a drawing of " + d.getWidth() / MILLIMETRE + " by " + d.getHeight() / MILLIMETRE + " mm"));
                }
            }
        }
    }

    @Test
    void everythingButTheFooterIsTwelvePointOrMore() throws IOException {
        for (String paper : List.of("A4", "Letter")) {
            for (Path panel : panels(paper)) {
                assertFalse(sizes(panel.toFile()).isEmpty());
                sizes(panel.toFile()).forEach(s -> assertTrue(s.size >= SMALLEST - 0.05, panel + ": " + s.said + " in " + s.size + " pt"));
            }
        }
    }

    private record Sized(double size, String said) {
    }

    /** Runs of letters of a size; small digits and signs beside the line taken at the size of the line that they stand in. */
    private static List<Sized> sizes(File file) throws IOException {
        List<Sized> sizes = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                double foot = document.getPage(page - 1).getMediaBox().getHeight() - 19 * MILLIMETRE;
                for (TextPosition letter : letters(document, page)) {
                    boolean beside = letter.getUnicode().matches("[0-9+−⁺⁻x·]") && letter.getYScale() >= SMALLEST * BESIDE;
                    if (letter.getYDirAdj() < foot) {
                        sizes.add(new Sized(beside ? Math.max(letter.getYScale(), letter.getYScale() / BESIDE) : letter.getYScale(),
                                letter.getUnicode()));
                    }
                }
            }
        }
        return sizes;
    }

    private static String said(List<TextPosition> letters) {
        StringBuilder all = new StringBuilder();
        letters.forEach(l -> all.append(l.getUnicode().strip()));
        return all.toString();
    }

    private static List<TextPosition> letters(PDDocument document, int page) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> at) {
                letters.addAll(at);
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return letters;
    }

    /** The bounds of what is drawn on a page, one for each picture that is marked as a figure. */
    private static final class Drawings extends PDFGraphicsStreamEngine {
        private final List<Rectangle2D> found = new ArrayList<>();
        private Rectangle2D current;
        private Point2D at = new Point2D.Double();

        Drawings(PDPage page) {
            super(page);
        }

        List<Rectangle2D> found() throws IOException {
            processPage(getPage());
            return found;
        }

        @Override
        public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
            current = tag.getName().equals("Figure") ? new Rectangle2D.Double(0, 0, -1, -1) : null;
            super.beginMarkedContentSequence(tag, properties);
        }

        @Override
        public void endMarkedContentSequence() {
            if (current != null && current.getWidth() > 0) {
                found.add(current);
            }
            current = null;
            super.endMarkedContentSequence();
        }

        private void mark(double x, double y) {
            at = new Point2D.Double(x, y);
            if (current != null && current.getWidth() < 0) {
                current = new Rectangle2D.Double(x, y, 0, 0);
            } else if (current != null) {
                current.add(at);
            }
        }

        @Override
        public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
            Stream.of(a, b, c, d).forEach(p -> mark(p.getX(), p.getY()));
        }

        @Override
        public void moveTo(float x, float y) {
            mark(x, y);
        }

        @Override
        public void lineTo(float x, float y) {
            mark(x, y);
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            mark(x3, y3);
        }

        @Override
        public Point2D getCurrentPoint() {
            return at;
        }

        @Override
        public void drawImage(PDImage image) {
            throw new AssertionError("a pixel picture on the panel");
        }

        @Override
        public void clip(int windingRule) {
        }

        @Override
        public void closePath() {
        }

        @Override
        public void endPath() {
        }

        @Override
        public void strokePath() {
        }

        @Override
        public void fillPath(int windingRule) {
        }

        @Override
        public void fillAndStrokePath(int windingRule) {
        }

        @Override
        public void shadingFill(COSName name) {
        }
    }
}
