package tarewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Does once what a teacher does, so that the build can keep the classes it needed in an archive from which later starts load them ready made. Nobody calls it but the build.
 */
final class Training {
    /** With a graph and a dilution series. All of the library would take the build too long. */
    private static final List<String> PRINTED = List.of("ladder-of-blue.md");

    private Training() {
    }

    /** Copies the packed procedures with what lies beside them: together they meet most of what a procedure can hold. @return those that are printed, too */
    private static List<String> library(Path to) throws IOException {
        List<String> printed = new ArrayList<>();
        Path packed = PackedProcedures.folder().orElseThrow();
        try (Stream<Path> all = Files.list(packed)) {
            for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
                Path copy = to.resolve(file.getFileName().toString());
                Files.copy(file, copy);
                if (PRINTED.contains(file.getFileName().toString())) {
                    printed.add(copy.toString());
                }
            }
        }
        return printed;
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("tarewright");
        try {
            Path procedure = folder.resolve("warm-up.md");
            String library = Files.createDirectory(folder.resolve("library")).toString();
            List<String> printed = library(Path.of(library));
            PrintWriter nobody = new PrintWriter(new StringWriter());
            List<String> print = new ArrayList<>(List.of("print", "--out", folder.resolve("out").toString(), procedure.toString()));
            print.addAll(printed);
            for (List<String> line : List.of(List.of("begin", "warm-up", "--folder", folder.toString()), List.of("figures", procedure.toString(), library),
                    List.of("proof", "--rehearse", procedure.toString()), print)) {
                int status = Main.run(line.toArray(String[]::new), nobody, nobody);
                if (status != Main.CLEAN) {
                    throw new IllegalStateException(String.join(" ", line) + " ended with " + status);
                }
            }
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}
