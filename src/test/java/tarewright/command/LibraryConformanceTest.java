package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import tarewright.library.Library;
import tarewright.print.VeraPdf;

/**
 * What is printed of the procedures that we ship conforms to ISO 14289-1 (PDF/UA-1) and ISO 19005-2 (PDF/A-2a), by the veraPDF rules for them. In verify one document
 * of each procedure, every kind, paper and language in turn; {@code -Dconformance=all} takes every document of every procedure on both papers in both languages, and the
 * term with its packets and order list, keeps the files under {@code target/conformance} and writes what was found beside them.
 */
class LibraryConformanceTest {
    private static final boolean ALL = "all".equals(System.getProperty("conformance"));
    private static final List<String> KINDS = List.of("handout", "key", "safety", "prep", "labels", "missed", "missed-key");
    private static final List<String> PAPERS = List.of("A4", "Letter");
    private static final List<String> LANGUAGES = List.of("en", "es");
    private static final Path KEPT = Path.of("target", "conformance");

    @TempDir
    private Path folder;

    /** @param kinds as the command line takes them */
    private record Print(Path procedure, String paper, String language, String kinds) {
        @Override
        public String toString() {
            return procedure.getFileName() + ", " + paper + ", " + language + ": " + kinds;
        }
    }

    static Stream<Print> prints() {
        List<Path> files = Library.files();
        if (ALL) {
            return files.stream().flatMap(f -> PAPERS.stream().flatMap(p -> LANGUAGES.stream().map(l -> new Print(f, p, l, String.join(",", KINDS)))));
        }
        return IntStream.range(0, files.size()).mapToObj(i -> new Print(files.get(i), PAPERS.get(i % 2), LANGUAGES.get(i / 2 % 2), KINDS.get(i % KINDS.size())));
    }

    @ParameterizedTest
    @MethodSource("prints")
    void everyDocumentPassesWithoutAFailedCheck(Print print) throws Exception {
        Path procedures = in(print.language());
        Path out = out().resolve(print.procedure().getFileName().toString().replace(".md", "") + "-" + print.paper() + "-" + print.language());
        List<String> arguments = new ArrayList<>(List.of("print", procedures.resolve(print.procedure().getFileName()).toString(), "--paper", print.paper(), "--out", out.toString(),
                "--only", print.kinds()));
        if (ALL || "handout".equals(print.kinds()) || "safety".equals(print.kinds())) {
            arguments.add("--large");
        }
        passes(out, arguments);
    }

    /** One section of the term in verify: its packet and the documents in it. */
    @ParameterizedTest
    @MethodSource("terms")
    void aTermPassesWithItsPacketsAndItsOrderList(String language) throws Exception {
        Path out = out().resolve("term-" + language);
        List<String> arguments = new ArrayList<>(List.of("print", "--term", in(language).resolve("spring-term.md").toString(), "--out", out.toString()));
        if (!ALL) {
            arguments.addAll(List.of("--section", "Tue", "--only", "safety"));
        }
        passes(out, arguments);
    }

    static Stream<String> terms() {
        return ALL ? LANGUAGES.stream() : Stream.of("en");
    }

    private Path out() {
        return ALL ? KEPT : folder.resolve("out");
    }

    /** The library with these fixed words; what the author wrote stays in his own language. */
    private Path in(String language) throws IOException {
        Path copies = Files.createDirectories(folder.resolve(language));
        try (Stream<Path> all = Files.list(Path.of("procedures"))) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                byte[] bytes = Files.readAllBytes(file);
                boolean says = !file.toString().endsWith(".md") || Files.readString(file).contains("\nlanguage:");
                Files.write(copies.resolve(file.getFileName().toString()), says ? bytes : Files.readString(file).replaceFirst("\ntitle:", "\nlanguage: " + language + "\ntitle:").getBytes(java.nio.charset.StandardCharsets.UTF_8));
            }
        }
        return copies;
    }

    private static void passes(Path out, List<String> arguments) throws Exception {
        StringWriter said = new StringWriter();
        assertEquals(0, Main.run(arguments.toArray(String[]::new), new PrintWriter(said), new PrintWriter(said)), said::toString);
        List<Path> files;
        try (Stream<Path> all = Files.walk(out)) {
            files = all.filter(f -> f.toString().endsWith(".pdf")).sorted().toList();
        }
        assertTrue(!files.isEmpty(), said::toString);
        List<String> failures = new ArrayList<>();
        for (Path file : files) {
            byte[] pdf = Files.readAllBytes(file);
            for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)) {
                VeraPdf.Outcome outcome = VeraPdf.check(pdf, flavour);
                assertTrue(outcome.checks() > 100, "so few checks that nothing can have been looked at: " + outcome.checks());
                outcome.failures().forEach(f -> failures.add(file + ", " + flavour + ": " + f));
                if (ALL) {
                    Files.writeString(KEPT.resolve("found.txt"), file + ", " + flavour + ": " + outcome.checks() + " checks, " + outcome.failures().size() + " failures\n",
                            StandardOpenOption.CREATE, StandardOpenOption.APPEND);
                }
            }
        }
        assertEquals(List.of(), failures);
    }
}
