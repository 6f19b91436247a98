package tarewright.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Files packed with the program, by their path under {@code tarewright}. */
final class Packed {
    private Packed() {
    }

    static byte[] bytes(String path) {
        try (InputStream in = Packed.class.getResourceAsStream("/tarewright/" + path)) {
            if (in == null) {
                throw new IllegalStateException("not packed: " + path);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static boolean has(String path) {
        return Packed.class.getResource("/tarewright/" + path) != null;
    }

    static String text(String path) {
        return new String(bytes(path), StandardCharsets.UTF_8);
    }
}
