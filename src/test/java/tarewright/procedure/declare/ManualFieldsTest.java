package tarewright.procedure.declare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tarewright.procedure.syntax.BlockTypes;

/** Each field that a block or the front matter may have is in the manual's reference. */
class ManualFieldsTest {
    @Test
    void everyFieldIsInTheReference() throws IOException {
        String reference = Files.readString(Path.of("src/manual/language.md"));
        List<String> types = new ArrayList<>(BlockTypes.ALL);
        types.add(Vocabulary.FRONT);
        List<String> missing = types.stream().flatMap(t -> Vocabulary.of(t).stream().filter(f -> !reference.contains("`" + f + "`")).map(f -> t + ": " + f)).toList();
        assertFalse(Vocabulary.of("gas").isEmpty());
        assertEquals(List.of(), missing);
    }
}
