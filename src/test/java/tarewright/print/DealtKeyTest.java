package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import tarewright.document.Documents;
import tarewright.document.Sheet;
import tarewright.library.Library;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Resolved;
import tarewright.setting.Overrides;
import tarewright.tables.HazardTables;

/** The key of amounts that are dealt: what to expect of every group on its first page, the filled-in sheet of each hand at its end. */
class DealtKeyTest {
    /** A step, or a question. */
    private static final Pattern NUMBERED = Pattern.compile("[1-9] [A-Z][^\\n:]{12,}");
    private static final PdfPrinter PRINTER = new PdfPrinter(Templates.packed());
    private static final Path FILE = Path.of("procedures", "turning-point-of-chalk.md");

    @Test
    @DisplayName("whoever marks finds every group's expected answer on the first page, and for each handout its double, page for page")
    void aMarkerFindsEachHand() {
        Resolved procedure = Library.resolve(FILE, Overrides.NONE).value();
        List<Sheet> sheets = new Documents(HazardTables.of("")).sheets(procedure, EnumSet.of(Sheet.Kind.HANDOUT, Sheet.Kind.KEY), List.of(), "abcdefg", "");
        List<String> handout = Pdf.pages(PRINTER.print(sheets.get(0)));
        List<String> key = Pdf.pages(PRINTER.print(sheets.get(1)));
        assertEquals(5, procedure.hands().size());
        // 0.50 mol/L: 5.0 mL are 2.50 mmol and 10.0 mL 5.00 mmol of carbonate; with 7.50 mmol of calcium no more than 7.50 mmol of chalk can form, 0.75 g (M = 100.09 g/mol, IUPAC 2021).
        for (String expected : List.of("2.50", "5.00", "7.50", "10.00", "12.5", "0.25", "0.50", "0.75")) {
            assertTrue(key.get(0).contains(expected), expected);
        }
        int before = key.size() - handout.size();
        int compared = 0;
        List<String> missing = new ArrayList<>();
        for (int page = 0; page < handout.size(); page++) {
            String twin = key.get(before + page);
            for (String line : NUMBERED.matcher(handout.get(page)).results().map(MatchResult::group).toList()) {
                compared++;
                if (!twin.contains(line)) {
                    missing.add("page " + (page + 1) + ": " + line);
                }
            }
        }
        assertEquals(List.of(), missing);
        assertTrue(compared >= 6 * procedure.hands().size(), "compared: " + compared);
        for (Hand hand : procedure.hands()) {
            String groups = "Groups " + String.join(", ", hand.groups().stream().map(String::valueOf).toList());
            assertEquals(1, key.subList(1, before).stream().filter(p -> p.replaceAll("\\s+", " ").contains(groups)).count(), groups);
        }
        assertTrue(before <= handout.size(), "more pages of accounts than of filled-in sheets: " + before);
    }
}
