package tarewright.term;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A disk runs full at any moment of a print: the earlier set stands whole, nothing half is left beside it, and with room again the print goes through. */
class FullDiskTest {
    private static final int BLOCK = 1024;
    private static final int MOST = 40 * BLOCK;

    @Test
    void howeverLittleIsFreeTheOldSetStandsWholeOrTheNewOneDoes() throws IOException {
        int refused = 0;
        int replaced = 0;
        for (int free = 0; free <= 20; free++) {
            try (FileSystem disk = Jimfs.newFileSystem(Configuration.unix().toBuilder().setBlockSize(BLOCK).setMaxSize(MOST).build())) {
                Path out = Files.createDirectories(disk.getPath("/out"));
                Map<String, byte[]> old = set((byte) 'o', 3 * BLOCK);
                Map<String, byte[]> anew = set((byte) 'n', 4 * BLOCK);
                new FileSets(out).replace("a", old, Set.of());
                Path filler = disk.getPath("/filler");
                Files.write(filler, new byte[MOST - 9 * BLOCK - free * BLOCK]);
                try {
                    new FileSets(out).replace("a", anew, Set.of());
                    stands(anew, out);
                    replaced++;
                } catch (IOException e) {
                    stands(old, out);
                    refused++;
                    Files.delete(filler);
                    new FileSets(out).recover();
                    stands(old, out);
                    new FileSets(out).replace("a", anew, Set.of());
                    stands(anew, out);
                }
            }
        }
        // The new set needs twelve blocks beside the old one, and a block for what is gone.
        assertTrue(refused >= 12 && replaced >= 5, refused + " refused, " + replaced + " replaced");
    }

    private static Map<String, byte[]> set(byte content, int size) {
        byte[] bytes = new byte[size];
        Arrays.fill(bytes, content);
        return Map.of("a-key.pdf", bytes, "a-handout.pdf", bytes, "manifest/a.json", bytes);
    }

    private static void stands(Map<String, byte[]> set, Path out) throws IOException {
        List<String> there;
        try (Stream<Path> all = Files.walk(out)) {
            there = all.filter(Files::isRegularFile).map(p -> out.relativize(p).toString()).sorted().toList();
        }
        assertEquals(List.copyOf(new TreeMap<>(set).keySet()), there);
        for (String name : there) {
            assertArrayEquals(set.get(name), Files.readAllBytes(out.resolve(name)), name);
        }
    }
}
