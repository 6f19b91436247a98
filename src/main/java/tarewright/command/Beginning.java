package tarewright.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** The short complete procedures that a teacher starts from, one for each kind of practical. */
enum Beginning {
    GAS, TITRATION, PRECIPITATE, SOLUTION, HEAT, SYNTHESIS;

    static List<String> words() {
        return List.of(values()).stream().map(Beginning::word).toList();
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The procedure's text under a title of the teacher's own. */
    String text(String title) {
        try (InputStream in = Beginning.class.getResourceAsStream("/tarewright/begin/" + word() + ".md")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            int from = text.indexOf("title: ");
            return text.substring(0, from) + "title: " + title + text.substring(text.indexOf('\n', from));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
