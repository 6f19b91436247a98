package tarewright.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever a file holds is answered with findings, soon, at places in the file: inputs are sought that reach new code (Jazzer, a
 * fuzzer for the JVM guided by coverage). Runs in the profile {@code fuzz} alone; {@code -Dfuzz.seconds} is the time for each target.
 * What it found is under {@code target/fuzz/<target>}; each input found goes into {@code HostileTest} with what it must be answered with.
 */
@Tag("fuzz")
class FuzzTest {
    private static final String SECONDS = System.getProperty("fuzz.seconds", "60");
    private static final String SEED = System.getProperty("fuzz.seed", "1");
    private static final Path FOLDER = Path.of("target", "fuzz");
    private static final Pattern TRIED = Pattern.compile("Done (\\d+) runs in (\\d+) second");
    private static final Pattern FOUND = Pattern.compile("(?m)^== Java Exception.*|^.*(libFuzzer: timeout|libFuzzer: out-of-memory).*");
    private static final Pattern FIELD = Pattern.compile("(?m)^ *[a-z -]+: *(\\S.*)$");
    private static final Pattern WORD = Pattern.compile("[\\p{L}][\\p{L} -]{2,20}(?=[:{}(]|$)|[a-z]{3,12}");

    /** @param most the longest input, in bytes */
    private record Target(String name, String type, int most, List<String> seeds) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Target> targets() throws IOException {
        List<String> procedures = library();
        List<String> typed = procedures.stream().flatMap(p -> FIELD.matcher(p).results()).map(m -> m.group(1)).distinct().sorted().toList();
        List<String> equations = typed.stream().filter(t -> t.contains("->")).toList();
        List<String> formulas = equations.stream().flatMap(e -> Stream.of(e.split(" +"))).map(f -> f.replaceAll("\\([a-z]+\\)$", "")).distinct().toList();
        List<String> fronts = procedures.stream().map(p -> p.split("(?m)^---$", 3)).filter(p -> p.length == 3).map(p -> p[1].strip()).toList();
        return Stream.of(new Target("formula", "tarewright.fuzz.FormulaTarget", 400, formulas),
                new Target("equation", "tarewright.fuzz.EquationTarget", 600, equations),
                new Target("quantity", "tarewright.fuzz.QuantityTarget", 200, typed),
                new Target("expression", "tarewright.fuzz.ExpressionTarget", 600, typed),
                new Target("front", "tarewright.fuzz.FrontTarget", 3000, fronts),
                new Target("reader", "tarewright.procedure.syntax.ReaderTarget", 12_000, procedures),
                new Target("procedure", "tarewright.command.ProcedureTarget", 12_000, procedures),
                new Target("own-table", "tarewright.fuzz.OwnTableTarget", 4000, tables()),
                new Target("drawing", "tarewright.print.DrawingTarget", 8000, drawings()));
    }

    @ParameterizedTest
    @MethodSource("targets")
    void whateverAFileHoldsIsAnsweredWithFindingsAtPlaces(Target target) throws Exception {
        Path folder = FOLDER.resolve(target.name());
        Path seeds = Files.createDirectories(folder.resolve("seeds"));
        Path corpus = Files.createDirectories(folder.resolve("corpus"));
        Path crashes = Files.createDirectories(folder.resolve("crashes"));
        int number = 0;
        for (String seed : target.seeds()) {
            Files.writeString(seeds.resolve("" + number++), seed);
        }
        // An empty list of words is refused, so one word at least.
        Files.write(folder.resolve("words"), Stream.concat(Stream.of("\"10^-3\""), dictionary(target.seeds()).stream()).toList());
        Path log = folder.resolve("log.txt");
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx1g", "-Xss1m", "-XX:+UseSerialGC",
                "-cp", System.getProperty("java.class.path"), "com.code_intelligence.jazzer.Jazzer", "--target_class=" + target.type(),
                "--instrumentation_includes=tarewright.**:org.commonmark.**", "--keep_going=20", "--reproducer_path=" + crashes,
                "-artifact_prefix=" + crashes + File.separator, "-max_total_time=" + SECONDS, "-seed=" + SEED, "-max_len=" + target.most(),
                "-timeout=60", "-rss_limit_mb=3000", "-print_final_stats=1", "-dict=" + folder.resolve("words"), corpus.toString(), seeds.toString())
                .redirectErrorStream(true).redirectOutput(log.toFile()).start();
        int status = process.waitFor();
        String said = Files.readString(log, java.nio.charset.StandardCharsets.ISO_8859_1);
        Matcher tried = TRIED.matcher(said);
        assertTrue(tried.find() && Long.parseLong(tried.group(1)) > target.seeds().size(), () -> "nothing was tried, see " + log);
        List<String> found = FOUND.matcher(said).results().map(m -> m.group()).toList();
        Files.writeString(folder.resolve("result.txt"), target + ": " + tried.group(1) + " inputs in " + tried.group(2) + " s, seed " + SEED + ", " + found.size() + " found\n");
        assertEquals(List.of(), found, () -> "see " + log);
        assertEquals(0, status, () -> "see " + log);
    }

    private static List<String> library() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("procedures"))) {
            return texts(files.filter(f -> f.toString().endsWith(".md")).sorted().toList());
        }
    }

    private static List<String> drawings() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/resources/tarewright/pictograms"))) {
            return texts(files.filter(f -> f.toString().endsWith(".svg")).sorted().toList());
        }
    }

    private static List<String> tables() {
        return List.of("name,formula,state,density,source\nsoda,Na2CO3,s,2.54 g/mL,bottle\n",
                "name,classification,formula,state\nsoda,Eye Irrit. 2: H319 >= 10 %,Na2CO3,s\n");
    }

    private static List<String> texts(List<Path> files) throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path file : files) {
            texts.add(Files.readString(file));
        }
        return texts;
    }

    /** Words that the seeds hold, as tokens to put in. */
    private static List<String> dictionary(List<String> seeds) {
        TreeSet<String> words = new TreeSet<>();
        seeds.forEach(s -> WORD.matcher(s).results().forEach(m -> words.add(m.group())));
        return words.stream().filter(w -> w.chars().allMatch(c -> c >= ' ' && c < 127 && c != '"' && c != '\\')).limit(1500).map(w -> '"' + w + '"').toList();
    }
}
