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
    private static final Pattern EXAMPLE = Pattern.compile("<!-- example: (whole|change (\\w+))(?:; finds ([\\w-]+))? -->\\n````markdown\\n(.*?)\\n````\\n", Pattern.DOTALL);
    private static final Pattern BLOCK = Pattern.compile("(?m)^```(\\w[^\\n]*)\\n.*?^```$", Pattern.DOTALL);

    @TempDir
    private Path folder;

    private record Example(String page, int line, String base, String finds, String text) {
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
                all.add(new Example(page.getFileName().toString(), line, found.group(2) == null ? "" : found.group(2), found.group(3) == null ? "" : found.group(3),
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
        StringWriter out = new StringWriter();
        Main.run(new String[] {"proof", "--json", file.toString()}, new PrintWriter(out), new PrintWriter(new StringWriter()));
        Set<String> ids = new TreeSet<>();
        for (JsonNode finding : new ObjectMapper().readTree(out.toString()).path("findings")) {
            if (!finding.path("severity").asText().equals("note")) {
                ids.add(finding.path("id").asText());
            }
        }
        assertEquals(example.finds().isEmpty() ? Set.of() : Set.of(example.finds()), ids, out.toString());
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
