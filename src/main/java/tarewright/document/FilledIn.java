package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.syntax.TypedBlock;

/**
 * The student's sheet filled in: each answer in the room that the student has for it, no more, so that the pages of the key
 * break as those of the handout. What does not fit there stands among the answers behind it.
 */
final class FilledIn implements Filling {
    /** In letters; a written line of a handout is 7 mm or more high, a line of print here 4.4 mm. */
    private static final int LINE = 62;
    private static final double PRINTED_PER_RULED = 7.0 / 4.4;

    private final Draft draft;
    private final KeyAnswer answers;
    private final Accepted accepted;

    /** @param open a draft of the key */
    FilledIn(Draft open) {
        this.draft = open;
        this.answers = new KeyAnswer(open);
        this.accepted = new Accepted(open);
    }

    @Override
    public List<Text> blank(String what, Figure expected, String head) {
        return answers.blank(what, expected, head);
    }

    @Override
    public List<Text> hidden(String what, Figure figure) {
        return answers.hidden(what, figure);
    }

    @Override
    public List<Piece> space(AnswerBlock answer) {
        if (answer.sought() instanceof AnswerBlock.Choice) {
            return answers.space(answer).stream().filter(Piece.Choices.class::isInstance).toList();
        }
        int lines = Handout.lines(answer);
        return lines == 0 ? List.of() : List.of(new Piece.Written(lines, fitting(text(answer), lines)));
    }

    private List<Text> text(AnswerBlock answer) {
        if (answer.sought() instanceof AnswerBlock.InWords words) {
            return draft.prose().of(words.words().value());
        }
        return draft.procedure().answer(answer.block()).map(this::value).orElse(List.of());
    }

    private List<Text> value(ResolvedAnswer answer) {
        List<Text> said = new ArrayList<>();
        answer.value().ifPresent(value -> {
            said.add(new Text.Filled(draft.numbers().printed(value)));
            answer.accepted().flatMap(a -> accepted.range(value, a)).ifPresent(range -> {
                Typeset.join(said, " ");
                Typeset.append(said, draft.compose("accept.sentence", Map.of("range", Text.words(range))));
            });
        });
        return said;
    }

    private List<Text> fitting(List<Text> text, int lines) {
        int room = LINE * Math.max(1, (int) (lines * PRINTED_PER_RULED));
        return Plain.of(text).length() <= room ? text : Text.words(draft.say("answer.behind"));
    }

    @Override
    public boolean plots() {
        return true;
    }

    @Override
    public boolean shows(TypedBlock block) {
        return false;
    }
}
