package tarewright.term;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Which program prints.
 *
 * @param data tells its tables, words, templates and typefaces from others: part of the version code. Its classes are left out, since
 * two compilers make two of one source
 * @param build tells its classes as well: what another build printed is printed again
 */
public record Program(String data, String build) {
    private static final String ROOT = "tarewright/";

    /** The one that runs, by the check sums of its files. */
    public static Program running() {
        try {
            Path place = Path.of(Program.class.getProtectionDomain().getCodeSource().getLocation().toURI());
            Map<String, Long> sums = Files.isDirectory(place) ? folder(place) : jar(place);
            StringBuilder data = new StringBuilder();
            sums.forEach((name, sum) -> data.append(name.endsWith(".class") ? "" : name + " " + sum + "\n"));
            return new Program(Hash.of(data.toString()), Hash.of(sums.toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Map<String, Long> folder(Path place) throws IOException {
        Map<String, Long> sums = new TreeMap<>();
        try (Stream<Path> all = Files.walk(place.resolve(ROOT))) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                CRC32 sum = new CRC32();
                sum.update(Files.readAllBytes(file));
                put(sums, place.relativize(file).toString().replace('\\', '/'), sum.getValue());
            }
        }
        return sums;
    }

    private static Map<String, Long> jar(Path place) throws IOException {
        Map<String, Long> sums = new TreeMap<>();
        try (ZipFile jar = new ZipFile(place.toFile())) {
            jar.stream().filter(e -> !e.isDirectory() && e.getName().startsWith(ROOT)).forEach((ZipEntry e) -> put(sums, e.getName(), e.getCrc()));
        }
        return sums;
    }

    /** The packed procedures are inputs like any other, not part of the program. */
    private static void put(Map<String, Long> sums, String name, long sum) {
        if (!name.startsWith(ROOT + "procedures/")) {
            sums.put(name, sum);
        }
    }
}
