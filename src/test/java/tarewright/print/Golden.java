package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Compares text with a file that a person has read; what came out instead is left under target/golden to be read and copied. */
final class Golden {
    private Golden() {
    }

    static void check(String name, String actual) {
        String expected = expected(name);
        if (!expected.equals(actual)) {
            try {
                Path out = Path.of("target", "golden", name);
                Files.createDirectories(out.getParent());
                Files.writeString(out, actual);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        assertEquals(expected, actual, name);
    }

    private static String expected(String name) {
        try (InputStream in = Golden.class.getResourceAsStream("/tarewright/print/" + name)) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
