package tarewright.procedure.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import tarewright.finding.Found;
import tarewright.text.SourceText;

/** The small procedure of the language's description, read to a tree with every place in it. */
class GoldenTest {
    @Test
    void theSmallProcedureIsReadToTheTreeThatWasReviewed() {
        Found<SourceFile> found = Reader.read(new SourceText("hydrogen.md", Samples.HYDROGEN));
        assertEquals("", TreeText.of(found.findings()));
        assertEquals(Samples.resource("hydrogen.tree.txt"), TreeText.of(found.value()));
    }
}
