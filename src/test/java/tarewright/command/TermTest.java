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
        String footer = key.replaceAll("\\s", "");
        assertTrue(footer.contains("Mon-A") && footer.contains("FennickQuay"), key);
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

    /** Five amounts dealt in turn: one copy of the file serves five groups, so ten groups need two. */
    @Test
    void whereAmountsAreDealtACopyServesAGroupOfEach() throws IOException {
        Files.copy(Path.of("procedures", "turning-point-of-chalk.md"), folder.resolve("turning-point-of-chalk.md"));
        Said said = print(FRONT.replace("handout; key", "handout") + MON.replace("groups: 3\n", "groups: 10\nprocedures: turning-point-of-chalk\n")
                .replace("on the day: strength of alkali is 0.1032 mol/L\n", ""));
        assertTrue(said.out().matches("(?s).*turning-point-of-chalk-handout +10 +2 +10\\R.*"), said.out() + said.err());
    }

    /** The term's sheets of labels go before what a procedure says: one label on a sheet makes as many pages as bottles. */
    @Test
    void labelsArePrintedOnTheTermsPaper() throws IOException {
        String front = FRONT.replace("handout; key", "labels");
        print(front + MON);
        int usual;
        try (PDDocument labels = Loader.loadPDF(out.resolve("Mon-A/acid-in-a-descaler-labels.pdf").toFile())) {
            usual = labels.getNumberOfPages();
        }
        print(front.replace("documents:", "labels: 1 row; 1 column\ndocuments:") + MON);
        try (PDDocument labels = Loader.loadPDF(out.resolve("Mon-A/acid-in-a-descaler-labels.pdf").toFile())) {
            assertTrue(labels.getNumberOfPages() >= 3 && labels.getNumberOfPages() > usual, usual + " " + labels.getNumberOfPages());
        }
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

    private Said run(String... arguments) {
        StringWriter console = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Main.run(arguments, new PrintWriter(console), new PrintWriter(err));
        return new Said(status, console.toString(), err.toString());
    }

    /**
     * 0.330 g / 84.007 g/mol = 3.93 mmol of gas: 94 mL at 20 °C and 101.3 kPa, 110 mL at 30 °C and 90 kPa (p V = n R T), and the syringe holds 100 mL. Each room is asked, and the one that is
     * too warm is named.
     */
    @Test
    void aGasMustFitInTheRoomOfEverySection() throws IOException {
        Files.writeString(folder.resolve("fizz.md"), Beginning.GAS.text("Fizz").replace("for: carbon dioxide", "mass: 0.330 g").replace("wanted: 50 mL\n", ""));
        Path term = Files.writeString(folder.resolve("term.md"), FRONT.replace("acid-in-a-descaler", "fizz") + "```section Cool\nroom: 20 °C; 101.3 kPa\n```\n\n"
                + "```section Hot\nroom: 30 °C; 90 kPa\n```\n");
        Said proof = run("proof", "--short", "--term", term.toString());
        assertEquals(1, proof.status(), proof.out());
        assertTrue(proof.out().contains("Section Hot:"), proof.out());
        assertTrue(proof.out().substring(proof.out().indexOf("Section Hot:")).contains("holds 100 mL"), proof.out());
        assertFalse(proof.out().substring(0, proof.out().indexOf("Section Hot:")).contains("error"), proof.out());
        Said figures = run("figures", "--term", term.toString());
        assertEquals(2, figures.out().lines().count());
        assertTrue(figures.out().lines().anyMatch(l -> l.contains("\"section\":\"Hot\"") && l.contains("over-capacity")), figures.out());
    }

    /** 30 % w/w and 1.15 g/mL is 9.46 mol/L, not the 12 mol/L of the usual bottle: the recipe starts from what is on the shelf. Then the order list takes off what is there. */
    @Test
    void recipesStartFromTheTermsBottlesAndTheOrderTakesOffWhatIsThere() throws IOException {
        Files.writeString(folder.resolve("fizz.md"), Beginning.GAS.text("Fizz"));
        String stock = "```stock concentrated hydrochloric acid\nsolute: HCl\nstrength: 30 % w/w\ndensity: 1.15 g/mL\npack: 1 L\non hand: 0.2 L\n```\n";
        String term = FRONT.replace("acid-in-a-descaler", "fizz").replace("handout; key", "prep") + "```section Mon\ngroups: 10\n```\n\n";
        Path file = folder.resolve("term.md");
        Said printed = print(term + stock);
        assertEquals(0, printed.status(), printed.err());
        String prep = text(out.resolve("Mon/fizz-prep.pdf"));
        assertTrue(prep.contains("30"), prep);
        assertTrue(Files.isRegularFile(out.resolve("term-order.pdf")), printed.out());
        String order = text(out.resolve("term-order.pdf"));
        assertTrue(order.contains("concentrated hydrochloric acid"), order);
        String shelf = run("figures", "--term", file.toString()).out();
        print(term);
        String usual = run("figures", "--term", file.toString()).out();
        double fromShelf = taken(shelf);
        double fromUsual = taken(usual);
        assertEquals(12.0 / 9.46, fromShelf / fromUsual, 0.06);
    }

    private static double taken(String json) throws IOException {
        com.fasterxml.jackson.databind.JsonNode recipes = new com.fasterxml.jackson.databind.ObjectMapper().readTree(json).path("recipes");
        com.fasterxml.jackson.databind.JsonNode taken = recipes.findValue("take");
        return taken.findValue("value").asDouble();
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
