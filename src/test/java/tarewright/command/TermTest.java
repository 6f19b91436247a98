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

    @Test
    void commasBetweenProceduresAreToldWithTheSemicolonsThatBelongThere() throws IOException {
        Said said = print("---\nterm: Spring 2041\nprocedures: acid-in-a-descaler, heat-of-neutralisation\n---\n" + MON);
        assertTrue(said.err().contains("semicolons between procedures: `acid-in-a-descaler; heat-of-neutralisation`"), said.err());
        assertFalse(Files.exists(out.resolve("Mon-A")));
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

    /** Two procedures of a class each have an alkali: the reading of one bottle must not become the strength of both. */
    @Test
    void aValueThatFitsTwoProceduresIsRefusedUntilItSaysWhich() throws IOException {
        Files.copy(Path.of("procedures", "heat-of-neutralisation.md"), folder.resolve("heat-of-neutralisation.md"));
        String both = FRONT.replace("procedures: acid-in-a-descaler", "procedures: acid-in-a-descaler on 2041-02-04; heat-of-neutralisation on 2041-02-11");
        Said refused = print(both + MON);
        assertEquals(Main.ERRORS, refused.status(), refused.err());
        assertTrue(refused.err().contains("day-value-in-several") && refused.err().contains("`strength of alkali in acid-in-a-descaler is 0.1032 mol/L`"), refused.err());
        assertTrue(!Files.exists(out.resolve("Mon-A/acid-in-a-descaler-handout.pdf")));
        Said said = print(both + MON.replace("strength of alkali is", "strength of alkali in acid-in-a-descaler is"));
        assertEquals(Main.CLEAN, said.status(), said.err());
        assertTrue(text(out.resolve("Mon-A/acid-in-a-descaler-key.pdf")).contains("0.1032"));
        assertTrue(!text(out.resolve("Mon-A/heat-of-neutralisation-key.pdf")).contains("0.1032"));
    }

    /** The command line goes before the section, whether or not either of them names the procedure. */
    @Test
    void theCommandLineGoesBeforeAValueThatNamesItsProcedure() throws IOException {
        Said said = print(FRONT + MON.replace("strength of alkali is", "strength of alkali in acid-in-a-descaler is"), "--on-the-day", "strength of alkali is 0.0987 mol/L");
        assertEquals(Main.CLEAN, said.status(), said.err());
        String key = text(out.resolve("Mon-A/acid-in-a-descaler-key.pdf"));
        assertTrue(key.contains("0.0987") && !key.contains("0.1032"), key);
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

    /** Two shares of two sections: every file once, the same as without shares but for what is of the whole term. */
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
        assertTrue(whole.keySet().remove(out.resolve("term-copies.csv")), whole.toString());
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

    /** The shelf and the sections in files of their own: what is wrong in one is told at its line of that file, and they are no procedures. */
    @Test
    void stockAndSectionsMayStandInFilesOfTheirOwnBesideTheTerm() throws IOException {
        Files.writeString(folder.resolve("fizz.md"), Beginning.GAS.text("Fizz"));
        String stock = "```stock concentrated hydrochloric acid\nsolute: HCl\nstrength: 30 % w/w\ndensity: 1.15 g/mL\npack: 1 L\non hand: 0.2 L\n```\n";
        String front = FRONT.replace("acid-in-a-descaler", "fizz").replace("handout; key", "prep");
        Files.writeString(folder.resolve("stock.md"), stock);
        Files.writeString(folder.resolve("classes.md"), "# Our classes\n\n```section Wed\ngroups: 4\n```\n");
        Said said = print(front);
        assertEquals(0, said.status(), said.err());
        assertTrue(text(out.resolve("Wed/fizz-prep.pdf")).contains("30"), said.out());
        assertEquals("clean", run("proof", folder.toString()).out().strip());
        Files.writeString(folder.resolve("stock.md"), stock.replace("on hand: 0.2 L", "on hnad: 0.2 L"));
        Files.writeString(folder.resolve("classes.md"), "---\npaper: A4\n---\n\n```section Wed\ngroups: 0\n```\n");
        said = print(front + "```section Wed\n```\n");
        assertEquals(1, said.status());
        for (String place : new String[] {"stock.md:6:1: error", "classes.md:2:1: error", "classes.md:6:9: error", "classes.md:5:12: error"}) {
            assertTrue(said.err().contains(place), place + "\n" + said.err());
        }
    }

    /**
     * A bottle of the shelf under its Spanish name is what the Spanish procedure's recipe starts from, though the term names no language; by hand: 2 L of 0.1000 mol/L from 1.00 mol/L take
     * 200 mL. The English name does the same.
     */
    @Test
    void aBottleOfTheShelfIsFoundByItsSpanishNameToo() throws IOException {
        Files.copy(Path.of("procedures", "vinagre-gota-a-gota.md"), folder.resolve("vinagre-gota-a-gota.md"));
        for (String name : new String[] {"hidróxido de sodio", "sodium hydroxide"}) {
            Files.writeString(folder.resolve("stock.md"), "```stock sosa concentrada\nsolute: " + name + "\nstrength: 1.00 mol/L\npack: 1 L\non hand: 0.1 L\n```\n");
            String source = Files.readString(Path.of("procedures", "vinagre-gota-a-gota.md"));
            Files.writeString(folder.resolve("vinagre-gota-a-gota.md"), source.replace("for: vinagre\n", "for: vinagre\nmade from: sosa concentrada\n"));
            Said said = print(FRONT.replace("acid-in-a-descaler", "vinagre-gota-a-gota").replace("handout; key", "prep") + "```section Lunes\ngroups: 12\n```\n");
            assertEquals(0, said.status(), said.err());
            String prep = text(out.resolve("Lunes/vinagre-gota-a-gota-prep.pdf")).replaceAll("[\\s\\u202F]+", " ");
            assertTrue(prep.contains("sosa concentrada (1,00 mol/L) 200 mL") || prep.contains("200 mL de sosa concentrada"), prep);
            assertTrue(text(out.resolve("term-order.pdf")).contains("sosa concentrada"), said.out());
        }
    }

    /** A section or a bottle that two files of a term have: told in the second, with file and line of the first. */
    @Test
    void aNameOverTwoFilesIsToldWithTheFileAndLineOfTheOther() throws IOException {
        Files.writeString(folder.resolve("classes.md"), "# Our classes\n\n```section Mon-A\ngroups: 4\n```\n");
        Said said = print(FRONT + MON);
        assertEquals(1, said.status());
        String there = folder.resolve("term.md") + ":8";
        assertTrue(said.err().contains("classes.md:3:12: error: the section `Mon-A` stands in `" + there + "` too"), said.err());
        assertTrue(said.err().lines().anyMatch(l -> l.contains(there + ": ") && l.contains("```section Mon-A")), said.err());
    }

    /** By hand: 0 and 501 groups are outside 1 to 500; a class of 500 is read. */
    @Test
    void groupsOutsideTheRangeAndUnknownFieldsAreToldAtTheirLine() throws IOException {
        Said said = print(FRONT.replace("school:", "shcool:") + "```section A\ngroups: 0\n```\n\n```section B\ngroups: 501\n```\n\n```section C\nspare: -5 %\n```\n\n```section D\ngruops: 3\n```\n");
        for (String told : new String[] {"term.md:3:1: error: ", "term.md:9:9: error: `0` is not a whole number from 1 to 500", "term.md:13:9: error: `501` is not a whole number from 1 to 500",
            "term.md:17:8: error: `-5 %` in `spare` should be 0 % or more", "term.md:21:1: error: "}) {
            assertTrue(said.err().contains(told), told + "\n" + said.err());
        }
        assertEquals(0, run("proof", "--term", Files.writeString(folder.resolve("many.md"), FRONT + "```section A\ngroups: 500\nspare: 0 %\n```\n").toString()).status());
    }

    /** Ammonia from an alkali, and an acid: in one lesson they are told apart, in two they are not; where no day is told, that is said. */
    @Test
    void proceduresOfOneDayShareALessonAndThoseOfTwoDaysDoNot() throws IOException {
        Files.copy(Path.of("procedures", "oxygen-from-peroxide.md"), folder.resolve("oxygen-from-peroxide.md"));
        Files.copy(Path.of("procedures", "hydrogen-from-magnesium.md"), folder.resolve("hydrogen-from-magnesium.md"));
        String both = "```section Mon\ndate: 2041-02-04\nprocedures: oxygen-from-peroxide; hydrogen-from-magnesium\n```\n";
        String together = proof(both);
        assertTrue(together.contains("must not meet") || together.contains("must-not-meet") || together.contains("apart"), together);
        assertTrue(together.contains("`Mon` does not say on which day each procedure is done, so they were taken to share a lesson"), together);
        String apart = proof(both.replace("oxygen-from-peroxide;", "oxygen-from-peroxide on 2041-02-04;").replace("hydrogen-from-magnesium\n", "hydrogen-from-magnesium on 2041-02-11\n"));
        assertEquals("clean", apart.strip());
        String sameDay = proof(both.replace("oxygen-from-peroxide;", "oxygen-from-peroxide on 2041-02-04;").replace("hydrogen-from-magnesium\n", "hydrogen-from-magnesium on 2041-02-04\n"));
        assertFalse(sameDay.contains("does not say"), sameDay);
        assertFalse(sameDay.contains("clean"), sameDay);
        assertTrue(proof(both.replace("magnesium\n", "magnesium on 2041-02-30\n")).contains("there is no day `2041-02-30`"));
    }

    private String proof(String section) throws IOException {
        return run("proof", "--term", Files.writeString(folder.resolve("term.md"), FRONT + section).toString()).out();
    }

    /** Each procedure's own day is the one on its sheets. */
    @Test
    void eachProcedureHasItsOwnDay() throws IOException {
        print(FRONT.replace("handout; key", "prep") + MON.replace("groups: 3\n", "groups: 3\nprocedures: acid-in-a-descaler on 2041-03-11\n"));
        assertTrue(text(out.resolve("Mon-A/acid-in-a-descaler-prep.pdf")).contains("2041-03-11"));
    }

    /** A term that does not say which documents prints all that teacher, students and technician need; the copies are a file to be opened in a spreadsheet. */
    @Test
    void aTermThatNamesNoDocumentsPrintsAllFiveAndTheCopiesAreAFile() throws IOException {
        Said said = print(FRONT.replace("documents: handout; key\n", "") + MON);
        assertEquals(0, said.status(), said.err());
        for (String kind : new String[] {"handout", "key", "safety", "prep", "labels"}) {
            assertTrue(Files.isRegularFile(out.resolve("Mon-A/acid-in-a-descaler-" + kind + ".pdf")), kind);
        }
        String csv = Files.readString(out.resolve("term-copies.csv"));
        assertTrue(csv.startsWith("section,document,pages,copies,sheets\r\n") && csv.contains("Mon-A,acid-in-a-descaler-handout,2,3,3\r\n"), csv);
        assertEquals(new tarewright.term.CopyTable(java.util.List.of(new tarewright.term.Copying("=1+1", "a, \"b\"", 3, 2))).csv(),
                "section,document,pages,copies,sheets\r\n\"=1+1\",\"a, \"\"b\"\"\",3,2,4\r\nall,,,,4\r\n");
    }

    /** A mistake of our own while one section is worked out: told as ours, and the other section is printed. */
    @Test
    void aMistakeOfOursInOneSectionEndsNoOther() throws IOException {
        Files.writeString(folder.resolve("broken.md"), "never read");
        Path term = Files.writeString(folder.resolve("term.md"), FRONT.replace("handout; key", "handout") + "```section Broken\nprocedures: broken\n```\n\n" + MON);
        Disk disk = new Disk();
        tarewright.text.Outside failing = (tarewright.text.Outside) java.lang.reflect.Proxy.newProxyInstance(getClass().getClassLoader(), new Class<?>[] {tarewright.text.Outside.class}, (self, method, arguments) -> {
            if (method.getName().equals("read") && armed && ((Path) arguments[0]).endsWith("broken.md")) {
                throw new IllegalStateException("on purpose");
            }
            try {
                return method.invoke(disk, arguments);
            } catch (java.lang.reflect.InvocationTargetException e) {
                throw e.getCause();
            }
        });
        StringWriter console = new StringWriter();
        StringWriter err = new StringWriter();
        TermWork work = TermWork.of(term, tarewright.setting.Overrides.NONE, failing);
        armed = true;
        int status = new TermPrint(work, work.kinds(), java.util.Set.of(), false, out, tarewright.wording.FindingText.in("en"))
                .print(work.sections(java.util.List.of()), true, new PrintWriter(console), new PrintWriter(err));
        assertEquals(1, status);
        assertTrue(err.toString().contains("section Broken: this is a mistake in Tarewright itself, not in your file (IllegalStateException"), err.toString());
        assertTrue(Files.isRegularFile(out.resolve("Mon-A/acid-in-a-descaler-handout.pdf")), console.toString());
        assertFalse(Files.exists(out.resolve("term-copies.csv")));
    }

    private boolean armed;
}
