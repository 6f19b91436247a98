package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import tarewright.document.Sheet;

/** What the file says of itself and carries with it. */
class FileTest {
    private static final PdfPrinter PRINTER = new PdfPrinter(Templates.packed());

    @Test
    @DisplayName("title, language, subject, paper and bookmarks are those of the sheet")
    void catalogue() throws Exception {
        for (Sheet.Paper paper : Sheet.Paper.values()) {
            Sheet sheet = SampleSheets.handout(paper);
            try (PDDocument document = Pdf.open(PRINTER.print(sheet))) {
                assertEquals("Hydrogen from magnesium ribbon", document.getDocumentInformation().getTitle());
                assertEquals("Handout (H1), v7k2", document.getDocumentInformation().getSubject());
                assertEquals("en", document.getDocumentCatalog().getLanguage());
                assertTrue(document.getDocumentCatalog().getViewerPreferences().displayDocTitle());
                PDRectangle box = document.getPage(0).getMediaBox();
                // ISO 216: A4 is 210 mm x 297 mm; ANSI/ASME Y14.1: Letter is 8.5 in x 11 in.
                assertEquals(paper == Sheet.Paper.A4 ? 210 / 25.4 * 72 : 8.5 * 72, box.getWidth(), 0.5);
                assertEquals(paper == Sheet.Paper.A4 ? 297 / 25.4 * 72 : 11 * 72, box.getHeight(), 0.5);
                List<String> marks = new ArrayList<>();
                PDOutlineItem top = document.getDocumentCatalog().getDocumentOutline().getFirstChild();
                top.children().forEach(item -> marks.add(item.getTitle()));
                assertEquals(List.of("What this is for", "Safety", "What you need", "What to do", "Readings", "Graph",
                        "Questions"), marks);
                assertNotNull(top.getFirstChild().getDestination());
            }
        }
    }

    @Test
    @DisplayName("the colour profile is in the file as we made it, untouched by the runtime's own colour management")
    void profile() throws Exception {
        try (PDDocument document = Pdf.open(PRINTER.print(SampleSheets.handout(Sheet.Paper.A4)))) {
            assertEquals(1, document.getDocumentCatalog().getOutputIntents().size());
            COSStream profile = (COSStream) document.getDocumentCatalog().getOutputIntents().get(0).getDestOutputIntent();
            assertArrayEquals(SrgbProfile.bytes(), profile.createInputStream().readAllBytes());
            assertEquals(3, profile.getInt(COSName.N));
        }
    }

    @Test
    @DisplayName("every typeface used is inside the file, and only its used part")
    void faces() throws Exception {
        Printed printed = PRINTER.print(SampleSheets.key(Sheet.Paper.A4));
        try (PDDocument document = Pdf.open(printed)) {
            int seen = 0;
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    assertTrue(font.getName().matches("[A-Z]{6}\\+.*"), "not a part: " + font.getName());
                    seen++;
                }
            }
            assertTrue(seen >= 4, "so few faces: " + seen);
        }
        assertTrue(printed.pdf().length < 150_000, "a key of one page takes " + printed.pdf().length + " bytes");
    }

    @Test
    @DisplayName("the same sheet gives the same bytes: a second time, by another printer, in another locale and time zone")
    void sameBytes() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        for (Sheet sheet : SampleSheets.all(Sheet.Paper.A4)) {
            byte[] first = PRINTER.print(sheet).pdf();
            assertArrayEquals(first, PRINTER.print(sheet).pdf(), sheet.kind() + " by the same printer");
            try {
                Locale.setDefault(Locale.forLanguageTag("tr-TR"));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
                assertArrayEquals(first, new PdfPrinter(Templates.packed()).print(sheet).pdf(), sheet.kind() + " elsewhere");
            } finally {
                Locale.setDefault(locale);
                TimeZone.setDefault(zone);
            }
        }
    }

    @Test
    @DisplayName("another sheet is another file, by its identity too")
    void identity() throws Exception {
        try (PDDocument one = Pdf.open(PRINTER.print(SampleSheets.handout(Sheet.Paper.A4)));
                PDDocument other = Pdf.open(PRINTER.print(SampleSheets.handout(Sheet.Paper.LETTER)))) {
            assertTrue(!one.getDocument().getDocumentID().get(0).equals(other.getDocument().getDocumentID().get(0)));
        }
    }

    @Test
    @DisplayName("the colour profile is the one that its recipe gives, and the Java runtime reads the same colours from it")
    void colourProfile() {
        byte[] packed = Packed.bytes("colour/srgb.icc");
        assertArrayEquals(SrgbProfile.bytes(), packed);
        java.awt.color.ICC_ColorSpace ours = new java.awt.color.ICC_ColorSpace(java.awt.color.ICC_Profile.getInstance(packed));
        java.awt.color.ColorSpace theirs = java.awt.color.ColorSpace.getInstance(java.awt.color.ColorSpace.CS_sRGB);
        for (float[] rgb : new float[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {1, 1, 1}, {0.2f, 0.5f, 0.8f}, {0.02f, 0.02f,
                0.02f}}) {
            float[] a = ours.toCIEXYZ(rgb);
            float[] b = theirs.toCIEXYZ(rgb);
            for (int i = 0; i < 3; i++) {
                assertEquals(b[i], a[i], 0.002, "XYZ of a colour");
            }
        }
    }
}
