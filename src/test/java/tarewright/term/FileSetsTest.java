package tarewright.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was printed is replaced whole or not at all. */
class FileSetsTest {
    @TempDir
    private Path folder;

    private static Map<String, byte[]> set(String content) {
        return Map.of("a-key.pdf", content.getBytes(), "a-handout.pdf", content.getBytes(), "manifest/a.json", content.getBytes());
    }

    private List<String> there() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).map(p -> folder.relativize(p).toString().replace('\\', '/')).sorted().toList();
        }
    }

    @Test
    void aNewSetTakesThePlaceOfTheOldOneAndNothingIsLeftBeside() throws IOException {
        new FileSets(folder).replace("a", set("old"), Set.of());
        new FileSets(folder).replace("a", Map.of("a-key.pdf", "new".getBytes(), "manifest/a.json", "new".getBytes()), Set.of("a-handout.pdf"));
        assertEquals(List.of("a-key.pdf", "manifest/a.json"), there());
        assertEquals("new", Files.readString(folder.resolve("a-key.pdf")));
    }

    /** As a full disk or a file held open would: a folder stands where one of the files has to go. */
    @Test
    void whereOneFileCannotBeReplacedTheWholeOldSetStays() throws IOException {
        new FileSets(folder).replace("a", set("old"), Set.of());
        Files.delete(folder.resolve("a-key.pdf"));
        Files.createDirectories(folder.resolve("a-key.pdf/held"));
        assertThrows(IOException.class, () -> new FileSets(folder).replace("a", set("new"), Set.of()));
        assertEquals("old", Files.readString(folder.resolve("a-handout.pdf")));
        assertEquals("old", Files.readString(folder.resolve("manifest/a.json")));
        assertTrue(Files.isDirectory(folder.resolve("a-key.pdf/held")));
        assertEquals(List.of("a-handout.pdf", "manifest/a.json"), there());
    }

    @Test
    void whatAKillLeftBeforeItWasDecidedIsTakenBackAndAfterItIsCarriedOn() throws IOException {
        new FileSets(folder).replace("a", set("old"), Set.of());
        Files.createDirectories(folder.resolve(".a.next"));
        Files.writeString(folder.resolve(".a.next/a-key.pdf"), "ha");
        new FileSets(folder).recover();
        assertEquals("old", Files.readString(folder.resolve("a-key.pdf")));
        assertFalse(Files.exists(folder.resolve(".a.next")));
        // Decided, one file already in its place, one old file already aside.
        Files.createDirectories(folder.resolve(".a.ready/manifest"));
        Files.createDirectories(folder.resolve(".a.old"));
        Files.writeString(folder.resolve(".a.ready/.gone"), "");
        Files.writeString(folder.resolve("a-handout.pdf"), "new");
        Files.writeString(folder.resolve(".a.ready/a-key.pdf"), "new");
        Files.writeString(folder.resolve(".a.ready/manifest/a.json"), "new");
        Files.move(folder.resolve("a-key.pdf"), folder.resolve(".a.old/a-key.pdf"));
        new FileSets(folder).recover();
        assertEquals(List.of("a-handout.pdf", "a-key.pdf", "manifest/a.json"), there());
        for (String name : there()) {
            assertEquals("new", Files.readString(folder.resolve(name)), name);
        }
    }

    /** The program's end at a single moment: nothing after it happens, nothing is tidied up. */
    private static final class Killed extends Error {
        private static final long serialVersionUID = 1;
    }

    private List<String> contents() throws IOException {
        List<String> all = new ArrayList<>();
        for (String name : List.of("a-handout.pdf", "a-key.pdf", "manifest/a.json", "a-prep.pdf", "a-labels.pdf")) {
            Path file = folder.resolve(name);
            all.add(Files.exists(file) ? Files.readString(file) : "-");
        }
        return all;
    }

    /**
     * Every moment there is, one after the other: killed before each single thing that is done to the disk. No two versions ever stand side by side; a document is missing only while
     * the new set is decided on; what the next print finds is the whole old or the whole new set.
     */
    @Test
    void killedAtAnyMomentNoTwoVersionsStandSideBySideAndTheNextPrintFindsAWholeSet() throws IOException {
        int old = 0;
        int settled = 0;
        int moments = 0;
        boolean killed = true;
        for (int moment = 1; killed; moment++) {
            new FileSets(folder).replace("a", Map.of("a-handout.pdf", "old".getBytes(), "a-key.pdf", "old".getBytes(), "manifest/a.json", "old".getBytes(),
                    "a-prep.pdf", "old".getBytes()), Set.of("a-labels.pdf"));
            int[] left = {moment};
            try {
                new FileSets(folder, () -> {
                    if (--left[0] == 0) {
                        throw new Killed();
                    }
                }).replace("a", Map.of("a-handout.pdf", "new".getBytes(), "a-key.pdf", "new".getBytes(), "manifest/a.json", "new".getBytes(), "a-labels.pdf",
                        "new".getBytes()), Set.of("a-prep.pdf"));
                killed = false;
            } catch (Killed e) {
                moments++;
            }
            boolean decided = Files.exists(folder.resolve(".a.ready"));
            List<String> found = contents();
            assertFalse(found.contains("old") && found.contains("new"), moment + ": " + found);
            assertTrue(decided || found.equals(OLD) || found.equals(NEW), moment + ": " + found);
            new FileSets(folder).recover();
            assertTrue(contents().equals(OLD) || contents().equals(NEW), moment + ": " + contents());
            assertEquals(decided, decided && contents().equals(NEW), "what was decided on is completed");
            try (Stream<Path> beside = Files.list(folder)) {
                assertEquals(List.of(), beside.map(p -> p.getFileName().toString()).filter(n -> n.startsWith(".")).toList(), "moment " + moment);
            }
            old += contents().equals(OLD) ? 1 : 0;
            settled += decided ? 1 : 0;
        }
        assertTrue(moments >= 15 && old >= 5 && settled >= 8, moments + " moments, " + old + " old, " + settled + " decided");
    }

    private static final List<String> OLD = List.of("old", "old", "old", "old", "-");
    private static final List<String> NEW = List.of("new", "new", "new", "-", "new");

    @Test
    void oneFolderIsLockedForOnePrintAndFreeAfterIt() throws IOException {
        try (OutputLock lock = OutputLock.of(folder).orElseThrow()) {
            assertTrue(OutputLock.of(folder).isEmpty());
        }
        try (OutputLock lock = OutputLock.of(folder).orElseThrow()) {
            assertTrue(Files.exists(folder.resolve(".lock")));
        }
    }
}
