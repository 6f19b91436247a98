package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import tarewright.document.Piece;
import tarewright.document.Sheet;
import tarewright.document.Text;

/** Whatever an author types stands on the page as typed, and makes the program do nothing. */
class HostileTextTest {
    private static final PdfPrinter PRINTER = new PdfPrinter(Templates.packed());

    private static Sheet everywhere(String text) {
        List<Text> line = List.of(new Text.Words(text));
        List<Piece> inside = List.of(new Piece.Paragraph(line));
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece.Heading(2, line));
        pieces.add(new Piece.FormLine(List.of(new Piece.FormField(text, 1))));
        pieces.add(new Piece.Paragraph(List.of(new Text.Strong(line), new Text.Code(text), new Text.Symbol(text),
                new Text.Subscript(text),
                new Text.Chemical(line, text), new Text.Blank(4, text), new Text.Fraction(line, line), new Text.Arrow(text,
                        line))));
        pieces.add(new Piece.Paragraph(List.of(new Text.Quantity(text))));
        pieces.add(new Piece.Paragraph(List.of(new Text.Filled(text))));
        pieces.add(new Piece.Steps(1, List.of(List.of(new Piece.Caution(text, 1, line, line, line), inside.get(0)))));
        pieces.add(new Piece.Question(text, text, inside, List.of(new Piece.RuledLines(1, text)), List.of()));
        pieces.add(new Piece.Choices(List.of(line), Optional.empty()));
        pieces.add(new Piece.Table(line, List.of(line), List.of(List.of(line)), List.of(false), false, Piece.Use.READ));
        pieces.add(new Piece.Working(List.of(new Piece.WorkedLine(line, line, text))));
        pieces.add(new Piece.Note(text, inside));
        pieces.add(new Piece.Hazard(line, line, List.of(text, "GHS02"), text, List.of(text), text, false));
        pieces.add(new Piece.Signs(List.of(new Piece.Sign(text, text))));
        return new Sheet(Sheet.Kind.HANDOUT, text.isBlank() ? "x" : text, text, text, text, "en", Sheet.Paper.A4, text,
                new Sheet.PageWords(text, text), pieces);
    }

    @Test
    @DisplayName("signs that mean something to a template or a browser come out as text")
    void asText() {
        List<String> texts = List.of("${sheet.title}", "<#include \"/etc/passwd\">", "<@all x/>", "[=1+1]", "<script>x</script>",
                "]]>", "a & b; &amp; &lt;",
                "\"'>", "<!-- no -->", "<?pi?>", "</style>", "url(file:///etc/hosts)", "{{x}}", "--", "\\u0041");
        Printed printed = PRINTER.print(everywhere(String.join(" ", texts)));
        assertEquals(List.of(), printed.remarks());
        String page = Pdf.letters(printed);
        for (String text : texts) {
            assertTrue(count(page, text.replace(" ", "")) >= 25, text + " was printed only " + count(page, text.replace(" ", ""))
                    + " times:\n" + page);
        }
    }

    private static int count(String page, String text) {
        int seen = 0;
        for (int at = page.indexOf(text); at >= 0; at = page.indexOf(text, at + text.length())) {
            seen++;
        }
        return seen;
    }

    @Test
    @DisplayName("control characters, halves of pairs and empty text do no harm")
    void oddities() throws Exception {
        for (String text : List.of("", " ", "a\u0000b\u0008c \uD800 x\uDC00y \uFFFE\uFFFF a\u200Bb \u202Eabc \n\n \u00AD")) {
            Printed printed = PRINTER.print(everywhere(text));
            assertEquals(List.of(), printed.remarks(), "of " + text.codePoints().boxed().toList());
        }
    }

    @Test
    @DisplayName("a very long word is broken before it leaves the page")
    void longWord() {
        Printed printed = PRINTER.print(everywhere("x".repeat(400)));
        for (Pdf.Line line : Pdf.lines(printed)) {
            assertTrue(line.right() <= 210 / 25.4 * 72 - 30, "runs off at " + line.right() + ": " + line.words());
        }
    }

    @Test
    @DisplayName("a character that no face has is reported; one that a second face has is not")
    void missing() throws Exception {
        Sheet sheet = everywhere("水 \uD83E\uDDEA ⇌ → ₂ ☐ Ω µ ‰ Ж");
        Printed printed = PRINTER.print(sheet);
        assertEquals(Set.of(0x6C34, 0x1F9EA), printed.missing());
        assertEquals(Set.of(), PRINTER.print(everywhere("⇌ → ⟶ ₂ ⁻ ☐ Ω µ ‰ Ж ß ç ﬁ “” – ° · × − ± ≈ ≤ √ Δ")).missing());
        assertEquals(List.of(), VeraPdf.check(printed.pdf(), PDFAFlavour.PDFUA_1).failures());
    }

    @Test
    @DisplayName("a drawing holds shapes and nothing else")
    void drawings() {
        String head = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\">";
        assertTrue(SafeSvg.of(head + "<rect width=\"5\" height=\"5\"/></svg>").markup("drawing", "", "a \"square\" & more", "", Medium.PAPER)
                .contains(
                "alt=\"a &quot;square&quot; &amp; more\""));
        for (String bad : List.of("<script>x</script>", "<image href=\"file:///etc/hosts\"/>", "<use href=\"#a\"/>",
                "<text>x</text>",
                "<rect onclick=\"x\"/>", "<rect style=\"fill:url(http://x)\"/>", "<rect fill=\"url(#a)\"/>", "<foreignObject/>",
                        "<style>x</style>",
                "<g xmlns=\"http://www.w3.org/1999/xhtml\"/>", "words", "<rect opacity=\"0.5\"/>", "<linearGradient/>")) {
            assertThrows(IllegalArgumentException.class, () -> SafeSvg.of(head + bad + "</svg>"), bad);
        }
        assertThrows(IllegalArgumentException.class, () -> SafeSvg.of("<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/hosts\">]>"
                + head + "&x;</svg>"));
        assertThrows(IllegalArgumentException.class, () -> SafeSvg.of("<svg/>"));
    }

    @Test
    @DisplayName("every packed pictogram and sign is such a drawing, with a title")
    void packedDrawings() {
        int drawn = 0;
        for (String kind : List.of("GHS0", "M0", "W0", "P0", "E0", "F0")) {
            for (int number = 0; number < 100; number++) {
                String code = kind.equals("GHS0") ? kind + number : String.format("%s%02d", kind, number);
                if (Packed.has("pictograms/" + code.toLowerCase(java.util.Locale.ROOT) + ".svg")) {
                    assertFalse(SafeSvg.of(Packed.text("pictograms/" + code.toLowerCase(java.util.Locale.ROOT)
                            + ".svg")).title().isEmpty(), code);
                    drawn++;
                }
            }
        }
        assertEquals(47, drawn);
    }
}
