package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Printing again, and what a teacher is told before copying. The procedure is the library's own; expected figures are worked by hand. */
class ChangesTest {
    private static final Path LIBRARY = Path.of("procedures/hydrogen-from-magnesium.md");
    @TempDir
    private Path folder;
    private Path file;
    private String out;

    private record Said(int status, String out, String err) {
    }

    private static Said run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Main.run(arguments, new PrintWriter(out, true), new PrintWriter(err, true));
        return new Said(status, out.toString(), err.toString());
    }

    @BeforeEach
    void print() throws IOException {
        file = folder.resolve("hydrogen.md");
        out = folder.resolve("out").toString();
        Files.copy(LIBRARY, file);
        assertEquals(0, run("print", file.toString(), "--out", out).status());
    }

    private Map<String, FileTime> times() throws IOException {
        Map<String, FileTime> times = new TreeMap<>();
        try (Stream<Path> all = Files.walk(Path.of(out))) {
            for (Path path : all.filter(p -> !p.endsWith(".lock")).filter(Files::isRegularFile).toList()) {
                Files.setLastModifiedTime(path, FileTime.fromMillis(1_000_000));
                times.put(path.toString(), Files.getLastModifiedTime(path));
            }
        }
        return times;
    }

    @Test
    void printingAgainWritesNothing() throws IOException {
        Map<String, FileTime> before = times();
        Said said = run("print", file.toString(), "--out", out);
        assertEquals(0, said.status(), said.err());
        assertTrue(said.out().contains("unchanged: handout"), said.out());
        for (Map.Entry<String, FileTime> each : before.entrySet()) {
            assertEquals(each.getValue(), Files.getLastModifiedTime(Path.of(each.getKey())), each.getKey());
        }
    }

    @Test
    void whatWasAlteredOrDeletedByHandIsPrintedAgainAsItWasAndTheRestStays() throws IOException {
        Path key = Path.of(out, "hydrogen-key.pdf");
        byte[] good = Files.readAllBytes(key);
        Files.write(key, new byte[] {1, 2, 3});
        assertTrue(run("changes", file.toString(), "--out", out).out().contains("hydrogen-key.pdf"));
        Said said = run("print", file.toString(), "--out", out);
        assertTrue(said.out().contains("key (") && said.out().contains("unchanged: handout"), said.out());
        assertArrayEquals(good, Files.readAllBytes(key));
        Files.delete(key);
        run("print", file.toString(), "--out", out);
        assertArrayEquals(good, Files.readAllBytes(key));
    }

    /** Printing the key alone of a changed procedure prints the others too: no handout of an earlier version stays beside it. */
    @Test
    void aKeyNeverStandsBesideAHandoutOfAnotherVersion() throws IOException {
        byte[] before = Files.readAllBytes(Path.of(out, "hydrogen-handout.pdf"));
        run("print", file.toString(), "--out", out, "--groups", "9", "--only", "key");
        byte[] after = Files.readAllBytes(Path.of(out, "hydrogen-handout.pdf"));
        assertTrue(!java.util.Arrays.equals(before, after));
        assertTrue(run("changes", file.toString(), "--out", out, "--groups", "9").out().contains("unchanged"));
    }

    /** Every figure of `figures` whose text moved is named, and none that stayed. */
    @Test
    void aChangedStrengthIsNamedFirstAndEveryFigureThatMovedAfterIt() throws IOException {
        JsonNode old = new ObjectMapper().readTree(run("figures", file.toString()).out());
        String text = Files.readString(file);
        assertTrue(text.contains("strength: 0.50 mol/L"), "the library's procedure has another strength now");
        Files.writeString(file, text.replace("strength: 0.50 mol/L", "strength: 1.0 mol/L"));
        JsonNode now = new ObjectMapper().readTree(run("figures", file.toString()).out());
        Said said = run("changes", file.toString(), "--out", out);
        assertEquals(0, said.status(), said.err());
        String[] lines = said.out().split("\\R");
        assertTrue(lines[1].contains("strength 0.50 → 1.0 mol/L"), said.out());
        JsonNode told = new ObjectMapper().readTree(run("changes", file.toString(), "--out", out, "--json").out());
        old.get("quantities").properties().forEach(q -> q.getValue().get("figures").properties().forEach(f -> {
            String was = f.getValue().get("shown").asText();
            String is = now.at("/quantities").path(q.getKey()).path("figures").path(f.getKey()).path("shown").asText();
            boolean named = false;
            for (JsonNode change : told.get("changes")) {
                JsonNode fact = change.get("fact");
                named |= fact.get("about").asText().equals("quantity") && fact.get("of").asText().equals(q.getKey())
                        && (fact.get("what").asText().equals(f.getKey()) || f.getKey().equals("value"));
            }
            assertEquals(!was.equals(is), named, q.getKey() + " " + f.getKey() + ": " + was + ", " + is);
        }));
        assertNotEquals(0, told.get("changes").size());
    }

    @Test
    void anotherManifestCanBeComparedWithAndNothingIsWritten() throws IOException {
        Path kept = folder.resolve("kept.json");
        Files.copy(Path.of(out, "manifest", "hydrogen.json"), kept);
        run("print", file.toString(), "--out", out, "--groups", "20");
        Map<String, FileTime> before = times();
        Said said = run("changes", file.toString(), "--out", out, "--groups", "20", "--against", kept.toString());
        assertTrue(said.out().contains("class and room: groups") && said.out().contains("→ 20"), said.out());
        for (Map.Entry<String, FileTime> each : before.entrySet()) {
            assertEquals(each.getValue(), Files.getLastModifiedTime(Path.of(each.getKey())));
        }
    }

    /** Words alone move no figure, and that is said. */
    @Test
    void changedWordsAreToldAsSuch() throws IOException {
        Files.writeString(file, Files.readString(file) + "\nWash your hands.\n");
        Said said = run("changes", file.toString(), "--out", out);
        assertTrue(said.out().contains("no figure moved") && said.out().contains("procedure"), said.out());
    }
}
