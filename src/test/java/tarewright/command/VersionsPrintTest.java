package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tarewright.document.Documents;
import tarewright.document.Sheet;
import tarewright.finding.Found;
import tarewright.print.EditablePrinter;
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
 * What a teacher prints who does not want neighbours to copy each other's answers: a handout of each version with other numbers in its questions and all else alike, one key with the answers
 * of all, and a safety panel and a prep sheet that know nothing of it.
 */
class VersionsPrintTest {
    private static final PdfPrinter PRINTER = new PdfPrinter(Templates.packed());
    private static final Documents DOCUMENTS = new Documents(HazardTables.of(""));
    private static final String NAME = "acid-in-a-descaler";

    @TempDir
    private Path folder;

    private record Said(int status, String out, String err) {
    }

    private static String source() throws IOException {
        return Files.readString(Path.of("procedures", NAME + ".md"));
    }

    private static List<Sheet> sheets(String text, int versions, Sheet.Kind... kinds) {
        Found<Resolved> found = Resolver.resolve(NAME, Reader.read(new SourceText(NAME, text)).value(), Overrides.NONE.withVersions(versions), Tables.load());
        assertFalse(found.hasErrors(), () -> found.findings().toString());
        return DOCUMENTS.sheets(found.value(), EnumSet.copyOf(List.of(kinds)), List.of(), "abcdefg", "");
    }

    private static List<String> pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document).replace('\u202F', ' ').replace('\u00A0', ' '));
            }
            return pages;
        }
    }

    /** The line at the foot, wherever it stands in the order of reading. */
    private static String foot(String page) {
        return page.lines().filter(l -> l.startsWith("FQ-T1 · ")).findFirst().orElseThrow(() -> new AssertionError(page));
    }

    private static Said run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Main.run(arguments, new PrintWriter(out), new PrintWriter(err));
        return new Said(status, out.toString(), err.toString());
    }

    private Set<String> files(String below) throws IOException {
        try (Stream<Path> all = Files.list(folder.resolve(below))) {
            return all.map(p -> p.getFileName().toString()).filter(n -> n.endsWith(".pdf")).collect(Collectors.toSet());
        }
    }

    /** Page for page the same sheet with its own number, its letter in the title and at the foot of each page, and no other version's number. */
    @Test
    void theHandoutsAreAlikeButForTheirNumberAndTheirLetter() throws IOException {
        List<Sheet> sheets = sheets(source(), 3, Sheet.Kind.HANDOUT);
        assertEquals(List.of("A", "B", "C"), sheets.stream().map(Sheet::letter).toList());
        List<List<String>> all = new ArrayList<>();
        for (Sheet sheet : sheets) {
            all.add(pages(PRINTER.print(sheet).pdf()));
        }
        List<String> numbers = List.of("2.40 g", "3.10 g", "1.85 g");
        for (int i = 0; i < 3; i++) {
            String letter = sheets.get(i).letter();
            String whole = String.join("", all.get(i));
            all.get(i).forEach(page -> assertTrue(foot(page).contains("version " + letter), page));
            assertTrue(sheets.get(i).title().endsWith("version " + letter));
            for (int k = 0; k < 3; k++) {
                assertEquals(i == k, whole.contains(numbers.get(k)), letter + " " + numbers.get(k));
                assertEquals(i == k, whole.contains("version " + sheets.get(k).letter()));
            }
            String mine = numbers.get(i);
            assertEquals(all.get(0), all.get(i).stream().map(p -> p.replace(mine, "2.40 g").replace("version " + letter, "version A")).toList());
        }
    }

    /**
     * Citric acid for limescale, 3 CaCO3 to 2 C6H8O7: 2.40 g / 100.086 g/mol × 2/3 × 192.123 g/mol = 3.07 g; of 3.10 g 3.97 g. Worked by hand from IUPAC's abridged atomic weights of 2021
     * (Pure Appl. Chem. 94 (2022) 573-600). What comes from the bench is the same in both and is said to be.
     */
    @Test
    void theKeyHasBothSideBySideAndThenTheSheetOfEachFilledIn() throws IOException {
        List<Sheet> sheets = sheets(source(), 2, Sheet.Kind.HANDOUT, Sheet.Kind.KEY);
        assertEquals(List.of("A", "B", ""), sheets.stream().map(Sheet::letter).toList());
        List<String> key = pages(PRINTER.print(sheets.get(2)).pdf());
        String first = key.get(0);
        String table = first.substring(first.indexOf("side by side"), first.indexOf("Safety"));
        assertTrue(table.contains("Version A") && table.contains("Version B"), table);
        assertTrue(table.contains("2.40 g") && table.contains("3.10 g"), table);
        assertTrue(table.contains("3.07 g") && table.contains("3.97 g"), table);
        assertEquals(4, table.split("the same", -1).length - 1, table);
        List<String> a = key.stream().filter(p -> p.contains("A kettle holds 2.40 g") && p.contains("3.07 g")).toList();
        List<String> b = key.stream().filter(p -> p.contains("A kettle holds 3.10 g") && p.contains("3.97 g")).toList();
        assertEquals(2, a.size(), "the sheet filled in and the answer worked out");
        assertEquals(2, b.size(), "the sheet filled in and the answer worked out");
        assertTrue(String.join("", key).contains("as in version A"));
    }

    /** Byte for byte, under the same code: the wall, the store room and the bottles have one class. */
    @Test
    void panelPrepSheetAndLabelsAreTheSameFilesAsWithoutVersions() throws IOException {
        Sheet.Kind[] kinds = {Sheet.Kind.SAFETY, Sheet.Kind.PREP, Sheet.Kind.LABELS};
        List<Sheet> with = sheets(source(), 2, kinds);
        List<Sheet> without = sheets(source(), 1, kinds);
        assertEquals(3, with.size());
        for (int i = 0; i < with.size(); i++) {
            assertArrayEquals(PRINTER.print(without.get(i)).pdf(), PRINTER.print(with.get(i)).pdf(), with.get(i).kind().toString());
        }
    }

    /** On paper, in the source of the page for a browser and in the file to be changed by hand: with another number in the other version it is the same file. */
    @Test
    void noHandoutTellsAnotherVersionsNumber() throws IOException {
        String otherB = source().replace("2.40 g; 3.10 g", "2.40 g; 2.75 g");
        String otherA = source().replace("2.40 g; 3.10 g", "2.75 g; 3.10 g");
        assertNotEquals(source(), otherB);
        WebPrinter web = new WebPrinter(Templates.packed());
        List<Sheet> usual = sheets(source(), 2, Sheet.Kind.HANDOUT);
        List<List<Sheet>> others = List.of(sheets(otherB, 2, Sheet.Kind.HANDOUT), sheets(otherA, 2, Sheet.Kind.HANDOUT));
        for (int i = 0; i < 2; i++) {
            Sheet mine = usual.get(i);
            Sheet same = others.get(i).get(i);
            assertArrayEquals(PRINTER.print(mine).pdf(), PRINTER.print(same).pdf());
            assertArrayEquals(web.print(mine), web.print(same));
            assertArrayEquals(new EditablePrinter().print(mine), new EditablePrinter().print(same));
        }
    }

    /** One code on all sheets of a print, another one with versions than without; the lettered files go when nobody asks for them any more. */
    @Test
    void aPrintWithVersionsIsASetOfItsOwn() throws IOException {
        Path file = Files.writeString(folder.resolve(NAME + ".md"), source());
        String out = folder.resolve("out").toString();
        Said two = run("print", file.toString(), "--out", out, "--versions", "2");
        assertEquals(0, two.status(), two.err());
        assertEquals(Set.of(NAME + "-handout-A.pdf", NAME + "-handout-B.pdf", NAME + "-key.pdf", NAME + "-safety.pdf"), files("out"));
        assertTrue(two.out().contains("handout-A (2), handout-B (2)"), two.out());
        Set<String> codes = new java.util.TreeSet<>();
        for (String each : files("out")) {
            codes.add(foot(pages(Files.readAllBytes(folder.resolve("out").resolve(each))).get(0)).replaceAll(".*· ([a-z2-7]{7})\\b.*", "$1"));
        }
        assertEquals(1, codes.size(), codes.toString());
        assertEquals(7, codes.iterator().next().length());
        assertTrue(run("print", file.toString(), "--out", out, "--versions", "2").out().contains("unchanged: handout (2)"));
        String changes = run("changes", file.toString(), "--out", out, "--versions", "2").out();
        assertTrue(changes.contains(codes.iterator().next()), changes);
        run("print", file.toString(), "--out", out);
        assertEquals(Set.of(NAME + "-handout.pdf", NAME + "-key.pdf", NAME + "-safety.pdf"), files("out"));
        assertFalse(pages(Files.readAllBytes(folder.resolve("out").resolve(NAME + "-safety.pdf"))).get(0).contains(codes.iterator().next()));
    }

    /** Where nothing can differ it is said, and one handout for everybody is printed; five versions are no number that can be asked for. */
    @Test
    void whatCannotBeIsSaid() throws IOException {
        String plain = source().replace("versions: 2.40 g; 3.10 g; 1.85 g", "is: 2.40 g");
        assertNotEquals(source(), plain);
        Path file = Files.writeString(folder.resolve("plain.md"), plain);
        Said said = run("print", file.toString(), "--out", folder.resolve("out").toString(), "--only", "handout", "--versions", "2");
        assertEquals(0, said.status(), said.err());
        assertTrue(said.err().contains("nothing-to-vary") && said.err().contains("in the block `scale`, `versions:"), said.err());
        assertEquals(Set.of("plain-handout.pdf"), files("out"));
        assertEquals(2, run("print", file.toString(), "--versions", "5").status());
        Said few = run("proof", Files.writeString(folder.resolve("few.md"), source()).toString(), "--versions", "4");
        assertEquals(1, few.status());
        assertTrue(few.out().contains("`scale` has 3 versions, and 4 are asked for"), few.out());
    }

    /** Each version's numbers and answers for other programs; a rehearsal of each. */
    @Test
    void figuresAndRehearsalsAreOfEachVersion() throws IOException {
        Path file = Files.writeString(folder.resolve(NAME + ".md"), source());
        JsonNode versions = new ObjectMapper().readTree(run("figures", file.toString(), "--versions", "2").out()).path("versions");
        assertEquals(2, versions.size());
        assertEquals("B", versions.get(1).path("version").asText());
        assertEquals(3.10, versions.get(1).path("values").path("scale").path("figures").path("value").path("value").asDouble(), 1e-9);
        String answers = versions.get(1).path("answers").toString();
        assertTrue(answers.contains("3.97 g"), answers);
        String rehearsed = run("proof", file.toString(), "--rehearse", "--versions", "2").out();
        assertTrue(rehearsed.contains("version A") && rehearsed.contains("version B"), rehearsed);
    }

    /** Three groups, one handout each: two of A and two of B; of a section for itself the section's word counts. */
    @Test
    void aTermGivesTheVersionsRoundInTurn() throws IOException {
        Files.writeString(folder.resolve(NAME + ".md"), source());
        Path term = Files.writeString(folder.resolve("term.md"), """
                ---
                term: Spring 2041
                documents: handout
                procedures: acid-in-a-descaler
                versions: 2
                ---

                ```section Mon-A
                groups: 3
                ```

                ```section Tue-B
                groups: 3
                versions: 1
                ```
                """);
        Said said = run("print", "--term", term.toString(), "--out", folder.resolve("out").toString());
        assertEquals(0, said.status(), said.err());
        assertEquals(Set.of(NAME + "-handout-A.pdf", NAME + "-handout-B.pdf", "Mon-A-packet.pdf"), files("out/Mon-A"));
        assertEquals(Set.of(NAME + "-handout.pdf", "Tue-B-packet.pdf"), files("out/Tue-B"));
        List<String> rows = said.out().lines().filter(l -> l.contains("Mon-A") && l.contains("handout-")).toList();
        assertTrue(rows.stream().anyMatch(l -> l.matches(".*handout-A +2 +2 *.*")), said.out());
        assertTrue(rows.stream().anyMatch(l -> l.matches(".*handout-B +2 +2 *.*")), said.out());
    }
}
