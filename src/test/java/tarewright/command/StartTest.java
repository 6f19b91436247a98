package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A command does not wait for what it does not need: which classes a fresh Java takes in, as Java itself logs it. */
class StartTest {
    private static final Pattern PAPER = Pattern.compile("(org\\.apache\\.(pdfbox|fontbox|batik|poi)|com\\.openhtmltopdf|freemarker|java\\.awt)\\..*");
    private static final Path PROCEDURE = Path.of("procedures", "soda-measures-an-acid.md");

    @TempDir
    private Path folder;

    @Test
    void whoAsksForFiguresDoesNotWaitForTheEngineThatPrints() throws Exception {
        Set<String> classes = loaded("figures", PROCEDURE.toString());
        assertTrue(classes.contains("tarewright.procedure.resolve.Resolver"), "the log tells of classes");
        assertEquals(List.of(), classes.stream().filter(c -> PAPER.matcher(c).matches()).sorted().toList());
        assertFalse(classes.contains("com.fasterxml.jackson.databind.ObjectMapper"), "nor for a mapper that a line of JSON does without");
    }

    @Test
    void whoAsksForACheckDoesNotWaitForItEither() throws Exception {
        assertEquals(List.of(), loaded("proof", PROCEDURE.toString()).stream().filter(c -> PAPER.matcher(c).matches()).sorted().toList());
    }

    @Test
    void whoAsksForHelpDoesNotWaitForTheTables() throws Exception {
        Set<String> classes = loaded("--help");
        assertTrue(classes.contains("picocli.CommandLine"), "the log tells of classes");
        assertFalse(classes.contains("tarewright.tables.Tables"));
    }

    @Test
    void aLineOfJsonIsWhatTheLibrarysOwnMapperWrites() throws Exception {
        ObjectMapper mapper = new ObjectMapper();
        Object value = Map.of("text", List.of("\"quoted\" \\ µ ⇌ \u0007 \uD83E\uDDEA", true, 3, List.of(), Map.of()));
        assertEquals(mapper.writeValueAsString(value), JsonLine.of(value));
        var tree = mapper.readTree("{\"a\":[1,2.50,-1e-7,0.1,12345678901234567890,null,true],\"b\":{\"c\":\"\\n\\t\\u0000\",\"d\":{}}}");
        assertEquals(mapper.writeValueAsString(tree), JsonLine.of(tree));
    }

    private Set<String> loaded(String... arguments) throws IOException, InterruptedException {
        Path log = folder.resolve("classes.txt");
        List<String> command = Stream.concat(Stream.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx512m", "-XX:TieredStopAtLevel=1",
                "-Xlog:class+load:file=" + log + "::filecount=0", "-cp", System.getProperty("java.class.path"), Main.class.getName()), Stream.of(arguments)).toList();
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(folder.resolve("said.txt").toFile()).start();
        assertEquals(0, process.waitFor(), () -> said(folder.resolve("said.txt")));
        try (Stream<String> lines = Files.lines(log)) {
            return lines.map(l -> l.replaceFirst("^(\\[[^]]*])*\\s*", "").split(" ")[0]).collect(Collectors.toSet());
        }
    }

    private static String said(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            return e.getMessage();
        }
    }
}
