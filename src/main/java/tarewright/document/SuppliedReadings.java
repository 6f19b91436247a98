package tarewright.document;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.declare.ReadingBlock;
import tarewright.procedure.resolve.Referent;
import tarewright.procedure.syntax.TypedBlock;

/**
 * The student's sheet with the readings written in, for a student who missed the class. What is worked from them stays open: a difference too, where both of its readings stand on
 * the sheet.
 */
final class SuppliedReadings implements Filling {
    private final Draft draft;
    private final Filling open;
    private final KeyAnswer written;
    private final Set<String> blanks = new HashSet<>();

    /** @param draft of the procedure with supplied readings. @param open the sheet with nothing written in */
    SuppliedReadings(Draft draft, Filling open) {
        this.draft = draft;
        this.open = open;
        this.written = new KeyAnswer(draft);
        draft.procedure().referents().values().forEach(r -> {
            if (r instanceof Referent.Blank blank) {
                blanks.add(blank.what());
            }
        });
    }

    @Override
    public List<Text> blank(String what, Figure supplied, String head) {
        boolean given = draft.procedure().procedure().reading(what).map(this::isGiven).orElse(supplied.from().isEmpty() && !draft.keeps(supplied));
        return given ? written.blank(what, supplied, head) : open.blank(what, supplied, head);
    }

    private boolean isGiven(ReadingBlock reading) {
        return reading.difference().filter(d -> blanks.contains(d.first().value()) && blanks.contains(d.second().value())).isEmpty();
    }

    @Override
    public List<Text> hidden(String what, Figure figure) {
        return open.hidden(what, figure);
    }

    @Override
    public List<Piece> space(AnswerBlock answer) {
        return open.space(answer);
    }

    @Override
    public boolean shows(TypedBlock block) {
        return false;
    }
}
