package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
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
import tarewright.wording.DocumentWords;

/**
 * A print that is killed leaves whole files that belong together. A real process is killed at moments drawn from a seed ({@code kills.seed}); {@code kills} sets how often, in
 * verify a few: the long run is told in the notes for developers. Every other kill is one that the process is told of, as at Ctrl-C or a logout.
 */
class KillTest {
    private static final int OF_PROCEDURES = Integer.getInteger("kills", 6);
    private static final int OF_A_TERM = Integer.getInteger("kills", 2);
    private static final long SEED = Long.getLong("kills.seed", 20411);
    private static final List<String> LIBRARY = List.of("hydrogen-from-magnesium", "soda-measures-an-acid");
    private static final List<String> KINDS = List.of("handout", "key", "safety", "prep", "labels");
    private static final String TERM = """
            ---
            term: Spring 2041
            documents: handout; key; safety; prep; labels
            procedures: hydrogen-from-magnesium; soda-measures-an-acid
            copies: one
            ---

            ```section Mon
            date: 2041-02-04
            ```

            ```section Tue
            date: 2041-02-05
            ```
            """;
    @TempDir
    private Path folder;

    @Test
    void whatAKilledPrintLeavesIsWholeAndOfOneVersionAndTheNextPrintCompletes() throws Exception {
        kill(false, OF_PROCEDURES, List.of(""));
    }

    @Test
    void whatAKilledPrintOfATermLeavesIsWholeInEverySectionAndTheNextPrintCompletes() throws Exception {
        kill(true, OF_A_TERM, List.of("Mon", "Tue"));
    }

    private void kill(boolean term, int kills, List<String> sections) throws Exception {
        Path procedures = Files.createDirectories(folder.resolve("procedures"));
        for (String name : LIBRARY) {
            Files.copy(Path.of("procedures", name + ".md"), procedures.resolve(name + ".md"));
        }
        if (term) {
            Files.writeString(procedures.resolve("term.md"), TERM);
        }
        Path what = term ? procedures.resolve("term.md") : procedures;
        Path out = folder.resolve("out");
        print(what, out, 5);
        long start = System.nanoTime();
        print(what, out, 6);
        int once = (int) Math.max(1000, TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start));
        SplittableRandom random = new SplittableRandom(SEED);
        int ended = 0;
        int unfinished = 0;
        for (int i = 0; i < kills; i++) {
            boolean told = i % 2 == 1;
            Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx512m", "-XX:TieredStopAtLevel=1",
                    "-cp", System.getProperty("java.class.path"), KillTest.class.getName(), what.toString(), out.toString(), "" + random.nextInt(30))
                    .redirectErrorStream(true).redirectOutput(new File(folder.toFile(), "log")).start();
            Path started = out.resolveSibling("started");
            while (!Files.exists(started) && process.isAlive()) {
                Thread.sleep(5);
            }
            // A cold process is slower than this one: most moments fall into its first print, some into the next.
            if (!process.waitFor(random.nextInt(3 * once), TimeUnit.MILLISECONDS)) {
                if (told) {
                    process.destroy();
                } else {
                    process.toHandle().destroyForcibly();
                }
            } else {
                ended++;
            }
            process.waitFor();
            Files.deleteIfExists(started);
            for (String section : sections) {
                unfinished += whole(out.resolve(section), section, !told);
            }
            unfinished += term ? ofTheTerm(out, !told) : 0;
        }
        assertEquals(0, ended, "the print ended by itself: " + Files.readString(folder.resolve("log")));
        print(what, out, 31);
        for (String section : sections) {
            assertEquals(0, whole(out.resolve(section), section, false));
            printed(out.resolve(section));
        }
        if (term) {
            assertEquals(0, ofTheTerm(out, false));
            assertEquals(Set.of(LotRecord.read(out.resolve("manifest/term.json")).orElseThrow().version()), codes(out.resolve("term-order.pdf"), "order"));
        }
        try (Stream<Path> left = Files.walk(out)) {
            assertEquals(List.of(".lock"), left.map(p -> p.getFileName().toString()).filter(n -> n.startsWith(".")).toList());
        }
        System.out.println("kills" + (term ? " of a term" : "") + ": " + kills + ", seed " + SEED + ", sets caught between their renames: " + unfinished);
    }

    /** Prints again and again, each time for another number of groups, until it is killed. */
    public static void main(String[] arguments) throws IOException {
        Path out = Path.of(arguments[1]);
        Files.writeString(out.resolveSibling("started"), "");
        for (int groups = Integer.parseInt(arguments[2]);; groups++) {
            print(Path.of(arguments[0]), out, groups % 30 + 1);
        }
    }

    private static void print(Path what, Path out, int groups) {
        StringWriter said = new StringWriter();
        List<String> arguments = new ArrayList<>(List.of("print", "--out", out.toString(), "--groups", "" + groups));
        if (Files.isDirectory(what)) {
            arguments.addAll(List.of(what.toString(), "--only", String.join(",", KINDS)));
        } else {
            arguments.addAll(List.of("--term", what.toString()));
        }
        assertEquals(0, Main.run(arguments.toArray(String[]::new), new PrintWriter(said), new PrintWriter(said)), said::toString);
    }

    /**
     * Every PDF that is there opens, has the version code in the footer of each page, and those of one procedure have the same.
     *
     * @param mayLack whether a set may lack documents while its renames are under way
     * @return sets that lack some
     */
    private static int whole(Path out, String section, boolean mayLack) throws IOException {
        int lacking = 0;
        for (String name : LIBRARY) {
            Set<String> codes = new TreeSet<>();
            int documents = 0;
            for (String kind : KINDS) {
                Path file = out.resolve(name + "-" + kind + ".pdf");
                if (Files.exists(file)) {
                    documents++;
                    codes.addAll(codes(file, kind));
                }
            }
            assertTrue(codes.size() <= 1, section + " " + name + ": " + codes);
            if (documents < KINDS.size()) {
                lacking++;
                assertTrue(mayLack && Files.exists(out.resolve("." + name + ".ready")), section + " " + name + " lacks a document");
            }
        }
        Path packet = out.resolve(section + "-packet.pdf");
        if (Files.exists(packet)) {
            Map<String, Set<String>> byProcedure = new TreeMap<>();
            footers(packet, KINDS).forEach(f -> byProcedure.computeIfAbsent(f.get(0), n -> new TreeSet<>()).add(f.get(1)));
            assertTrue(byProcedure.values().stream().allMatch(c -> c.size() == 1) && byProcedure.size() == LIBRARY.size(), packet + " " + byProcedure);
        }
        return lacking;
    }

    /** The term's prep sheet and order list are whole and have one code. @return 1 if one lacks while the renames are under way */
    private static int ofTheTerm(Path out, boolean mayLack) throws IOException {
        Set<String> codes = new TreeSet<>();
        int documents = 0;
        for (String kind : List.of("prep", "order")) {
            Path file = out.resolve("term-" + kind + ".pdf");
            if (Files.exists(file)) {
                documents++;
                codes.addAll(codes(file, kind));
            }
        }
        assertTrue(codes.size() <= 1, codes.toString());
        assertTrue(documents == 2 || mayLack && Files.exists(out.resolve(".term.ready")), "the term lacks a document");
        return documents == 2 ? 0 : 1;
    }

    /** After a print that was left alone each procedure has the code of its record, and every document that was asked for. */
    private static void printed(Path out) throws IOException {
        for (String name : LIBRARY) {
            String version = LotRecord.read(out.resolve("manifest").resolve(name + ".json")).orElseThrow().version();
            for (String kind : KINDS) {
                assertEquals(Set.of(version), codes(out.resolve(name + "-" + kind + ".pdf"), kind), name + " " + kind);
            }
        }
    }

    private static Set<String> codes(Path file, String kind) throws IOException {
        Set<String> codes = new TreeSet<>();
        footers(file, List.of(kind)).forEach(f -> codes.add(f.get(1)));
        assertFalse(codes.isEmpty(), file.toString());
        return codes;
    }

    private static final Pattern LABEL = Pattern.compile("(?m)^([^·\\n]+) · ([a-z2-7]{7})\\s*$");

    /**
     * The procedure's short name and the version code (RFC 4648 base 32 in small letters) from the last line of each page, or of each label. Pages left blank for the back have neither.
     */
    private static List<List<String>> footers(Path file, List<String> kinds) throws IOException {
        String names = String.join("|", kinds.stream().map(k -> Pattern.quote(DocumentWords.in("en").say("kind." + k))).toList());
        Pattern footer = Pattern.compile("([^·\\n]+) · (?:[^·\\n]+ · )*(?:" + names + ") · ([a-z2-7]{7})(?![a-z0-9])");
        List<List<String>> all = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertTrue(pdf.getNumberOfPages() > 0, file.toString());
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setStartPage(page);
                text.setEndPage(page);
                String said = text.getText(pdf);
                int before = all.size();
                for (Pattern pattern : kinds.contains("labels") ? List.of(footer, LABEL) : List.of(footer)) {
                    Matcher matcher = pattern.matcher(said);
                    while (matcher.find()) {
                        all.add(List.of(matcher.group(1), matcher.group(2)));
                    }
                }
                assertTrue(all.size() > before || said.isBlank(), file + ", page " + page + " has no version code:\n" + said);
            }
        }
        return all;
    }
}
