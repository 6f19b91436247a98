package tarewright.procedure.syntax;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Texts that several tests read. */
final class Samples {
    static final String HYDROGEN = resource("hydrogen.md");

    private Samples() {
    }

    static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(Samples.class.getResourceAsStream("/tarewright/syntax/" + name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
