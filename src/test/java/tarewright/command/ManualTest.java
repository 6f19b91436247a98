package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.procedure.syntax.BlockTypes;
import tarewright.quantity.Units;

/** The manual tells the truth: each example does what it says, and nothing of the language is left out. */
class ManualTest {
    private static final Path FOLDER = Path.of("src/manual");
    private static final Pattern EXAMPLE = Pattern.compile("<!-- example: (whole|term|change (\\w+))(?:; finds ([\\w-]+))? -->\\n````markdown\\n(.*?)\\n````\\n", Pattern.DOTALL);
    private static final Pattern BLOCK = Pattern.compile("(?m)^```(\\w[^\\n]*)\\n.*?^```$", Pattern.DOTALL);

    @TempDir
    private Path folder;

    /** @param term a term beside the procedures that {@code begin} writes. @param base the procedure that the example changes, empty where it is whole */
    private record Example(String page, int line, boolean term, String base, String finds, String text) {
        @Override
        public String toString() {
            return page + ", line " + line;
        }
    }

    static Stream<Example> examples() {
        List<Example> all = new ArrayList<>();
        for (Path page : pages()) {
            String text = read(page);
            Matcher matcher = EXAMPLE.matcher(text);
            while (matcher.find()) {
                MatchResult found = matcher.toMatchResult();
                int line = (int) text.substring(0, found.start()).lines().count() + 1;
                all.add(new Example(page.getFileName().toString(), line, found.group(1).equals("term"), found.group(2) == null ? "" : found.group(2), found.group(3) == null ? "" : found.group(3),
                        found.group(4)));
            }
        }
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleDoesWhatItSays(Example example) throws IOException {
        String whole = example.base().isEmpty() ? example.text() : changed(Beginning.valueOf(example.base().toUpperCase(Locale.ROOT)).text("From the manual"), example.text());
        Path file = Files.writeString(folder.resolve("example.md"), whole);
        if (example.term()) {
            for (Beginning each : Beginning.values()) {
                Files.writeString(folder.resolve(each.name().toLowerCase(Locale.ROOT) + ".md"), each.text("From the manual"));
            }
        }
        Files.writeString(folder.resolve("flask.svg"), "<svg xmlns='http://www.w3.org/2000/svg' width='40mm' height='20mm'><rect x='2' y='2' width='20' height='10' fill='#000'/></svg>");
        StringWriter out = new StringWriter();
        Main.run(example.term() ? new String[] {"proof", "--json", "--term", file.toString()} : new String[] {"proof", "--json", file.toString()}, new PrintWriter(out), new PrintWriter(new StringWriter()));
        Set<String> ids = new TreeSet<>();
        List<String> lines = out.toString().lines().filter(l -> !l.isBlank()).toList();
        assertTrue(lines.size() >= (example.term() ? 2 : 1), out.toString());
        for (String line : lines) {
            for (JsonNode finding : new ObjectMapper().readTree(line).path("findings")) {
                if (!finding.path("severity").asText().equals("note")) {
                    ids.add(finding.path("id").asText());
                }
            }
        }
        assertEquals(example.finds().isEmpty() ? Set.of() : Set.of(example.finds()), ids, out.toString());
    }

    /** The list at the head of the page leads to every question, by the names that GitHub and its like give to headings. */
    @Test
    void theListOfQuestionsIsWhole() {
        String page = read(FOLDER.resolve("how-do-i.md"));
        Set<String> headings = new TreeSet<>(page.lines().filter(l -> l.startsWith("## "))
                .map(l -> l.substring(3).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9 -]", "").replace(' ', '-')).toList());
        Set<String> links = new TreeSet<>(Pattern.compile("\\]\\(#([^)]*)\\)").matcher(page).results().map(r -> r.group(1)).toList());
        assertEquals(headings, links);
    }

    /** No fenced Markdown on a page of the manual goes by without being run. */
    @Test
    void noExampleIsLeftOut() {
        for (Path page : pages()) {
            long fences = read(page).lines().filter(l -> l.equals("````markdown")).count();
            assertEquals(fences, examples().filter(e -> e.page().equals(page.getFileName().toString())).count(), page.toString());
        }
    }

    @Test
    void everyTypeOfBlockAndEveryUnitIsInTheReference() {
        String reference = read(FOLDER.resolve("language.md"));
        for (String type : BlockTypes.ALL) {
            assertTrue(reference.contains("`" + type + "`"), "block `" + type + "`");
        }
        String units = reference.substring(reference.indexOf("| kind | units |"), reference.indexOf("A unit that is none"));
        for (String unit : Units.all()) {
            assertTrue(units.contains("`" + unit + "`"), "unit `" + unit + "`");
        }
    }

    private static String changed(String base, String change) {
        String whole = base;
        Matcher block = BLOCK.matcher(change);
        while (block.find()) {
            String head = "```" + block.group(1) + "\n";
            int from = whole.indexOf(head);
            whole = from < 0 ? whole + "\n" + block.group() + "\n"
                    : whole.substring(0, from) + block.group() + whole.substring(whole.indexOf("\n```\n", from) + "\n```".length());
        }
        return whole;
    }

    private static List<Path> pages() {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.filter(f -> f.toString().endsWith(".md")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path page) {
        try {
            return Files.readString(page);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
