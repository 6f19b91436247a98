package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tarewright.document.Documents;
import tarewright.document.Sheet;
import tarewright.finding.Found;
import tarewright.print.Templates;
import tarewright.print.WebPrinter;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.HazardTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/**
 * Every document of every procedure that we ship, as a page in a real browser, under the rules of axe-core for WCAG 2.1 AA. Needs npm and Chromium
 * (its place in the variable CHROME, or on the path), so it runs in the profile {@code accessibility} alone.
 */
@Tag("accessibility")
class AccessibilityTest {
    private static final Path FOLDER = Path.of("target", "accessibility");

    @Test
    void aRuleEngineInABrowserFindsNothing() throws Exception {
        Files.createDirectories(FOLDER);
        int pages = 0;
        for (Path file : procedures()) {
            pages += write(file);
        }
        assertTrue(pages >= 5 * 10);
        run("npm", "install", "--prefix", FOLDER.toString(), "--no-fund", "--no-audit", "--save-exact", "axe-core@4.14.1", "puppeteer-core@24.43.1");
        run("node", Path.of("src", "test", "accessibility", "check.mjs").toString(), FOLDER.toString(), browser());
    }

    private static List<Path> procedures() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("procedures"))) {
            return files.filter(f -> f.toString().endsWith(".md") && !f.endsWith("spring-term.md")).sorted().toList();
        }
    }

    private static int write(Path file) throws IOException {
        String name = file.getFileName().toString().replace(".md", "");
        Found<Resolved> found = Resolver.resolve(name, Reader.read(new SourceText(name, Files.readString(file))).value(), Overrides.NONE, Tables.load());
        List<Sheet> sheets = new Documents(HazardTables.of("")).sheets(found.value(), EnumSet.allOf(Sheet.Kind.class), List.of(), "abcdefg", "");
        WebPrinter printer = new WebPrinter(Templates.packed());
        int number = 0;
        for (Sheet sheet : sheets) {
            Files.write(FOLDER.resolve(name + "-" + sheet.kind().word() + "-" + ++number + ".html"), printer.print(sheet));
        }
        return number;
    }

    private static String browser() {
        Optional<String> told = Optional.ofNullable(System.getenv("CHROME"));
        List<Path> places = Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
                .flatMap(p -> Stream.of("chromium", "chromium-browser", "google-chrome").map(n -> Path.of(p, n))).filter(Files::isExecutable).toList();
        return told.or(() -> places.stream().findFirst().map(Path::toString)).orElseThrow(() -> new AssertionError("no Chromium: say where in CHROME"));
    }

    /** What it says is kept as it comes, also of a run that somebody ends: in {@code found.txt}, and read out again where something was found. */
    private static void run(String... command) throws IOException, InterruptedException {
        Path says = FOLDER.resolve("found.txt");
        Process process = new ProcessBuilder(List.of(command)).redirectErrorStream(true).redirectOutput(says.toFile()).start();
        while (!process.waitFor(30, TimeUnit.SECONDS)) {
            List<String> lines = Files.readAllLines(says);
            System.out.println("accessibility: " + (lines.isEmpty() ? command[0] : lines.get(lines.size() - 1)));
        }
        assertEquals(0, process.exitValue(), () -> {
            try {
                return String.join(" ", command) + "\n" + Files.readString(says);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
