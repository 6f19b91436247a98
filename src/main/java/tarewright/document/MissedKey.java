package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.resolve.ResolvedReading;
import tarewright.procedure.syntax.TypedBlock;

/** The key to supplied readings: each beside the expected one, then every question worked from those that were supplied. */
final class MissedKey implements Filling {
    private final Draft expected;
    private final Draft draft;
    private final KeyAnswer answers;
    private final Workings workings;
    private final Accepted accepted;

    /** @param expected the procedure as it is expected. @param draft the same with supplied readings */
    MissedKey(Draft expected, Draft draft) {
        this.expected = expected;
        this.draft = draft;
        this.answers = new KeyAnswer(draft);
        this.workings = new Workings(draft);
        this.accepted = new Accepted(expected);
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        Grid grid = new Grid(draft, "").words("expect.reading").numbers("missed.supplied", "expect.expected").words("expect.accept");
        for (ResolvedReading reading : draft.procedure().readings()) {
            Resolved usual = expected.procedure();
            usual.reading(reading.block().name()).ifPresent(usually -> {
                List<Figure> each = reading.each().isEmpty() ? List.of(reading.value()) : reading.each();
                String supplied = String.join("; ", each.stream().map(f -> draft.numbers().printed(f)).toList());
                grid.row(draft.prose().of(reading.block().name()), List.of(new Text.Filled(supplied)),
                        Text.words(draft.numbers().printed(usually.value())), Text.words(accepted.range(usually.value()).orElse("")));
            });
        }
        pieces.addAll(grid.under(2, "heading.missed"));
        List<Piece> questions = Key.worked(draft, new BodyWalk(draft, this).body());
        if (!questions.isEmpty()) {
            pieces.add(draft.heading(2, "heading.answers"));
            pieces.addAll(questions);
        }
        return pieces;
    }

    @Override
    public List<Piece> space(AnswerBlock answer) {
        Optional<ResolvedAnswer> worked = draft.procedure().answer(answer.block()).filter(a -> a.value().isPresent());
        if (worked.isEmpty()) {
            return answers.space(answer);
        }
        Figure value = worked.get().value().get();
        List<Piece> pieces = new ArrayList<>();
        List<Piece.WorkedLine> lines = workings.all(value);
        if (!lines.isEmpty()) {
            pieces.add(new Piece.Working(lines));
        }
        List<Text> said = new ArrayList<>(draft.compose("missed.value", Map.of("value", List.of(new Text.Filled(draft.numbers().printed(value))))));
        expected.procedure().answer(answer.block()).ifPresent(usual -> usual.value().ifPresent(v -> usual.accepted()
                .flatMap(a -> accepted.range(v, a)).ifPresent(range -> {
                    Typeset.join(said, " ");
                    Typeset.append(said, draft.compose("missed.class", Map.of("range", Text.words(range))));
                })));
        pieces.add(new Piece.Paragraph(said));
        return pieces;
    }

    @Override
    public List<Text> blank(String what, Figure supplied, String head) {
        return answers.blank(what, supplied, head);
    }

    @Override
    public List<Text> hidden(String what, Figure figure) {
        return answers.hidden(what, figure);
    }

    @Override
    public boolean shows(TypedBlock block) {
        return false;
    }
}
