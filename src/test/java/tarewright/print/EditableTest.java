package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TimeZone;
import org.apache.poi.xwpf.usermodel.VerticalAlign;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.junit.jupiter.api.Test;
import tarewright.document.Sheet;

/** The editable copy, read back with the library's own reader. */
class EditableTest {
    private static final Sheet HANDOUT = SampleSheets.handout(Sheet.Paper.A4);

    private static XWPFDocument back() throws Exception {
        byte[] file = new EditablePrinter().print(HANDOUT);
        Files.createDirectories(Path.of("target", "golden"));
        Files.write(Path.of("target", "golden", "handout.docx"), file);
        return new XWPFDocument(new ByteArrayInputStream(file));
    }

    @Test
    void headingsAreHeadings() throws Exception {
        try (XWPFDocument document = back()) {
            List<String> headings = document.getParagraphs().stream().filter(p -> "Heading1".equals(p.getStyle())).map(XWPFParagraph::getText).toList();
            assertTrue(headings.containsAll(List.of("Safety", "What you need", "What to do", "Readings")), headings::toString);
            assertTrue(document.getStyles().styleExist("Heading1"));
            assertEquals("Hydrogen from magnesium ribbon", document.getProperties().getCoreProperties().getTitle());
        }
    }

    @Test
    void stepsAreNumberedByTheFileItselfWithABoxToTick() throws Exception {
        try (XWPFDocument document = back()) {
            List<String> shapes = document.getParagraphs().stream().filter(p -> p.getNumID() != null).map(p -> shape(document, p)).toList();
            assertTrue(shapes.stream().filter("decimal %1  ☐"::equals).count() >= 3, shapes::toString);
            assertTrue(shapes.contains("bullet •"), shapes::toString);
        }
    }

    private static String shape(XWPFDocument document, XWPFParagraph paragraph) {
        var number = document.getNumbering().getNum(paragraph.getNumID()).getCTNum();
        var level = document.getNumbering().getAbstractNum(number.getAbstractNumId().getVal()).getCTAbstractNum().getLvlArray(0);
        return level.getNumFmt().getVal() + " " + level.getLvlText().getVal();
    }

    @Test
    void everyCautionStandsBeforeTheWordsOfItsStep() throws Exception {
        try (XWPFDocument document = back()) {
            String all = String.join("\n", document.getParagraphs().stream().map(XWPFParagraph::getText).toList());
            String plain = PlainText.of(HANDOUT);
            long cautions = plain.lines().filter(l -> l.contains("!! ")).count();
            assertTrue(cautions > 0);
            assertEquals(cautions, document.getParagraphs().stream().filter(p -> p.getBorderTop() != null && p.getBorderTop().name().equals("THICK")).count());
            for (String statement : List.of("H220 Extremely flammable gas.", "Danger")) {
                assertTrue(all.contains(statement), statement);
            }
        }
    }

    @Test
    void formulasKeepTheirSubscripts() throws Exception {
        try (XWPFDocument document = back()) {
            List<XWPFRun> runs = document.getParagraphs().stream().flatMap(p -> p.getRuns().stream()).toList();
            assertTrue(runs.stream().anyMatch(r -> VerticalAlign.SUBSCRIPT.toString().equalsIgnoreCase(String.valueOf(r.getVerticalAlignment())) && r.text().equals("2")));
        }
    }

    @Test
    void tablesKeepTheirRowsAndRepeatTheirHeads() throws Exception {
        try (XWPFDocument document = back()) {
            long tables = PlainText.of(HANDOUT).lines().filter(l -> l.strip().startsWith("table")).count();
            assertEquals(tables, document.getTables().size());
            assertTrue(document.getTables().get(0).getRow(0).isRepeatHeader());
            assertTrue(document.getTables().get(0).getText().contains("magnesium ribbon, 1.10 g/m"));
        }
    }

    @Test
    void everyPageSaysItsVersion() throws Exception {
        try (XWPFDocument document = back()) {
            assertTrue(document.getFooterList().get(0).getText().contains("v7k2"));
        }
    }

    @Test
    void everyPictureHasWords() throws Exception {
        try (XWPFDocument document = back()) {
            List<XWPFRun> pictures = document.getParagraphs().stream().flatMap(p -> p.getRuns().stream()).filter(r -> !r.getEmbeddedPictures().isEmpty()).toList();
            assertTrue(pictures.size() >= 4);
            for (XWPFRun run : pictures) {
                assertFalse(run.getCTR().getDrawingArray(0).getInlineArray(0).getDocPr().getDescr().isBlank());
            }
        }
    }

    @Test
    void theSameSheetGivesTheSameBytesWhateverTheTimeZone() throws Exception {
        TimeZone before = TimeZone.getDefault();
        byte[] here = new EditablePrinter().print(HANDOUT);
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            Thread.sleep(2100);
            assertArrayEquals(here, new EditablePrinter().print(HANDOUT));
        } finally {
            TimeZone.setDefault(before);
        }
    }

    @Test
    void noOtherDocumentIsToBeChangedByHand() {
        for (Sheet sheet : SampleSheets.all(Sheet.Paper.LETTER)) {
            if (sheet.kind() != Sheet.Kind.HANDOUT) {
                assertThrows(IllegalArgumentException.class, () -> new EditablePrinter().print(sheet));
            }
        }
    }
}
