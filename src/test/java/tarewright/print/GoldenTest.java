package tarewright.print;

import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.document.Sheet;

/** Whole documents as plain text, and as a screen reader is told them. */
class GoldenTest {
    private static final PdfPrinter PRINTER = new PdfPrinter(Templates.packed());

    static Stream<Sheet> sheets() {
        return SampleSheets.all(Sheet.Paper.A4).stream();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    @DisplayName("the plain text of each document")
    void plainText(Sheet sheet) {
        Golden.check(sheet.kind().word() + ".txt", PlainText.of(sheet));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    @DisplayName("the tag tree of each document: words in reading order, headings, lists, tables, stand-ins for pictures and formulas")
    void tagTree(Sheet sheet) {
        Golden.check(sheet.kind().word() + ".tags.txt", TagTree.of(PRINTER.print(sheet)));
    }
}
