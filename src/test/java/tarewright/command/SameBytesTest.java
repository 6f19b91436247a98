package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tarewright.term.Hash;

/**
 * A print is the same, byte for byte, whatever the machine is set to: language, calendar, digits, time zone, encoding, cores. Real processes print;
 * {@code -Dother.jdk=PATH} names another Java that must print the same too, {@code -Dsame=all} takes every procedure that we ship in every format, and the term.
 */
class SameBytesTest {
    private static final boolean ALL = "all".equals(System.getProperty("same"));

    /** Languages with other capitals (dotless i), other digits, another calendar; zones a day apart and with half hours; encodings that tear UTF-8 (each holds ASCII, as every real one does). */
    private static final List<List<String>> MACHINES = List.of(
            List.of("-Duser.language=en", "-Duser.country=US", "-Duser.timezone=UTC", "-XX:ActiveProcessorCount=2"),
            List.of("-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Asia/Kolkata", "-XX:ActiveProcessorCount=1", "-Dfile.encoding=ISO-8859-1"),
            List.of("-Duser.language=th", "-Duser.country=TH", "-Duser.extensions=u-ca-buddhist-nu-thai", "-Duser.timezone=Pacific/Apia",
                    "-XX:ActiveProcessorCount=1", "-Dfile.encoding=windows-31j"),
            List.of("-Duser.language=ar", "-Duser.country=EG", "-Duser.timezone=America/St_Johns", "-XX:ActiveProcessorCount=2"));

    @TempDir
    private Path folder;

    @Test
    void everyMachinePrintsTheSameBytes() throws Exception {
        String here = System.getProperty("java.home");
        List<String> javas = new ArrayList<>(List.of(here));
        Optional.ofNullable(System.getProperty("other.jdk")).ifPresent(javas::add);
        TreeMap<String, String> first = new TreeMap<>();
        for (String java : javas) {
            // In verify the plain machine and the strangest two; what differs by language alone shows in either.
            for (List<String> machine : ALL ? MACHINES : MACHINES.subList(0, 3)) {
                TreeMap<String, String> printed = printed(java, machine);
                if (first.isEmpty()) {
                    first.putAll(printed);
                }
                assertEquals(first.keySet(), printed.keySet(), () -> java + " " + machine);
                printed.entrySet().removeAll(first.entrySet());
                assertEquals(List.of(), List.copyOf(printed.keySet()), () -> java + " " + machine);
            }
        }
        List<String> endings = first.keySet().stream().map(f -> f.substring(f.lastIndexOf('.') + 1)).distinct().sorted().toList();
        assertTrue(endings.containsAll(List.of("docx", "html", "json", "pdf")), endings::toString);
        assertTrue(first.size() >= 14, first::toString);
    }

    /** SHA-256 of every file that a print leaves, by its name. */
    private TreeMap<String, String> printed(String java, List<String> machine) throws IOException, InterruptedException {
        Path out = Files.createDirectories(folder.resolve("out"));
        run(java, machine, Stream.concat(Stream.of("print", "--out", out.toString(), "--as", "pdf,html,docx", "--only", "handout,key,safety,prep,labels,missed,missed-key",
                "--large"), procedures()).toList());
        if (ALL) {
            run(java, machine, List.of("print", "--out", out.resolve("term").toString(), "--term", Path.of("procedures", "spring-term.md").toString()));
        }
        TreeMap<String, String> sums = new TreeMap<>();
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                sums.put(out.relativize(file).toString().replace('\\', '/'), Hash.of(Files.readAllBytes(file)));
            }
        }
        try (Stream<Path> files = Files.walk(out)) {
            files.sorted(Comparator.reverseOrder()).forEach(f -> f.toFile().delete());
        }
        return sums;
    }

    private static Stream<String> procedures() throws IOException {
        if (!ALL) {
            return Stream.of(Path.of("procedures", "soda-measures-an-acid.md").toString());
        }
        try (Stream<Path> files = Files.list(Path.of("procedures"))) {
            return files.filter(f -> f.toString().endsWith(".md") && !f.endsWith("spring-term.md")).map(Path::toString).sorted().toList().stream();
        }
    }

    private void run(String java, List<String> machine, List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Path.of(java, "bin", "java").toString(), "-Xmx512m", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        command.addAll(machine);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(arguments);
        Path log = folder.resolve("log");
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
        int status = process.waitFor();
        assertEquals(0, status, () -> {
            try {
                return machine + "\n" + Files.readString(log);
            } catch (IOException e) {
                return e.toString();
            }
        });
    }
}
