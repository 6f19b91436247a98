package tarewright.document;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.resolve.Slip;
import tarewright.quantity.Digits;
import tarewright.quantity.Unit;

/** What common mistakes give, so that a marker knows a wrong number by its slip. */
final class Mistakes {
    private static final int FIGURES = 4;

    private final Draft draft;

    Mistakes(Draft draft) {
        this.draft = draft;
    }

    /** A table of the slips of an answer, or nothing. */
    List<Piece> of(ResolvedAnswer answer) {
        Optional<Figure> value = answer.value();
        if (value.isEmpty() || answer.slips().isEmpty()) {
            return List.of();
        }
        List<List<List<Text>>> rows = answer.slips().stream().map(s -> row(s, value.get())).toList();
        return List.of(new Piece.Table(List.of(), List.of(Text.words(draft.say("slips.gives")), Text.words(draft.say("slips.mistake"))),
                rows, List.of(true, false), true, Piece.Use.READ));
    }

    private List<List<Text>> row(Slip slip, Figure value) {
        String mistake = draft.say("slip." + slip.kind().id());
        return List.of(Text.words(shown(slip.value(), value)),
                Text.words(slip.cannotTell() ? draft.say("slips.cannot-tell", "mistake", mistake) : mistake));
    }

    private String shown(double si, Figure like) {
        Unit unit = like.unit();
        double shown = unit.fromSi(si);
        return draft.numbers().printed(shown, unit, Digits.decimalsOfSignificant(shown, FIGURES));
    }
}
