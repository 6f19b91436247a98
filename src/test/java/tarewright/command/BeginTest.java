package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A teacher's first evening: what {@code begin} writes is complete, and checks and prints as it stands. */
class BeginTest {
    private static final List<String> ROOMS = List.of("15 °C; 80 kPa", "20 °C; 101.3 kPa; 180 m3", "30 °C; 103 kPa");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(Beginning.class)
    void everyBeginningIsCleanInEveryRoomAndPrints(Beginning kind) {
        Said begun = run("begin", "my first one", "--kind", kind.word(), "--folder", folder.toString());
        assertEquals(0, begun.status(), begun.err());
        Path file = folder.resolve("my-first-one.md");
        for (String room : ROOMS) {
            for (String groups : List.of("1", "30")) {
                Said proof = run("proof", "--short", "--room", room, "--groups", groups, file.toString());
                assertEquals("clean", proof.out().strip(), kind + ", " + room + ", " + groups + " groups");
            }
        }
        Path out = folder.resolve("out");
        assertEquals(0, run("print", "--out", out.toString(), file.toString()).status());
        assertTrue(Files.isRegularFile(out.resolve("my-first-one-handout.pdf")));
        assertTrue(Files.isRegularFile(out.resolve("my-first-one-key.pdf")));
        assertTrue(Files.isRegularFile(out.resolve("my-first-one-safety.pdf")));
    }

    @Test
    void theTitleIsTheTeachersOwn() throws IOException {
        run("begin", "rust-in_a-jar", "--kind", "heat", "--folder", folder.toString());
        assertTrue(Files.readString(folder.resolve("rust-in_a-jar.md")).startsWith("---\ntitle: Rust in a jar\n"));
    }

    @Test
    void whatIsThereIsNeverWrittenOver() throws IOException {
        Path mine = Files.writeString(folder.resolve("mine.md"), "a year of work");
        Said said = run("begin", "mine", "--folder", folder.toString());
        assertEquals(2, said.status());
        assertTrue(said.err().contains("is there already"), said.err());
        assertEquals("a year of work", Files.readString(mine));
    }

    @Test
    void aNameCannotLeaveTheFolderAndAnUnknownKindIsTold() throws IOException {
        for (String name : List.of("../out", "a/b", "", ".hidden", "C:\\x", "x".repeat(200))) {
            assertEquals(2, run("begin", name, "--folder", folder.toString()).status(), name);
        }
        Said said = run("begin", "x", "--kind", "polymer", "--folder", folder.toString());
        assertEquals(2, said.status());
        assertTrue(said.err().contains("gas, titration, precipitate, solution, heat, synthesis"), said.err());
        try (var files = Files.list(folder)) {
            assertFalse(files.findAny().isPresent());
        }
    }

    private record Said(int status, String out, String err) {
    }

    private static Said run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Main.run(arguments, new PrintWriter(out), new PrintWriter(err));
        return new Said(status, out.toString(), err.toString());
    }
}
