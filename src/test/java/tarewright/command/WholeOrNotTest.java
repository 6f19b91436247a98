package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tarewright.term.Hash;
import tarewright.term.OutputLock;

/** Where a print cannot be written it says what to do, and what was there stands as it did. A full disk is in {@code FullDiskTest}, a kill in {@code KillTest}. */
class WholeOrNotTest {
    private static final String PROCEDURE = Path.of("procedures", "soda-measures-an-acid.md").toString();
    private final StringWriter err = new StringWriter();
    @TempDir
    private Path folder;

    private int print(Path out, int groups) {
        return Main.run(new String[] {"print", PROCEDURE, "--out", out.toString(), "--only", "handout,safety", "--groups", "" + groups},
                new PrintWriter(new StringWriter()), new PrintWriter(err));
    }

    private static TreeMap<String, String> sums(Path out) throws IOException {
        TreeMap<String, String> sums = new TreeMap<>();
        try (Stream<Path> all = Files.walk(out)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                sums.put(out.relativize(file).toString(), Hash.of(Files.readAllBytes(file)));
            }
        }
        return sums;
    }

    /** As a file that another program holds open does where the system keeps it from being replaced: something stands in its place. */
    @Test
    void whereOneDocumentCannotBeReplacedNoneIsAndThePersonIsToldWhatToDo() throws IOException {
        Path out = folder.resolve("out");
        assertEquals(0, print(out, 5));
        Path held = out.resolve("soda-measures-an-acid-safety.pdf");
        Files.delete(held);
        Files.createDirectories(held.resolve("held"));
        TreeMap<String, String> before = sums(out);
        assertEquals(1, print(out, 7));
        assertEquals(before, sums(out));
        assertTrue(err.toString().contains("soda-measures-an-acid-safety.pdf: a folder stands in its place). What was there stays. Free some space, close the file where it is open, "
                + "or choose another folder with --out."), err::toString);
        assertTrue(err.toString().lines().noneMatch(l -> l.contains(".ready") || l.contains(".next")), err::toString);
        Files.delete(held.resolve("held"));
        Files.delete(held);
        assertEquals(0, print(out, 7));
        assertEquals(before.keySet().size() + 1, sums(out).size());
    }

    @Test
    void aFileWhereTheFolderShouldBeIsTold() throws IOException {
        Path file = Files.writeString(folder.resolve("a-file"), "mine");
        assertEquals(1, print(file.resolve("out"), 5));
        assertEquals("mine", Files.readString(file));
        assertTrue(err.toString().contains("What was there stays. Free some space"), err::toString);
    }

    @Test
    void twoPrintsIntoOneFolderDoNotMix() throws IOException {
        Path out = folder.resolve("out");
        assertEquals(0, print(out, 5));
        TreeMap<String, String> before = sums(out);
        try (OutputLock other = OutputLock.of(out).orElseThrow()) {
            assertEquals(1, print(out, 7));
            assertTrue(err.toString().contains("wait until it has ended, or choose another folder with --out. Nothing was changed."), err::toString);
            assertEquals(before, sums(out));
        }
        assertEquals(0, print(out, 7));
    }
}
