package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import tarewright.document.Sheet;

/** ISO 14289-1 (PDF/UA-1) and ISO 19005-2 (PDF/A-2a) by the veraPDF rules for them. */
class ConformanceTest {
    private static final PdfPrinter PRINTER = new PdfPrinter(Templates.packed());

    static Stream<Sheet> sheets() {
        return Stream.of(Sheet.Paper.values()).flatMap(paper -> SampleSheets.all(paper).stream());
    }

    static Stream<Sheet> randomSheets() {
        return LongStream.range(0, 8).mapToObj(number -> new RandomSheets(number).sheet());
    }

    @ParameterizedTest
    @MethodSource({"sheets", "randomSheets"})
    @DisplayName("every document passes PDF/UA-1 and PDF/A-2a without a failed check")
    void passes(Sheet sheet) throws Exception {
        Printed printed = PRINTER.print(sheet);
        assertEquals(List.of(), printed.remarks());
        for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)) {
            VeraPdf.Outcome outcome = VeraPdf.check(printed.pdf(), flavour);
            assertEquals(List.of(), outcome.failures(), flavour + " " + sheet.kind() + " " + sheet.paper());
            assertTrue(outcome.checks() > 100, "so few checks that nothing can have been looked at: " + outcome.checks());
        }
    }

    @Test
    @DisplayName("the validator does object to a page with a picture without words and a skipped level of heading")
    void validatorObjects(@TempDir Path folder) throws Exception {
        Files.writeString(folder.resolve("handout.ftlx"), """
                <html xmlns="http://www.w3.org/1999/xhtml" lang="en"><head><style>* { font-family: "Source Sans 3"; }</style></head>
                <body><h4>words</h4><svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9" style="width:9mm;height:9mm"><rect width="9" height="9"/></svg></body></html>
                """);
        Printed printed = new PdfPrinter(Templates.over(folder)).print(SampleSheets.handout(Sheet.Paper.A4));
        List<String> failures = VeraPdf.check(printed.pdf(), PDFAFlavour.PDFUA_1).failures();
        assertTrue(failures.stream().anyMatch(f -> f.startsWith("7.3-")), failures.toString());
        assertTrue(failures.stream().anyMatch(f -> f.startsWith("7.4.2-")), failures.toString());
    }
}
