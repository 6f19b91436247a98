package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
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

    @ParameterizedTest
    @MethodSource("sheets")
    @DisplayName("every document passes PDF/UA-1 and PDF/A-2a without a failed check")
    void passes(Sheet sheet) throws Exception {
        Printed printed = PRINTER.print(sheet);
        assertEquals(List.of(), printed.remarks());
        for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)) {
            VeraPdf.Outcome outcome = VeraPdf.check(printed.pdf(), flavour);
            assertEquals(List.of(), outcome.failures(), flavour + " " + sheet.kind() + " " + sheet.paper());
            assertTrue(outcome.checks() > 500, "so few checks that nothing can have been looked at: " + outcome.checks());
        }
    }
}
