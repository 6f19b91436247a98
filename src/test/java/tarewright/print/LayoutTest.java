package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.print.Samples.caution;
import static tarewright.print.Samples.chem;
import static tarewright.print.Samples.h;
import static tarewright.print.Samples.p;
import static tarewright.print.Samples.q;
import static tarewright.print.Samples.sub;
import static tarewright.print.Samples.t;
import static tarewright.print.Samples.w;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tarewright.document.Piece;
import tarewright.document.Sheet;
import tarewright.document.Text;

/** Where things stand on the laid-out page. What is asked of it is common practice at the bench, no source, unless said. */
class LayoutTest {
    private static final double MM = 72 / 25.4;
    private static final String FILLER = "Swirl the flask gently until the solid has gone. "
            + "Then warm the mixture and measure the volume of gas at room temperature. ";

    private static final PdfPrinter PRINTER = new PdfPrinter(Templates.packed());

    private Printed print(Sheet.Paper paper, List<Piece> pieces) {
        Printed printed = PRINTER.print(SampleSheets.sheet(Sheet.Kind.HANDOUT, "Handout", paper, pieces));
        assertEquals(List.of(), printed.remarks());
        return printed;
    }

    @ParameterizedTest
    @EnumSource(Sheet.Paper.class)
    @DisplayName("a step stands on one page with its caution, wherever the page ends")
    void stepsStayWhole(Sheet.Paper paper) {
        SplittableRandom random = new SplittableRandom(7);
        List<List<Piece>> steps = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            List<Piece> step = new ArrayList<>();
            if (random.nextInt(3) == 0) {
                step.add(caution("WARNING", 1, "Cautionstart" + i + "x. It burns.", FILLER, "Avoid it."));
            }
            step.add(p(w("Stepstart" + i + "x. " + FILLER.repeat(random.nextInt(4)) + "Stepend" + i + "x.")));
            steps.add(step);
        }
        Printed printed = print(paper, List.of(new Piece.Steps(1, steps)));
        List<String> pages = Pdf.pages(printed);
        assertTrue(pages.size() >= 3, "too short to say anything: " + pages.size());
        for (int i = 0; i < steps.size(); i++) {
            int page = Pdf.pageOf(pages, "Stepstart" + i + "x");
            assertEquals(page, Pdf.pageOf(pages, "Stepend" + i + "x"), "step " + i);
            if (steps.get(i).size() > 1) {
                assertEquals(page, Pdf.pageOf(pages, "Cautionstart" + i + "x"), "the caution of step " + i);
            }
        }
    }

    @Test
    @DisplayName("a step longer than a page is printed whole, over pages")
    void endlessStep() {
        Printed printed = print(Sheet.Paper.A4, List.of(new Piece.Steps(1, List.of(List.of(p(w("Stepstart. " + FILLER.repeat(60)
                + "Stepend.")))))));
        List<String> pages = Pdf.pages(printed);
        assertTrue(Pdf.pageOf(pages, "Stepstart") < Pdf.pageOf(pages, "Stepend"));
    }

    @ParameterizedTest
    @EnumSource(Sheet.Paper.class)
    @DisplayName("a question stands on one page with all of its ruled lines")
    void questionsStayWhole(Sheet.Paper paper) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 1; i <= 24; i++) {
            pieces.add(new Piece.Question(Integer.toString(i), "2 marks", List.of(p(w("Asked" + i + "x? " + FILLER))),
                    List.of(new Piece.RuledLines(1 + i % 5, "space"), p(w("Spaceend" + i + "x"))), List.of()));
        }
        List<String> pages = Pdf.pages(print(paper, pieces));
        assertTrue(pages.size() >= 3);
        for (int i = 1; i <= 24; i++) {
            assertEquals(Pdf.pageOf(pages, "Asked" + i + "x"), Pdf.pageOf(pages, "Spaceend" + i + "x"), "question " + i);
        }
    }

    @Test
    @DisplayName("a heading, and the caption of a table, stand on the page of what they head")
    void headingsKeepWithNext() {
        for (int lines = 33; lines < 41; lines += 2) {
            List<Piece> pieces = new ArrayList<>();
            for (int i = 0; i < lines; i++) {
                pieces.add(p(w("line " + i)));
            }
            pieces.add(h(2, "Headinghere"));
            pieces.add(new Piece.Table(t("Captionhere"), List.of(t("Columnhere")), List.of(List.of(t("Cellhere")),
                    List.of(t("second"))), List.of(false), false,
                    Piece.Use.FILL));
            List<String> pages = Pdf.pages(print(Sheet.Paper.A4, pieces));
            int page = Pdf.pageOf(pages, "Cellhere");
            assertEquals(page, Pdf.pageOf(pages, "Columnhere"), "after " + lines + " lines");
            assertEquals(page, Pdf.pageOf(pages, "Captionhere"), "after " + lines + " lines");
            assertEquals(page, Pdf.pageOf(pages, "Headinghere"), "after " + lines + " lines");
        }
    }

    @Test
    @DisplayName("a long table repeats its head on each page and splits no row")
    void longTable() {
        List<List<List<Text>>> rows = new ArrayList<>();
        for (int i = 0; i < 80; i++) {
            rows.add(List.of(t("Rowstart" + i + "x " + FILLER + "Rowend" + i + "x"), t("1 g")));
        }
        Printed printed = print(Sheet.Paper.A4, List.of(new Piece.Table(t("Long"), List.of(t("Columnhere"), t("amount")), rows,
                List.of(false, true), false, Piece.Use.READ)));
        List<String> pages = Pdf.pages(printed);
        assertTrue(pages.size() >= 3);
        for (String page : pages) {
            assertTrue(page.contains("Columnhere"), page);
        }
        for (int i = 0; i < 80; i++) {
            assertEquals(Pdf.pageOf(pages, "Rowstart" + i + "x"), Pdf.pageOf(pages, "Rowend" + i + "x"));
        }
    }

    @Test
    @DisplayName("the head of a long table never stands alone at the foot of a page, nor the heading before it")
    void tableHeads() {
        List<List<List<Text>>> rows = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            rows.add(List.of(t("Row" + i + "x"), t(FILLER.repeat(3))));
        }
        for (int lines = 24; lines < 40; lines++) {
            List<Piece> pieces = new ArrayList<>();
            for (int i = 0; i < lines; i++) {
                pieces.add(p(w("line " + i)));
            }
            pieces.add(h(2, "Headinghere"));
            pieces.add(new Piece.Table(List.of(), List.of(t("Columnhere"), t("what to do")), rows, List.of(false), false,
                    Piece.Use.READ));
            List<String> pages = Pdf.pages(print(Sheet.Paper.A4, pieces));
            int page = Pdf.pageOf(pages, "Row0x");
            assertEquals(page, Pdf.pageOf(pages, "Columnhere"), "after " + lines + " lines");
            assertEquals(page, Pdf.pageOf(pages, "Headinghere"), "after " + lines + " lines");
        }
    }

    @ParameterizedTest
    @EnumSource(Sheet.Paper.class)
    @DisplayName("a handout is set in 12 points or more, fewer than 75 characters a line, with room for punched holes")
    void readable(Sheet.Paper paper) {
        List<Piece> pieces = new ArrayList<>(SampleSheets.handout(paper).pieces());
        pieces.add(p(w(FILLER.repeat(6))));
        pieces.add(new Piece.Steps(1, List.of(List.of(p(w(FILLER.repeat(3)))))));
        pieces.add(new Piece.Bullets(List.of(List.of(p(w(FILLER.repeat(3)))))));
        Printed printed = print(paper, pieces);
        float foot = (float) ((paper == Sheet.Paper.A4 ? 297 : 279.4) * MM - 19 * MM);
        int counted = 0;
        for (Pdf.Line line : Pdf.lines(printed)) {
            assertTrue(line.left() >= 20 * MM, "no room for holes: " + line);
            if (line.baseline() < foot && FILLER.repeat(2).contains(line.words().strip())) {
                assertTrue(line.size() >= 11.9, line.toString());
                assertTrue(line.words().strip().length() < 75, line.words().length() + ": " + line.words());
                counted++;
            }
        }
        assertTrue(counted >= 15, "lines of prose: " + counted);
    }

    @ParameterizedTest
    @EnumSource(Sheet.Paper.class)
    @DisplayName("a long title goes on in a second line, and nothing of it stands beyond the margin")
    void longTitle(Sheet.Paper paper) {
        String title = "How much gas does a strip of bright magnesium ribbon really give?";
        Sheet usual = SampleSheets.sheet(Sheet.Kind.HANDOUT, "Student handout", paper, List.of(p(w(FILLER))));
        Printed printed = PRINTER.print(new Sheet(usual.kind(), title, usual.kindName(), "FQ-G1", "v7k2", "en", paper, usual.footer(), usual.pageWord(), usual.pieces()));
        double edge = (paper == Sheet.Paper.A4 ? 210 : 215.9) * MM - 18 * MM;
        List<Pdf.Line> lines = Pdf.lines(printed);
        assertTrue(lines.stream().filter(l -> l.size() > 17).count() >= 2, lines.toString());
        lines.forEach(line -> assertTrue(line.right() <= edge + 0.5, line.toString()));
    }

    @Test
    @DisplayName("no line ends inside a formula or an amount, nor before the comma behind it")
    void noBreakInside() {
        Text acid = chem("sulfuric acid", w("H"), sub("2"), w("SO"), sub("4"));
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            pieces.add(p(w("Take some of the " + "i".repeat(10 + i) + " that stands beside the ("), acid, w("), about "),
                    q("10.5 mL"), w(", then "), new Text.Strong(t("wait for it")), w(".")));
        }
        List<Pdf.Line> lines = Pdf.lines(print(Sheet.Paper.A4, pieces));
        assertTrue(lines.size() >= 120, "lines: " + lines.size());
        for (Pdf.Line line : lines) {
            assertFalse(line.words().strip().matches("[,.)24].*|SO.*|mL.*"), "a line that begins with `" + line.words() + "`");
            assertFalse(line.words().strip().matches(".*(\\(|\\(H|10\\.5)"), "a line that ends with `" + line.words() + "`");
        }
    }

    @Test
    @DisplayName("worked lines stand under each other at their first sign, and a long one goes on at a further sign")
    void working() {
        List<Piece.WorkedLine> worked = List.of(
                new Piece.WorkedLine(List.of(new Text.Symbol("n"), w("(Mg)")), t("= 0.079 g / 24.305 g/mol = 3.25 mmol"), ""),
                new Piece.WorkedLine(List.of(new Text.Symbol("V"), w("(gas, moist, as read)")),
                        t("= 3.25 mmol × 8.314 kPa L/(mol K) × 293.15 K / (101.3 kPa − 2.3 kPa) "
                                + "= 0.0800 L = 80.0 mL = 0.0800 dm3 = 80.0 cm3 = 80 000 mm3"), ""));
        List<Pdf.Line> lines = Pdf.lines(print(Sheet.Paper.A4, List.of(new Piece.Working(worked))));
        List<Pdf.Line> starts = lines.stream().filter(l -> l.words().startsWith("= 0.079")
                || l.words().startsWith("= 3.25 mmol ×")).toList();
        assertEquals(2, starts.size(), lines.toString());
        assertEquals(starts.get(0).left(), starts.get(1).left(), 0.6);
        List<Pdf.Line> below = lines.stream().filter(l -> !l.words().isBlank() && l.baseline() > starts.get(1).baseline() + 5
                && l.baseline() < starts.get(1).baseline() + 40).toList();
        assertFalse(below.isEmpty(), "the long line was not broken");
        for (Pdf.Line line : below) {
            assertTrue(line.words().strip().matches("[=×/+−].*"), "a line that begins with `" + line.words() + "`");
        }
        assertEquals(starts.get(1).left(), below.get(0).left(), 0.6);
    }

    @Test
    @DisplayName("the foot of every page says which sheet it is, which version and which page")
    void footer() {
        String foot = "H1 · Hydrogen from magnesium ribbon · Handout · v7k2 · Fennick Quay Evening College";
        Printed printed = PRINTER.print(SampleSheets.handout(Sheet.Paper.A4));
        List<String> pages = Pdf.pages(printed);
        for (int i = 0; i < pages.size(); i++) {
            assertTrue(pages.get(i).contains(foot), pages.get(i));
            assertTrue(pages.get(i).contains("page " + (i + 1) + " of " + pages.size()), pages.get(i));
        }
    }

    @ParameterizedTest
    @EnumSource(Sheet.Paper.class)
    @DisplayName("each label begins in its own field of the grid, and no page has a head or a foot")
    void labels(Sheet.Paper paper) {
        double width = paper == Sheet.Paper.A4 ? 210 : 215.9;
        double height = paper == Sheet.Paper.A4 ? 297 : 279.4;
        for (int[] grid : new int[][] {{2, 4}, {3, 7}, {1, 2}, {2, 7}}) {
            List<Piece.Label> labels = new ArrayList<>();
            int count = grid[0] * grid[1] + 2;
            for (int i = 0; i < count; i++) {
                labels.add(new Piece.Label(t("Bottle" + i + "x"), t("0.10 mol/L"), List.of("GHS07"), "Warning",
                        List.of("H319 Causes serious eye irritation."), List.of("foot"), true));
            }
            Piece.LabelGrid fields = new Piece.LabelGrid(grid[0], grid[1], 15, 8);
            Printed printed = PRINTER.print(SampleSheets.sheet(Sheet.Kind.LABELS, "Labels", paper,
                    List.of(new Piece.Labels(fields, labels))));
            assertEquals(2, printed.pages());
            List<Pdf.Line> lines = Pdf.lines(printed);
            for (int i = 0; i < count; i++) {
                String name = "Bottle" + i + "x";
                Pdf.Line line = lines.stream().filter(l -> l.words().contains(name)).findFirst().orElseThrow();
                int place = i % (grid[0] * grid[1]);
                double left = 8 + place % grid[0] * (width - 16) / grid[0];
                double top = 15 + place / grid[0] * (height - 30) / grid[1];
                if (line.words().strip().equals(name)) {
                    assertTrue(line.left() > left * MM && line.left() < (left + 8) * MM, name + " stands at " + line.left() / MM
                            + " mm, its field begins at " + left);
                }
                assertTrue(line.baseline() > top * MM && line.baseline() < (top + 12) * MM, name + " stands at "
                        + line.baseline() / MM + " mm, field " + top);
                assertEquals(i < grid[0] * grid[1] ? 1 : 2, line.page());
            }
            assertFalse(String.join("", Pdf.pages(printed)).contains("page 1"));
        }
    }

    @Test
    @DisplayName("a label that holds more than its field is told of; one that holds just enough is not")
    void spilledLabels() {
        for (int statements = 0; statements < 30; statements++) {
            List<String> said = java.util.Collections.nCopies(statements, "H319 Causes serious eye irritation, and this goes on.");
            Piece.Label label = new Piece.Label(t("Bottle"), t("0.10 mol/L"), List.of("GHS07"), "Warning", said, List.of("foot"), true);
            Printed printed = PRINTER.print(SampleSheets.sheet(Sheet.Kind.LABELS, "Labels", Sheet.Paper.A4,
                    List.of(new Piece.Labels(new Piece.LabelGrid(2, 7, 15, 8), List.of(label, label, label)))));
            List<Pdf.Line> names = Pdf.lines(printed).stream().filter(l -> l.words().contains("Bottle")).toList();
            boolean moved = names.get(names.size() - 1).baseline() - names.get(0).baseline() - 267 / 7.0 * MM > 0.05;
            assertEquals(moved, printed.spilled(), statements + " statements");
        }
        assertFalse(PRINTER.print(SampleSheets.labels(Sheet.Paper.A4)).spilled());
    }

    @Test
    @DisplayName("an unknown hazard is never an empty box")
    void unknownHazard() {
        for (Sheet.Kind kind : List.of(Sheet.Kind.SAFETY, Sheet.Kind.HANDOUT)) {
            Printed printed = PRINTER.print(SampleSheets.sheet(kind, "x", Sheet.Paper.A4, List.of(
                    new Piece.Hazard(t("Residue"), List.of(), List.of(), "", List.of("Hazards not known: treat as hazardous."),
                            "", false))));
            assertTrue(Pdf.pages(printed).get(0).contains("Hazards not known: treat as hazardous."));
            assertTrue(TagTree.of(printed).contains("Figure alt=[W001: general warning]"));
        }
    }
}
