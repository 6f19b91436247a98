package tarewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Does once what a teacher does, so that the build can keep the classes it needed in an archive from which later starts load them ready made. Nobody calls it but the build.
 */
final class Training {
    private Training() {
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("tarewright");
        try {
            Path procedure = folder.resolve("warm-up.md");
            PrintWriter nobody = new PrintWriter(new StringWriter());
            for (List<String> line : List.of(List.of("begin", "warm-up", "--folder", folder.toString()), List.of("figures", procedure.toString()),
                    List.of("proof", "--rehearse", procedure.toString()), List.of("print", "--out", folder.resolve("out").toString(), procedure.toString()))) {
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
