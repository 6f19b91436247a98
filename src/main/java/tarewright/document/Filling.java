package tarewright.document;

import java.util.List;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.syntax.TypedBlock;

/** What a document puts where the students write, and where blocks stand that not every document shows. */
interface Filling {
    /**
     * One space to write a reading in.
     *
     * @param what is to be written
     * @param expected the figure
     * @param head the head of the column that it stands in; empty outside a table
     */
    List<Text> blank(String what, Figure expected, String head);

    /** A figure that the students are to find, where the text speaks of it. @param what as the author refers to it */
    List<Text> hidden(String what, Figure figure);

    /** Whether what is expected is drawn on a graph. */
    default boolean plots() {
        return false;
    }

    /** What follows a question. */
    List<Piece> space(AnswerBlock answer);

    /** Whether this document shows the Markdown of such a block ({@code key}, {@code prep}). */
    boolean shows(TypedBlock block);
}
