package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a teacher is told of a term before she copies. The term is invented, its procedures are the library's; what should be named is read off {@code figures}. */
class ChangesTermTest {
    private static final String TERM = """
            ---
            term: Spring 2041
            documents: handout; key
            procedures: hydrogen-from-magnesium; acid-in-a-descaler
            ---

            ```section Mon-A
            groups: 14
            date: 2041-02-04
            ```

            ```section Tue
            groups: 6
            date: 2041-02-05
            room: 24 °C; 99.6 kPa
            ```
            """;
    @TempDir
    private Path folder;

    private record Said(int status, String out, String err) {
    }

    private static Said run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Main.run(arguments, new PrintWriter(out, true), new PrintWriter(err, true));
        return new Said(status, out.toString(), err.toString());
    }

    private Said term(String command, String... more) {
        return run(Stream.concat(Stream.of(command, "--term", folder.resolve("term.md").toString()), Stream.of(more)).toArray(String[]::new));
    }

    private Said onTerm(String command, String... more) {
        return List.of(more).contains("--out") ? term(command, more) : term(command, Stream.concat(Stream.of("--out", folder.resolve("out").toString()), Stream.of(more)).toArray(String[]::new));
    }

    private void lay(String term, String... procedures) throws IOException {
        Files.writeString(folder.resolve("term.md"), term);
        for (String name : procedures) {
            Files.copy(Path.of("procedures", name + ".md"), folder.resolve(name + ".md"));
        }
    }

    private void change(String procedure, String from, String to) throws IOException {
        Path file = folder.resolve(procedure + ".md");
        String text = Files.readString(file);
        assertTrue(text.contains(from), "the library's procedure reads otherwise now: " + from);
        Files.writeString(file, text.replace(from, to));
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder.resolve("out"))) {
            for (Path file : files.filter(Files::isRegularFile).filter(f -> !f.endsWith(".lock")).toList()) {
                all.put(folder.resolve("out").relativize(file).toString().replace('\\', '/'), Files.getLastModifiedTime(file) + " " + Files.readAllBytes(file).length
                        + " " + java.util.Arrays.hashCode(Files.readAllBytes(file)));
            }
        }
        return all;
    }

    /** {@code section/procedure/block/figure}: what stands on paper. */
    private Map<String, String> figures() throws IOException {
        Map<String, String> all = new TreeMap<>();
        for (String line : term("figures").out().lines().toList()) {
            JsonNode node = new ObjectMapper().readTree(line);
            String at = node.get("section").asText() + "/" + node.get("procedure").asText() + "/";
            node.get("quantities").properties().forEach(q -> q.getValue().get("figures").properties()
                    .forEach(f -> all.put(at + q.getKey(), all.getOrDefault(at + q.getKey(), "") + f.getKey() + " " + f.getValue().get("shown").asText() + "; ")));
            node.get("answers").forEach(a -> all.put(at + "question " + a.get("question").asText(), a.path("value").path("shown").asText()));
        }
        return all;
    }

    @Test
    void oneStrengthChangedRewritesOnlyItsProcedureAndEveryFigureThatMovedIsNamedAndNothingElse() throws IOException {
        lay(TERM, "hydrogen-from-magnesium", "acid-in-a-descaler");
        assertEquals(0, onTerm("print").status());
        Map<String, String> printed = files();
        assertTrue(onTerm("changes").out().contains("acid-in-a-descaler: unchanged in every section"), onTerm("changes").out());
        Map<String, String> before = figures();
        change("hydrogen-from-magnesium", "strength: 0.50 mol/L", "strength: 1.0 mol/L");
        Map<String, String> now = figures();
        Set<String> moved = before.keySet().stream().filter(k -> !before.get(k).equals(now.get(k))).collect(Collectors.toCollection(TreeSet::new));
        assertTrue(moved.stream().anyMatch(m -> m.startsWith("Tue/hydrogen")) && moved.stream().noneMatch(m -> m.contains("descaler")), moved.toString());
        Set<String> named = new TreeSet<>();
        for (String line : onTerm("changes", "--json").out().lines().toList()) {
            JsonNode node = new ObjectMapper().readTree(line);
            for (JsonNode change : node.path("changes")) {
                String about = change.at("/fact/about").asText();
                String of = change.at("/fact/of").asText();
                if (about.equals("quantity") || about.equals("question") && change.at("/fact/what").asText().equals("answer")) {
                    named.add(node.get("section").asText() + "/" + node.get("procedure").asText() + "/" + (about.equals("question") ? "question " : "") + of);
                }
            }
        }
        assertEquals(moved, named);
        String said = onTerm("changes").out();
        assertEquals(1, said.lines().filter(l -> l.contains("strength 0.50 → 1.0 mol/L")).count(), said);
        assertTrue(said.indexOf("in every section:") < said.indexOf("strength 0.50 → 1.0 mol/L"), said);
        assertTrue(said.indexOf("strength 0.50 → 1.0 mol/L") < said.indexOf("in Mon-A:") && said.indexOf("in Mon-A:") < said.indexOf("in Tue:"), said);
        assertEquals(printed, files(), "changes writes nothing");

        assertEquals(0, onTerm("print").status());
        Map<String, String> after = files();
        Set<String> rewritten = after.keySet().stream().filter(f -> !after.get(f).equals(printed.get(f))).collect(Collectors.toCollection(TreeSet::new));
        // A key of another length moves the table of copies too.
        rewritten.remove("term-copies.csv");
        assertEquals(Set.of("Mon-A/Mon-A-packet.pdf", "Tue/Tue-packet.pdf", "Mon-A/hydrogen-from-magnesium-handout.pdf", "Mon-A/hydrogen-from-magnesium-key.pdf",
                "Mon-A/manifest/hydrogen-from-magnesium.json", "Tue/hydrogen-from-magnesium-handout.pdf", "Tue/hydrogen-from-magnesium-key.pdf",
                "Tue/manifest/hydrogen-from-magnesium.json"), rewritten);
        assertEquals(0, onTerm("print").status());
        assertEquals(after, files(), "printing again writes nothing");
    }

    private static String paper(Path pdf) throws IOException {
        try (var document = org.apache.pdfbox.Loader.loadPDF(pdf.toFile())) {
            return new org.apache.pdfbox.text.PDFTextStripper().getText(document).replaceAll("[\\s\\u202F]+", " ");
        }
    }

    private static String ofTheWhole(String said) {
        return said.substring(said.indexOf("term, order list and prep sheet of the term:")).stripTrailing();
    }

    /**
     * By hand: 37 % w/w of 1.18 g/mL and 36.46 g/mol are 11.97 mol/L. 0.50 mol/L in 500 mL takes 20.88 mL, in 250 mL 10.44 mL; 1.0 mol/L in 250 mL 20.88 mL, in 100 mL 8.35 mL (on a cylinder to
     * 0.2 mL, below 10 mL to 0.1 mL: 20.8, 10.4, 8.4). Less 10 mL on the shelf that is 21.2 mL, two packs of 20 mL, before, and 19.2 mL, one pack, now. Half the volume of acid is left as waste: the ribbon needs the same amount.
     */
    @Test
    void whatMovesInTheOrderListAndOnTheTermsPrepSheetIsToldOnceAndNothingElse() throws IOException {
        String term = TERM.replace("handout; key", "prep") + "\n```stock concentrated hydrochloric acid\nsolute: HCl\nstrength: 37 % w/w\ndensity: 1.18 g/mL\npack: 20 mL\n"
                + "on hand: 10 mL\nprice: 31.40 EUR per pack\n```\n";
        lay(term, "hydrogen-from-magnesium", "acid-in-a-descaler");
        String first = onTerm("changes").out();
        assertEquals("term, order list and prep sheet of the term: not printed before", ofTheWhole(first));
        onTerm("print");
        assertEquals("term, order list and prep sheet of the term: unchanged", ofTheWhole(onTerm("changes").out()));
        change("hydrogen-from-magnesium", "strength: 0.50 mol/L", "strength: 1.0 mol/L");
        assertEquals("""
                term, order list and prep sheet of the term:
                  prep sheet of the term, acid of hydrogen-from-magnesium for Mon-A: strength 0.50 → 1.0 mol/L; needed 462 → 231 mL; take 20.8 mL in 500 mL → 20.8 mL in 250 mL
                  prep sheet of the term, acid of hydrogen-from-magnesium for Tue: strength 0.50 → 1.0 mol/L; needed 192 → 99 mL; take 10.4 mL in 250 mL → 8.4 mL in 100 mL
                  order list, concentrated hydrochloric acid: needed 31.2 → 29.2 mL; packs to buy 2 → 1; cost 62.80 → 31.40 EUR
                  order list: in all 62.80 → 31.40 EUR
                  prep sheet of the term, waste, dilute acid waste: about 0.59 → 0.30 L""", ofTheWhole(onTerm("changes").out()));
        Map<String, String> printed = files();
        assertEquals(0, onTerm("print").status());
        assertEquals("term, order list and prep sheet of the term: unchanged", ofTheWhole(onTerm("changes").out()));
        String order = paper(folder.resolve("out/term-order.pdf"));
        assertTrue(order.contains("29.2 mL 10 mL 1 ×") && order.contains("31.40 EUR"), order);
        String prep = paper(folder.resolve("out/term-prep.pdf"));
        assertTrue(prep.contains("231 mL") && prep.contains("99 mL") && prep.contains("8.4 mL") && prep.contains("0.30 L"), prep);
        Map<String, String> after = files();
        assertTrue(java.util.stream.Stream.of("term-order.pdf", "term-prep.pdf", "manifest/term.json").noneMatch(f -> after.get(f).equals(printed.get(f))));
        assertEquals(0, onTerm("print").status());
        assertEquals(after, files(), "printing again writes nothing");
        Files.write(folder.resolve("out/term-order.pdf"), new byte[] {1});
        assertTrue(onTerm("changes").out().endsWith("altered or deleted since it was printed: term-order.pdf" + System.lineSeparator()), onTerm("changes").out());
    }

    /** Words alone: the sheets get another code and no figure moves; a term that prints no prep sheet has neither, and nothing is told of them. */
    @Test
    void wordsMoveNoFigureOfTheWholeTermAndWithoutAPrepSheetNothingIsTold() throws IOException {
        lay(TERM.replace("handout; key", "prep"), "hydrogen-from-magnesium", "acid-in-a-descaler");
        onTerm("print");
        change("acid-in-a-descaler", "Stand the flask on the white tile.", "Stand the flask on the tile.");
        assertEquals("term, order list and prep sheet of the term: no figure moves\n  what differs: acid-in-a-descaler", ofTheWhole(onTerm("changes").out()).replace("\r\n", "\n"));
        Files.writeString(folder.resolve("term.md"), TERM);
        assertEquals(0, onTerm("print", "--out", folder.resolve("other").toString()).status());
        assertFalse(term("changes", "--out", folder.resolve("other").toString()).out().contains("of the term"));
    }

    /** One group more on Tuesday moves nothing on Monday; a section that left the term is told, and so is a file altered by hand. */
    @Test
    void whatMovesInOneSectionIsToldUnderItAndWhatLeftTheTermIsTold() throws IOException {
        lay(TERM, "hydrogen-from-magnesium", "acid-in-a-descaler");
        onTerm("print");
        Files.writeString(folder.resolve("term.md"), TERM.replace("groups: 6", "groups: 7"));
        Files.write(folder.resolve("out/Mon-A/acid-in-a-descaler-key.pdf"), new byte[] {1});
        String said = onTerm("changes").out();
        assertTrue(said.contains("hydrogen-from-magnesium: unchanged in Mon-A; moves in Tue"), said);
        assertTrue(said.contains("class and room: groups 6 → 7"), said);
        assertTrue(said.contains("altered or deleted since it was printed: acid-in-a-descaler-key.pdf"), said);
        Files.writeString(folder.resolve("term.md"), TERM.substring(0, TERM.indexOf("```section Tue")));
        assertTrue(onTerm("changes").out().contains("unchanged in Mon-A; printed before in Tue, no longer in the term"), onTerm("changes").out());
        Files.writeString(folder.resolve("term.md"), TERM.replace("2041-02-05", "2041-02-06"));
        assertTrue(onTerm("changes").out().contains("date 2041-02-05 → 2041-02-06"), onTerm("changes").out());
    }

    /** 0.50 and 0.5 are one value; what is known less well widens what is accepted, and that is a change. */
    @Test
    void digitsTypedOtherwiseAreNoChangeOfValue() throws IOException {
        Path file = Files.copy(Path.of("procedures/hydrogen-from-magnesium.md"), folder.resolve("hydrogen-from-magnesium.md"));
        String out = folder.resolve("out").toString();
        run("print", file.toString(), "--out", out);
        change("hydrogen-from-magnesium", "strength: 0.50 mol/L", "strength: 0.500 mol/L");
        String said = run("changes", file.toString(), "--out", out).out();
        assertTrue(said.contains("strength 0.50 mol/L now written 0.500 mol/L, the same value"), said);
        assertFalse(said.contains("0.50 →"), said);
    }

    /**
     * Two of the five amounts that are dealt: 20.0 to 22.0 mL leaves four handouts as they are and moves the fourth; the answer of one handout is named with its number. By hand:
     * 0.50 mol/L × 5.0 mL × 100.09 g/mol = 0.250 g for the first handout; with 6.0 mL it is 0.300 g.
     */
    @Test
    void everyHandOfDealtAmountsIsToldAndAlikeOnesOnce() throws IOException {
        Path file = Files.copy(Path.of("procedures/turning-point-of-chalk.md"), folder.resolve("turning-point-of-chalk.md"));
        String out = folder.resolve("out").toString();
        run("print", file.toString(), "--out", out, "--only", "handout");
        change("turning-point-of-chalk", "vary: 5.0 mL; 10.0 mL; 15.0 mL; 20.0 mL", "vary: 6.0 mL; 10.0 mL; 15.0 mL; 22.0 mL");
        String said = run("changes", file.toString(), "--out", out).out();
        assertTrue(said.contains("carbonate, handout 1: volume 5.0 → 6.0 mL"), said);
        assertTrue(said.contains("carbonate, handout 4: volume 20.0 → 22.0 mL"), said);
        assertTrue(said.contains("chalk, handout 1: mass 0.250 → 0.300 g"), said);
        assertFalse(said.contains("handout 2") || said.contains("handout 3") || said.contains("handout 5"), said);
        assertEquals(1, said.lines().filter(l -> l.contains("class total")).count(), said);
    }

    /** The range is that of the key: every range that {@code changes} tells stands on the key that is printed then. */
    @Test
    void theAcceptedRangeIsToldAsTheKeyRoundsIt() throws IOException {
        Path file = Files.copy(Path.of("procedures/acid-in-a-descaler.md"), folder.resolve("acid-in-a-descaler.md"));
        String out = folder.resolve("out").toString();
        run("print", file.toString(), "--out", out);
        change("acid-in-a-descaler", "strength: 0.0350 mol/L", "strength: 0.0380 mol/L");
        JsonNode told = new ObjectMapper().readTree(run("changes", file.toString(), "--out", out, "--json").out());
        run("print", file.toString(), "--out", out);
        String key;
        try (var pdf = org.apache.pdfbox.Loader.loadPDF(folder.resolve("out/acid-in-a-descaler-key.pdf").toFile())) {
            key = new org.apache.pdfbox.text.PDFTextStripper().getText(pdf).replaceAll("[\\s\\u202F]+", " ");
        }
        int ranges = 0;
        for (JsonNode change : told.get("changes")) {
            if (change.at("/fact/what").asText().equals("accepted")) {
                ranges++;
                assertTrue(key.contains(change.get("now").get(0).asText()), change + "\n" + key);
            }
        }
        assertTrue(ranges >= 2, told.toString());
    }

    /** Another bottle on the shelf moves the recipe, by hand: 30 % w/w of 1.15 g/mL is 9.46 mol/L; and the prep sheet's figures are named. */
    @Test
    void recipesAreToldAndWhatMustNotMeetIsToldInWords() throws IOException {
        lay(TERM.replace("hydrogen-from-magnesium; acid-in-a-descaler", "fizz"));
        Files.writeString(folder.resolve("fizz.md"), Beginning.GAS.text("Fizz"));
        onTerm("print");
        Files.writeString(folder.resolve("term.md"), TERM.replace("hydrogen-from-magnesium; acid-in-a-descaler", "fizz")
                + "\n```stock concentrated hydrochloric acid\nsolute: HCl\nstrength: 30 % w/w\ndensity: 1.15 g/mL\n```\n");
        String said = onTerm("changes").out();
        assertTrue(said.lines().anyMatch(l -> l.contains("recipe, ") && l.contains("flasks")), said);
        assertTrue(said.contains("stock concentrated hydrochloric acid"), said);
        Path file = Files.copy(Path.of("procedures/ammonia-in-the-hood.md"), folder.resolve("ammonia-in-the-hood.md"));
        run("print", file.toString(), "--out", folder.resolve("alone").toString(), "--only", "handout");
        String manifest = Files.readString(folder.resolve("alone/manifest/ammonia-in-the-hood.json"));
        assertTrue(manifest.contains("\"calcium oxide and water (spattering, caustic mist)\""), "common practice, no source: quicklime is kept from water");
    }
}
