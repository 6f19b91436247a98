package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.document.Documents;
import tarewright.document.Sheet;
import tarewright.finding.Found;
import tarewright.print.PdfPrinter;
import tarewright.print.Templates;
import tarewright.print.WebPrinter;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.HazardTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/**
 * The handout as a PDF file tells nothing of the answers: with every answer, key text, expectation and trial replaced by others it is the same file, byte for byte, under the same version
 * code. The key is another.
 */
class LeakTest {
    private static final PdfPrinter PRINTER = new PdfPrinter(Templates.packed());
    private static final WebPrinter WEB = new WebPrinter(Templates.packed());
    private static final Documents DOCUMENTS = new Documents(HazardTables.of(""));

    @ParameterizedTest
    @ValueSource(strings = {"hydrogen-from-magnesium", "acid-in-a-descaler", "chalk-from-two-solutions"})
    void otherAnswersGiveTheSameHandout(String name) throws IOException {
        String text = Files.readString(Path.of("procedures", name + ".md"));
        String other = otherwise(text);
        assertNotEquals(text, other);
        assertArrayEquals(pdf(name, text, Sheet.Kind.HANDOUT), pdf(name, other, Sheet.Kind.HANDOUT));
        assertFalse(Arrays.equals(pdf(name, text, Sheet.Kind.KEY), pdf(name, other, Sheet.Kind.KEY)));
    }

    /** In a browser anyone can read the source of the page. */
    @ParameterizedTest
    @ValueSource(strings = {"hydrogen-from-magnesium", "acid-in-a-descaler", "chalk-from-two-solutions"})
    void otherAnswersGiveTheSameSourceOfTheWebPage(String name) throws IOException {
        String text = Files.readString(Path.of("procedures", name + ".md"));
        String other = otherwise(text);
        assertArrayEquals(WEB.print(sheet(name, text, Sheet.Kind.HANDOUT)), WEB.print(sheet(name, other, Sheet.Kind.HANDOUT)));
        assertFalse(Arrays.equals(WEB.print(sheet(name, text, Sheet.Kind.KEY)), WEB.print(sheet(name, other, Sheet.Kind.KEY))));
    }

    /** Other values, words, choices' order, expectations, trials and key text; what a student is asked stays. */
    private static String otherwise(String text) {
        // A number that differs between versions and that no answer is worked from is refused; what one version shows is its first number.
        return text.replaceAll("(?m)^versions: ([^;]*);.*$", "is: $1").replaceAll("(?m)^( *)value: .*\\R( *unit: .*\\R)?", "$1value: 12.5 mL\n")
                .replaceAll("(?m)^( *)words: .*$", "$1words: Something else altogether.")
                .replaceAll("(?m)^( *)choice: ([^;]*); (.*)$", "$1choice: $3; $2")
                .replaceAll("(?m)^reject: .*$|^( +)reject: .*$", "$1reject: nothing at all")
                .replaceAll("(?m)^expect: .*$", "expect: 1.11 g")
                .replaceAll("(?m)^gave: .*$", "gave: 44 mL")
                .replaceAll("(?ms)^```key\\R.*?^```", "```key\nOther words for the teacher.\n```");
    }

    private static byte[] pdf(String name, String text, Sheet.Kind kind) {
        return PRINTER.print(sheet(name, text, kind)).pdf();
    }

    private static Sheet sheet(String name, String text, Sheet.Kind kind) {
        Found<Resolved> found = Resolver.resolve(name, Reader.read(new SourceText(name, text)).value(), Overrides.NONE, Tables.load());
        assertFalse(found.hasErrors(), () -> found.findings().toString());
        List<Sheet> sheets = DOCUMENTS.sheets(found.value(), Set.of(kind), List.of(), "abcdefg", "");
        return sheets.get(0);
    }
}
