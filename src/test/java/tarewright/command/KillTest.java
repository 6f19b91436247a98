package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tarewright.term.LotRecord;

/**
 * A print that is killed leaves whole files that belong together. A real process is killed at moments from a fixed seed; system property
 * {@code kills} sets how often (in verify a few; the long run is told in the notes for developers).
 */
class KillTest {
    private static final int KILLS = Integer.getInteger("kills", 8);
    private static final List<String> LIBRARY = List.of("hydrogen-from-magnesium", "soda-measures-an-acid");
    private static final Pattern CODE = Pattern.compile("\\b[a-z2-7]{7}\\b");
    @TempDir
    private Path folder;

    @Test
    void whatAKilledPrintLeavesIsWholeAndOfOneVersionAndTheNextPrintCompletes() throws Exception {
        Path procedures = Files.createDirectories(folder.resolve("procedures"));
        for (String name : LIBRARY) {
            Files.copy(Path.of("procedures", name + ".md"), procedures.resolve(name + ".md"));
        }
        Path out = folder.resolve("out");
        print(procedures, out, 5);
        SplittableRandom random = new SplittableRandom(20411);
        int ended = 0;
        for (int i = 0; i < KILLS; i++) {
            Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx512m", "-XX:TieredStopAtLevel=1",
                    "-cp", System.getProperty("java.class.path"), KillTest.class.getName(), procedures.toString(), out.toString())
                    .redirectErrorStream(true).redirectOutput(new File(folder.toFile(), "log")).start();
            Path started = out.resolveSibling("started");
            while (!Files.exists(started) && process.isAlive()) {
                Thread.sleep(5);
            }
            if (!process.waitFor(random.nextInt(1500), TimeUnit.MILLISECONDS)) {
                process.toHandle().destroyForcibly();
            } else {
                ended++;
            }
            process.waitFor();
            Files.deleteIfExists(started);
            whole(out, false);
        }
        assertEquals(0, ended, "the print ended by itself: " + Files.readString(folder.resolve("log")));
        print(procedures, out, 7);
        whole(out, true);
        try (Stream<Path> left = Files.list(out)) {
            assertEquals(List.of(".lock"), left.map(p -> p.getFileName().toString()).filter(n -> n.startsWith(".")).toList());
        }
    }

    /** Prints again and again, each time for another number of groups, until it is killed. */
    public static void main(String[] arguments) throws IOException {
        Path out = Path.of(arguments[1]);
        Files.writeString(out.resolveSibling("started"), "");
        for (int groups = 1;; groups = groups % 30 + 1) {
            print(Path.of(arguments[0]), out, groups);
        }
    }

    private static void print(Path procedures, Path out, int groups) {
        StringWriter said = new StringWriter();
        assertEquals(0, Main.run(new String[] {"print", procedures.toString(), "--out", out.toString(), "--groups", "" + groups},
                new PrintWriter(said), new PrintWriter(said)), said::toString);
    }

    private static void whole(Path out, boolean complete) throws IOException {
        for (String name : LIBRARY) {
            Set<String> common = null;
            int documents = 0;
            for (String kind : List.of("handout", "key", "safety")) {
                Path file = out.resolve(name + "-" + kind + ".pdf");
                if (!Files.exists(file)) {
                    continue;
                }
                documents++;
                try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
                    assertTrue(pdf.getNumberOfPages() > 0);
                    Set<String> codes = new HashSet<>();
                    Matcher matcher = CODE.matcher(new PDFTextStripper().getText(pdf));
                    while (matcher.find()) {
                        codes.add(matcher.group());
                    }
                    // Only a version code holds a digit among its seven letters.
                    codes.removeIf(c -> c.chars().noneMatch(Character::isDigit));
                    if (common == null) {
                        common = codes;
                    } else if (!common.isEmpty() && !codes.isEmpty()) {
                        assertEquals(common, codes, file.toString());
                    }
                }
            }
            boolean settling = Files.exists(out.resolve("." + name + ".ready"));
            assertTrue(documents == 3 || settling && !complete, name + " lacks a document");
            if (complete) {
                String version = LotRecord.read(out.resolve("manifest").resolve(name + ".json")).orElseThrow().version();
                assertTrue(common.isEmpty() || common.equals(Set.of(version)), common + ", " + version);
            }
        }
    }
}
