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
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a person runs it: what it says, what it writes, how it ends. The procedure is invented. */
class CommandTest {
    private static final String GOOD = """
            ---
            title: Hydrogen on a small scale
            groups: 14
            room: 20 °C; 101.325 kPa
            ---

            ```apparatus
            syringe: gas syringe; capacity 100 mL; graduation 1 mL; one per group
            balance: balance; reads to 0.001 g; one per class
            cylinder: measuring cylinder, 50 mL; graduation 1 mL; one per group
            ```

            ```reaction dissolving
            Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)
            ```

            ```gas hydrogen
            substance: hydrogen
            made by: dissolving
            wanted: 80 mL
            in: syringe
            ```

            ```solid ribbon
            substance: magnesium
            for: hydrogen
            weigh with: balance
            ```

            ```solution acid
            solute: HCl
            strength: 0.5 mol/L
            excess over: ribbon
            at least: 1.5 times
            measure with: cylinder
            ```

            ```waste
            of: dissolving
            into: dilute acid waste
            ```

            ```settled
            finding: too-hot
            because: the flask stands in cold water
            ```

            1. Weigh {ribbon} of magnesium.
            2. Measure {acid} of {label of acid}.

            1. How much hydrogen did you make?

               ```answer
               value: moles of hydrogen
               marks: 2
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

    private String file(String name, String text) throws IOException {
        Path path = folder.resolve(name);
        Files.writeString(path, text);
        return path.toString();
    }

    private JsonNode figures(String... arguments) throws IOException {
        return new ObjectMapper().readTree(run(arguments).out());
    }

    @Test
    void aGoodProcedureGivesThreeDocumentsAndATable() throws IOException {
        String good = file("small-hydrogen.md", GOOD);
        Said said = run("print", good, "--out", folder.resolve("out").toString());
        assertEquals(0, said.status(), said.err());
        for (String kind : List.of("handout", "key", "safety")) {
            byte[] pdf = Files.readAllBytes(folder.resolve("out/small-hydrogen-" + kind + ".pdf"));
            assertEquals("%PDF-", new String(pdf, 0, 5, java.nio.charset.StandardCharsets.ISO_8859_1));
        }
        assertTrue(said.out().contains("small-hydrogen"), said.out());
        assertTrue(said.out().contains("clean"), said.out());
    }

    /** The same file printed again gives the same bytes; with other answers the handout still does, apart from the version code. */
    @Test
    void printingAgainGivesTheSameBytes() throws IOException {
        String good = file("small-hydrogen.md", GOOD);
        run("print", good, "--out", folder.resolve("a").toString());
        run("print", good, "--out", folder.resolve("b").toString());
        for (String kind : List.of("handout", "key", "safety")) {
            assertArrayEquals(Files.readAllBytes(folder.resolve("a/small-hydrogen-" + kind + ".pdf")),
                    Files.readAllBytes(folder.resolve("b/small-hydrogen-" + kind + ".pdf")));
        }
    }

    @Test
    void anErrorPrintsNothingAndLeavesTheEarlierFiles() throws IOException {
        String good = file("small-hydrogen.md", GOOD);
        String out = folder.resolve("out").toString();
        run("print", good, "--out", out);
        byte[] before = Files.readAllBytes(folder.resolve("out/small-hydrogen-key.pdf"));
        file("small-hydrogen.md", GOOD.replace("wanted: 80 mL", "wanted: 80 Ml").replace("balance\n", "balence\n"));
        Said said = run("print", good, "--out", out);
        assertEquals(1, said.status());
        assertTrue(said.err().contains("unknown-unit"), said.err());
        assertTrue(said.err().contains("unknown-name"), said.err());
        assertTrue(said.err().contains("^^"), said.err());
        assertTrue(said.out().contains("what was there stays"), said.out());
        assertFalse(said.err().contains("\tat "), "a stack trace: " + said.err());
        assertArrayEquals(before, Files.readAllBytes(folder.resolve("out/small-hydrogen-key.pdf")));
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            assertEquals(List.of(".lock", "manifest", "small-hydrogen-handout.pdf", "small-hydrogen-key.pdf", "small-hydrogen-safety.pdf"),
                    files.map(f -> f.getFileName().toString()).sorted().toList(), "nothing half-written beside the three documents");
        }
    }

    @Test
    void oneBadFileDoesNotKeepTheOthersFromPrinting() throws IOException {
        file("a-good.md", GOOD);
        file("b-bad.md", GOOD.replace("solute: HCl", "solute: HCl2Xx"));
        Said said = run("print", folder.toString(), "--out", folder.resolve("out").toString());
        assertEquals(1, said.status());
        assertTrue(Files.exists(folder.resolve("out/a-good-handout.pdf")));
        assertFalse(Files.exists(folder.resolve("out/b-bad-handout.pdf")));
    }

    @Test
    void onlyTheDocumentsAskedForAreWritten() throws IOException {
        Said said = run("print", file("small-hydrogen.md", GOOD), "--only", "key", "--paper", "Letter", "--out", folder.resolve("out").toString());
        assertEquals(0, said.status(), said.err());
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            assertEquals(List.of("small-hydrogen-key.pdf"), files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".pdf")).toList());
        }
    }

    /** A page for the browser of each document, an editable copy of the handout alone, and no PDF where none is asked for. */
    @Test
    void documentsComeInTheFormatsAskedFor() throws IOException {
        Path out = folder.resolve("out");
        Said said = run("print", file("small-hydrogen.md", GOOD), "--only", "handout,key", "--as", "html,docx", "--out", out.toString());
        assertEquals(0, said.status(), said.err());
        try (Stream<Path> files = Files.list(out)) {
            assertEquals(List.of("small-hydrogen-handout.docx", "small-hydrogen-handout.html", "small-hydrogen-key.html"),
                    files.map(f -> f.getFileName().toString()).filter(f -> f.startsWith("small")).sorted().toList());
        }
        assertTrue(Files.readString(out.resolve("small-hydrogen-handout.html")).startsWith("<!DOCTYPE html>"));
        assertEquals(2, run("print", file("small-hydrogen.md", GOOD), "--as", "paper").status());
        assertEquals(2, run("print", file("small-hydrogen.md", GOOD), "--only", "key", "--as", "docx").status());
    }

    @Test
    void wrongUseIsToldInALineWithStatusTwo() throws IOException {
        String good = file("small-hydrogen.md", GOOD);
        for (String[] wrong : List.of(new String[] {"prinnt"}, new String[] {"proof"}, new String[] {"proof", folder.resolve("none.md").toString()},
                new String[] {"print", good, "--groups", "0"}, new String[] {"print", good, "--groups", "many"},
                new String[] {"print", good, "--only", "poster"}, new String[] {"print", good, "--paper", "A3"},
                new String[] {"print", good, "--room", "5 g"}, new String[] {"figures", good, "--room", "-300 °C"})) {
            Said said = run(wrong);
            assertEquals(2, said.status(), String.join(" ", wrong));
            assertFalse(said.err().isBlank());
            assertFalse(said.err().contains("Exception"), said.err());
        }
    }

    @Test
    void helpIsReadableAndEndsWell() {
        for (String command : List.of("print", "changes", "proof", "figures")) {
            Said said = run(command, "--help");
            assertEquals(0, said.status());
            assertTrue(said.out().contains("--groups"), said.out());
        }
    }

    /** 80 mL dry at 20 °C and 101.325 kPa is 3.326 mmol by p V = n R T, which is 0.0808 g of magnesium (24.305 g/mol). Worked by hand. */
    @Test
    void figuresAreWhatAHandCalculationGives() throws IOException {
        JsonNode node = figures("figures", file("small-hydrogen.md", GOOD));
        JsonNode mass = node.at("/quantities/ribbon/figures/mass");
        assertEquals(0.081, mass.get("value").asDouble(), 1e-12);
        assertEquals(0.08083, mass.get("before rounding").asDouble(), 0.00001);
        assertEquals("nearest 0.001 g", mass.get("rounding").asText());
        assertEquals("0.081 g", mass.get("shown").asText());
        // 0.081 g is 3.3326 mmol; twice that, one and a half times over, at 0.5 mol/L is 19.996 mL, up to the next millilitre.
        assertEquals(20, node.at("/quantities/acid/figures/volume/value").asDouble(), 1e-9);
        assertEquals(20 * 14 * 1.1, node.at("/quantities/acid/figures/class total/value").asDouble(), 1e-6);
        // 308 mL, made in a flask of 500 mL: 0.25 mol of acid, in and out, to the division of what measures it.
        assertEquals(308, node.at("/recipes/acid/needed/value").asDouble(), 1e-6);
        assertEquals(500, node.at("/recipes/acid/volume/value").asDouble(), 1e-6);
        JsonNode line = node.at("/recipes/acid/batches/0/check");
        assertEquals(0.25, line.at("/out/value").asDouble() * (line.at("/out/unit").asText().equals("mmol") ? 1e-3 : 1), 1e-9);
        assertEquals(line.at("/out/value").asDouble(), line.at("/in/value").asDouble(), 0.01 * line.at("/out/value").asDouble());
        assertEquals("ribbon", node.at("/reactions/dissolving/limiting").asText());
        assertEquals("Mg(s) + 2 HCl(aq) -> MgCl2(aq) + H2(g)", node.at("/reactions/dissolving/equation").asText());
        assertEquals(3.3326, node.at("/answers/0/value/value").asDouble(), 0.0001);
    }

    @Test
    void groupsChangeTheClassFiguresAndNothingElse() throws IOException {
        String good = file("small-hydrogen.md", GOOD);
        JsonNode few = figures("figures", good, "--groups", "9");
        JsonNode many = figures("figures", good, "--groups", "30");
        List<String> moved = new ArrayList<>();
        compare("", few, many, moved);
        assertFalse(moved.isEmpty());
        for (String path : moved) {
            assertTrue(path.startsWith("/setting/groups") || path.startsWith("/recipes/") || path.startsWith("/prep/") || path.contains("/class total/"), path);
        }
        assertTrue(moved.stream().anyMatch(p -> p.contains("acid/figures/class total/value")), moved.toString());
    }

    /** In decimal arithmetic from the JSON alone: groups × what a group takes × (1 + spare), upward; in flasks of ISO 1042 where a recipe makes it. */
    @Test
    void whatIsGotReadyFollowsFromTheFigures() throws IOException {
        int looked = 0;
        for (String name : List.of("hydrogen-from-magnesium", "soda-measures-an-acid", "heat-of-neutralisation", "water-in-epsom-salt")) {
            JsonNode node = figures("figures", "procedures/" + name + ".md", "--groups", "13");
            java.math.BigDecimal times = new java.math.BigDecimal(13).multiply(java.math.BigDecimal.ONE.add(node.at("/setting/spare").decimalValue()));
            for (Iterator<String> blocks = node.at("/prep/handed out").fieldNames(); blocks.hasNext();) {
                String block = blocks.next();
                for (JsonNode row : node.at("/prep/handed out").get(block)) {
                    java.math.BigDecimal exact = row.at("/each/value").decimalValue().multiply(times);
                    double ready = row.at("/ready/value").asDouble() * (row.at("/ready/unit").asText().equals("L") ? 1000 : 1);
                    if (node.at("/recipes").has(block)) {
                        JsonNode volume = node.at("/recipes").get(block).get("volume");
                        assertEquals(volume, row.get("ready"), block);
                        assertTrue(ready >= exact.doubleValue(), block);
                    } else {
                        assertEquals(exact.round(new java.math.MathContext(2, java.math.RoundingMode.CEILING)).doubleValue(), ready, 1e-6 * ready, block);
                    }
                    assertEquals(13, row.at("/containers").asInt());
                    looked++;
                }
            }
        }
        assertTrue(looked >= 8, "looked at " + looked);
    }

    private static void compare(String path, JsonNode a, JsonNode b, List<String> moved) {
        if (a.isContainerNode() && b.isContainerNode() && a.size() == b.size()) {
            if (a.isArray()) {
                for (int i = 0; i < a.size(); i++) {
                    compare(path + "/" + i, a.get(i), b.get(i), moved);
                }
                return;
            }
            for (Iterator<String> names = a.fieldNames(); names.hasNext();) {
                String name = names.next();
                compare(path + "/" + name, a.get(name), b.path(name), moved);
            }
        } else if (!a.equals(b)) {
            moved.add(path);
        }
    }

    @Test
    void theRoomOnTheCommandLineGoesBeforeTheProcedures() throws IOException {
        String good = file("small-hydrogen.md", GOOD);
        JsonNode high = figures("figures", good, "--room", "20 °C; 83 kPa");
        assertEquals(83, high.at("/setting/room/pressure/value").asDouble(), 1e-9);
        assertNotEquals(0.081, high.at("/quantities/ribbon/figures/mass/value").asDouble(), 1e-9);
    }

    @Test
    void findingsAsJsonHaveTheirPlace() throws IOException {
        String bad = file("bad.md", GOOD.replace("strength: 0.5 mol/L", "strength: 0.5 mmol"));
        Said said = run("proof", bad, "--json");
        assertEquals(1, said.status());
        JsonNode finding = new ObjectMapper().readTree(said.out()).at("/findings/0");
        int line = GOOD.substring(0, GOOD.indexOf("strength:")).split("\n").length + 1;
        assertEquals(line, finding.get("line").asInt(), said.out());
        assertEquals("error", finding.get("severity").asText());
        assertFalse(finding.get("message").asText().isBlank());
    }

    @Test
    void aFileThatIsNoTextIsAFinding() throws IOException {
        Path path = folder.resolve("picture.md");
        Files.write(path, new byte[] {(byte) 0x89, 'P', 'N', 'G', (byte) 0xff, (byte) 0xfe});
        Said said = run("proof", path.toString());
        assertEquals(1, said.status());
        assertTrue(said.out().contains("not-utf-8"), said.out());
    }

    @Test
    void aRehearsalIsTheSameTwiceAndAnotherWithAnotherSeed() throws IOException {
        String good = file("small-hydrogen.md", GOOD);
        String first = run("proof", good, "--rehearse").out();
        assertEquals(first, run("proof", good, "--rehearse").out());
        assertNotEquals(first, run("proof", good, "--rehearse", "--seed", "2").out());
        assertTrue(first.contains("14 invented groups"), first);
    }

    /** A term is no procedure with nine fields missing. */
    @Test
    void aTermThatIsCheckedAsAProcedureIsToldSo() throws IOException {
        Said said = run("proof", file("term.md", "---\nterm: Spring 2041\nprocedures: small-hydrogen\n---\n\n```section Mon\ngroups: 3\n```\n"));
        assertEquals(2, said.status());
        assertTrue(said.err().contains("term.md` is a term") && said.err().contains("`--term`"), said.err());
    }

    @Test
    void commasBetweenTheRoomsQuantitiesAreToldWithTheSemicolonThatBelongsThere() throws IOException {
        Said said = run("proof", file("small-hydrogen.md", GOOD.replaceFirst("\nroom: .*\n", "\nroom: 23,5 °C, 99,5 kPa\n")));
        assertEquals(1, said.status());
        assertTrue(said.err().contains("`23,5 °C; 99,5 kPa`") || said.out().contains("`23,5 °C; 99,5 kPa`"), said.err() + said.out());
        assertEquals(0, run("proof", file("small-hydrogen.md", GOOD.replaceFirst("\nroom: .*\n", "\nroom: 23,5 °C; 99,5 kPa\n"))).status());
    }
}
