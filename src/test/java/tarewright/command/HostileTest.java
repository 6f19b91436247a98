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
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A file from elsewhere, made to hurt: it ends in a finding at a place, soon, and in bounded memory. The bound on time here only stops what would never end; how long each really takes is
 * measured by the benchmark.
 */
class HostileTest {
    private static final Duration ENDLESS = Duration.ofSeconds(60);
    private static final String GAS = Beginning.GAS.text("From elsewhere");
    private static final String EQUATION = "NaHCO3(s) + HCl(aq) -> NaCl(aq) + H2O(l) + CO2(g)";
    private static final String VALUE = "value: moles of powder";

    @TempDir
    private Path folder;

    private record Trap(String what, String text, String finds) {
        @Override
        public String toString() {
            return what;
        }
    }

    static Stream<Trap> traps() {
        int million = 1_000_000;
        return Stream.of(
                new Trap("a million brackets in a formula", equation("(".repeat(million) + "Na" + ")".repeat(million) + "(s) -> Na(s)"), "file-too-large"),
                new Trap("a formula in nine thousand brackets", equation("(".repeat(4000) + "Na" + ")".repeat(4000) + "(s) -> Na(s)"), "formula-too-long"),
                new Trap("a thousand million atoms", equation("NaHCO1000000000(s) -> Na(s)"), "count-too-large"),
                new Trap("five hundred species", equation(species(1, 250) + " -> " + species(251, 500)), "too-many-species"),
                new Trap("front matter without an end", "---\ntitle: x\n" + "a: b\n".repeat(million), "file-beyond-limit"),
                new Trap("a hundred thousand fields", "---\n" + fields(100_000) + "---\n", "and-more"),
                new Trap("a field without an end", GAS.replace("title: ", "title: " + "x".repeat(50_000)), "value-too-long"),
                new Trap("fifty megabytes", "x".repeat(50 * million), "file-beyond-limit"),
                new Trap("lists in lists", GAS + nested(1_000), "nested-too-deep"),
                new Trap("quotes in quotes", GAS + "\n" + ">".repeat(100_000) + " a\n", "nested-too-deep"),
                new Trap("a hundred thousand cells", GAS + "\n" + row("a", 300) + row("-", 300) + row("b", 300).repeat(340), "table-too-large"),
                new Trap("braces", GAS + "\n" + "{".repeat(900_000), "brace-not-closed"),
                new Trap("references", GAS + "\n" + "{volume of powder} ".repeat(50_000), "too-many-references"),
                new Trap("two thousand names without a meaning", GAS + "\n" + "{volume of powder} ".repeat(1_900), "and-more"),
                new Trap("blocks", GAS + blocks(10_000), "too-many-blocks"),
                new Trap("values that lean on one another", GAS + chain(250), "unknown-name"),
                new Trap("parentheses", GAS.replace(VALUE, "value: " + "(".repeat(9_000) + "1" + ")".repeat(9_000)), "expression-too-deep"),
                new Trap("a tower of powers", GAS.replace(VALUE, "value: 9^9^9^9^9^9"), "exponent-not-whole"),
                new Trap("digits", GAS.replace("wanted: 50 mL", "wanted: " + "9".repeat(19_000) + " mL"), "not-a-number"),
                new Trap("units", GAS.replace("wanted: 50 mL", "wanted: 50 " + "mL/".repeat(6_000) + "mL"), "not-a-number"),
                new Trap("water of crystallisation", equation("NaHCO3" + "·H2O".repeat(1_900) + "(s) -> Na(s)"), "formula-too-long"),
                new Trap("a character that ends a text elsewhere", GAS + "\0", "control-character"));
    }

    @ParameterizedTest
    @MethodSource("traps")
    void aTrapIsTold(Trap trap) throws IOException {
        Path file = Files.writeString(folder.resolve("trap.md"), trap.text());
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = org.junit.jupiter.api.Assertions.assertTimeoutPreemptively(ENDLESS,
                () -> Main.run(new String[] {"proof", "--json", file.toString()}, new PrintWriter(out), new PrintWriter(err)));
        assertEquals("", err.toString());
        assertEquals(1, status);
        JsonNode findings = new ObjectMapper().readTree(out.toString()).path("findings");
        List<String> ids = IntStream.range(0, findings.size()).mapToObj(i -> findings.get(i).path("id").asText()).toList();
        assertTrue(ids.contains(trap.finds()), ids.stream().distinct().collect(Collectors.joining(", ")));
        assertTrue(ids.size() <= 201, ids.size() + " findings");
        findings.forEach(f -> assertTrue(f.path("line").asInt() >= 1, f.toString()));
    }

    /** Nothing outside is named by the page, and nothing in it runs: what looks like markup is text. */
    @Test
    void whatReachesOutsideIsOnlyText() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "xyzzy-secret");
        Path file = Files.writeString(folder.resolve("reach.md"), GAS + "\n<img src=\"" + secret.toUri() + "\"> <script>fetch('http://example.org')</script>\n\n"
                + "[a picture](../secret.txt) [a link](" + secret.toUri() + ") $\\{.data_model\\} <#include \"" + secret + "\"> @\\{x\\} #\\{y\\}\n");
        StringWriter err = new StringWriter();
        Path out = folder.resolve("out");
        Main.run(new String[] {"print", "--out", out.toString(), file.toString()}, new PrintWriter(new StringWriter()), new PrintWriter(err));
        try (Stream<Path> printed = Files.list(out)) {
            List<Path> files = printed.filter(p -> p.toString().endsWith(".pdf")).toList();
            assertEquals(3, files.size(), err.toString());
            for (Path pdf : files) {
                assertFalse(new String(Files.readAllBytes(pdf), java.nio.charset.StandardCharsets.ISO_8859_1).contains("xyzzy"), pdf.toString());
            }
        }
        assertFalse(err.toString().contains("xyzzy"));
    }

    private static String equation(String equation) {
        return GAS.replace(EQUATION, equation);
    }

    private static String species(int from, int to) {
        return IntStream.rangeClosed(from, to).mapToObj(i -> "C" + i + "H" + 2 * i).collect(Collectors.joining(" + "));
    }

    private static String fields(int count) {
        return IntStream.range(0, count).mapToObj(i -> "k" + i + ": b\n").collect(Collectors.joining());
    }

    private static String nested(int depth) {
        return "\n" + IntStream.range(0, depth).mapToObj(i -> " ".repeat(i) + "- a\n").collect(Collectors.joining());
    }

    private static String row(String cell, int cells) {
        return "|" + (cell + "|").repeat(cells) + "\n";
    }

    private static String blocks(int count) {
        return IntStream.range(0, count).mapToObj(i -> "\n```solid s" + i + "\nsubstance: sodium chloride\nmass: 1 g\n```\n").collect(Collectors.joining());
    }

    private static String chain(int length) {
        return IntStream.range(0, length).mapToObj(i -> "\n```value v" + i + "\nis: v" + (i + 1) + "\n```\n").collect(Collectors.joining());
    }
}
