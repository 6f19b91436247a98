package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A term as a teacher prints it: every section into a folder of its own, with a packet to copy; what is wrong in one section keeps no other from print. The term is invented. */
class TermTest {
    private static final String FRONT = """
            ---
            term: Spring 2041
            school: Fennick Quay Evening College
            documents: handout; key
            procedures: acid-in-a-descaler
            ---

            """;
    private static final String MON = """
            ```section Mon-A
            groups: 3
            date: 2041-02-04
            room: 19 °C; 99.6 kPa; 180 m3
            on the day: strength of alkali is 0.1032 mol/L
            ```

            """;

    @TempDir
    private Path folder;
    private Path out;

    private record Said(int status, String out, String err) {
    }

    @BeforeEach
    void copy() throws IOException {
        Files.copy(Path.of("procedures", "acid-in-a-descaler.md"), folder.resolve("acid-in-a-descaler.md"));
        out = folder.resolve("out");
    }

    private Said print(String term, String... more) throws IOException {
        Path file = Files.writeString(folder.resolve("term.md"), term);
        StringWriter console = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Main.run(Stream.concat(Stream.of("print", "--term", file.toString(), "--out", out.toString()), Stream.of(more)).toArray(String[]::new),
                new PrintWriter(console), new PrintWriter(err));
        return new Said(status, console.toString(), err.toString());
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    private Map<Path, Long> written() throws IOException {
        Map<Path, Long> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.put(file, Files.getLastModifiedTime(file).toMillis());
            }
        }
        return all;
    }

    /** 20.0 mL × 0.0350 mol/L × 3 / 0.1032 mol/L = 20.35 mL: the titrant's real strength moves the key's answers. */
    @Test
    void aSectionHasItsOwnFolderItsRoomAndTheValuesOfItsDay() throws IOException {
        Said said = print(FRONT + MON + "```section Tue\ngroups: 5\n```\n");
        assertEquals(0, said.status(), said.err());
        String key = text(out.resolve("Mon-A/acid-in-a-descaler-key.pdf"));
        assertTrue(key.contains("20.35"), key);
        assertTrue(key.contains("Mon-A") && key.contains("Fennick Quay"), key);
        assertTrue(text(out.resolve("Tue/acid-in-a-descaler-key.pdf")).contains("21.00"));
        assertFalse(Files.exists(out.resolve("Mon-A/acid-in-a-descaler-safety.pdf")));
    }

    /** Three groups: one key, three handouts, each on sheets of its own. */
    @Test
    void thePacketHoldsEveryCopyAndTheTableCountsThem() throws IOException {
        Said said = print(FRONT + MON);
        try (PDDocument packet = Loader.loadPDF(out.resolve("Mon-A/Mon-A-packet.pdf").toFile());
                PDDocument key = Loader.loadPDF(out.resolve("Mon-A/acid-in-a-descaler-key.pdf").toFile());
                PDDocument handout = Loader.loadPDF(out.resolve("Mon-A/acid-in-a-descaler-handout.pdf").toFile())) {
            int even = key.getNumberOfPages() + key.getNumberOfPages() % 2 + 3 * (handout.getNumberOfPages() + handout.getNumberOfPages() % 2);
            assertEquals(even, packet.getNumberOfPages());
            assertTrue(said.out().matches("(?s).*\\nall +" + even / 2 + "\\R.*"), said.out());
        }
        assertTrue(said.out().matches("(?s).*Mon-A +acid-in-a-descaler-handout +2 +3 +3\\R.*"), said.out());
    }

    @Test
    void aHandoutForEachStudentOrOneForAll() throws IOException {
        String size = "group size: 4\n";
        assertTrue(print(FRONT + MON.replace("groups: 3\n", "groups: 3\n" + size + "copies: each student\n")).out().matches("(?s).*-handout +2 +12 +12\\R.*"));
        assertTrue(print(FRONT + MON.replace("groups: 3\n", "groups: 3\n" + size + "copies: one\n")).out().matches("(?s).*-handout +2 +1 +1\\R.*"));
    }

    @Test
    void printedAgainNothingIsWritten() throws IOException {
        print(FRONT + MON);
        Map<Path, Long> before = written();
        Said again = print(FRONT + MON);
        assertEquals(before, written());
        assertTrue(again.out().contains("unchanged"), again.out());
    }

    @Test
    void whatIsWrongInOneSectionIsToldAtItsLineAndTheOthersPrint() throws IOException {
        Said said = print(FRONT + MON + "```section Bad\ngroups: 0\ndate: 2041-02-30\nspare: -5 %\n```\n\n```section Lost\nprocedures: rust-in-a-jar\n```\n");
        assertEquals(1, said.status());
        for (String place : new String[] {"term.md:16:9: error", "term.md:17:7: error", "term.md:18:8: error", "term.md:22:13: error"}) {
            assertTrue(said.err().contains(place), place + "\n" + said.err());
        }
        assertTrue(Files.isRegularFile(out.resolve("Mon-A/acid-in-a-descaler-handout.pdf")));
        assertFalse(Files.exists(out.resolve("Bad")));
        assertFalse(Files.exists(out.resolve("Lost")));
    }

    @Test
    void aSectionThatTheTermDoesNotHaveIsToldWithThoseItHas() throws IOException {
        Said said = print(FRONT + MON, "--section", "Mon-B");
        assertEquals(2, said.status());
        assertTrue(said.err().contains("`Mon-A`"), said.err());
        assertFalse(Files.exists(out));
    }

    /** Three shares of two sections: every file once, the same as without shares. */
    @Test
    void sharesAreDisjointAndTogetherWhole() throws IOException {
        String term = FRONT + MON + "```section Tue\ngroups: 2\n```\n";
        print(term);
        Map<Path, Long> whole = written();
        try (Stream<Path> files = Files.walk(out)) {
            for (Path path : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
        print(term, "--part", "1/2");
        assertTrue(Files.exists(out.resolve("Mon-A")) && !Files.exists(out.resolve("Tue")));
        print(term, "--part", "2/2");
        assertEquals(whole.keySet(), written().keySet());
        assertEquals(2, print(term, "--part", "3/2").status());
    }

    /** The folder of procedures may hold its term: it is none of them. */
    @Test
    void aTermAmongItsProceduresIsSteppedOver() throws IOException {
        Files.writeString(folder.resolve("term.md"), FRONT + MON);
        StringWriter console = new StringWriter();
        assertEquals(0, Main.run(new String[] {"proof", folder.toString()}, new PrintWriter(console), new PrintWriter(console)), console.toString());
        assertEquals("clean", console.toString().strip());
    }
}
