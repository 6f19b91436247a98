package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.wording.FollowThrough;

/** How to mark an answer that a student worked from readings of her own: the formula, and a strip of answers for a run of readings. */
final class OwnReadings {
    private final Draft draft;

    OwnReadings(Draft draft) {
        this.draft = draft;
    }

    /** What follows an answer in the key; nothing for an answer that no reading goes into. */
    List<Piece> of(Figure answer) {
        FollowThrough through = FollowThrough.of(draft.procedure(), draft.procedure().setting().language());
        Optional<String> formula = through.formula(answer);
        if (formula.isEmpty()) {
            return List.of();
        }
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece.Paragraph(Text.words(draft.say("own-readings.formula", "formula", formula.get()))));
        through.strip(answer).filter(s -> s.steps().size() > 1).ifPresent(s -> pieces.add(strip(s)));
        return pieces;
    }

    private Piece strip(FollowThrough.Strip strip) {
        List<List<Text>> head = new ArrayList<>(List.of(headed(strip.reading(), strip.unit())));
        List<List<Text>> row = new ArrayList<>(List.of(headed(draft.say("own-readings.answer"), strip.answerUnit())));
        List<Boolean> right = new ArrayList<>(List.of(false));
        for (FollowThrough.Entry step : strip.steps()) {
            head.add(Text.words(step.reading()));
            row.add(step.expected() ? List.of(new Text.Strong(Text.words(step.answer()))) : Text.words(step.answer()));
            right.add(true);
        }
        return new Piece.Table(List.of(), head, List.of(row), right, true, Piece.Use.READ);
    }

    /** A quantity over its unit, as ISO 80000-1 heads a row of numbers. */
    private static List<Text> headed(String name, String unit) {
        return Text.words(unit.isEmpty() ? name : name + " / " + (unit.contains("/") ? "(" + unit + ")" : unit));
    }
}
