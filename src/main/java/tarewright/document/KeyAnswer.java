package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Unit;
import tarewright.wording.Numbers;

/** What the teacher reads where the students write. */
final class KeyAnswer implements Filling {
    private final Draft draft;
    private final Workings workings;
    private final Accepted accepted;

    KeyAnswer(Draft draft) {
        this.draft = draft;
        this.workings = new Workings(draft);
        this.accepted = new Accepted(draft);
    }

    /** Where the head of the column names the unit, the number alone in that unit. */
    @Override
    public List<Text> blank(String what, Figure expected, String head) {
        Optional<Unit> unit = HeadUnit.of(head).filter(u -> u.dimension().equals(expected.dimension()));
        if (unit.isEmpty()) {
            return List.of(new Text.Filled(draft.numbers().printed(expected)));
        }
        Figure inHead = unit.get().symbol().equals(expected.unit().symbol()) ? expected : inUnit(expected, unit.get());
        return List.of(new Text.Filled(draft.numbers().printedNumber(inHead)));
    }

    /** The same digits in another unit: 0.079 g are 79 mg. */
    private static Figure inUnit(Figure figure, Unit unit) {
        int shift = (int) Math.round(Math.log10(unit.factor() / figure.unit().factor()));
        return figure.in(unit).shownTo(Numbers.decimals(figure) + shift);
    }

    @Override
    public List<Text> hidden(String what, Figure figure) {
        return List.of(new Text.Filled(draft.numbers().printed(figure)));
    }

    @Override
    public List<Piece> space(AnswerBlock answer) {
        List<Piece> pieces = new ArrayList<>();
        if (answer.sought() instanceof AnswerBlock.Worked) {
            draft.procedure().answer(answer.block()).filter(a -> a.value().isPresent()).ifPresent(a -> value(a, pieces));
        } else if (answer.sought() instanceof AnswerBlock.InWords words) {
            pieces.add(new Piece.Paragraph(draft.prose().of(words.words().value())));
        } else if (answer.sought() instanceof AnswerBlock.Choice choice) {
            List<String> printed = Options.printed(choice.options());
            pieces.add(new Piece.Choices(Options.set(draft, printed),
                    choice.options().isEmpty() ? Optional.empty() : Optional.of(printed.indexOf(choice.options().get(0)))));
        }
        if (!answer.reject().isEmpty()) {
            pieces.add(new Piece.Paragraph(draft.compose("answer.reject", Map.of("answers",
                    Typeset.joined(answer.reject().stream().map(r -> draft.prose().of(r)).toList(), "; ")))));
        }
        return pieces;
    }

    private void value(ResolvedAnswer answer, List<Piece> into) {
        Figure value = answer.value().orElseThrow();
        List<Piece.WorkedLine> lines = workings.all(value);
        if (!lines.isEmpty()) {
            into.add(new Piece.Working(lines));
        }
        List<Text> said = new ArrayList<>(draft.compose("answer.value",
                Map.of("value", List.of(new Text.Filled(draft.numbers().printed(value))))));
        answer.accepted().flatMap(a -> accepted.range(value, a)).ifPresent(range -> {
            List<Text> why = answer.block().within().isPresent() ? List.of()
                    : accepted.why(answer.accepted().orElseThrow().mostImportant());
            Typeset.join(said, " ");
            Typeset.append(said, draft.compose(why.isEmpty() ? "accept.sentence" : "accept.sentence-why",
                    Map.of("range", Text.words(range), "why", why)));
            if (answer.accepted().orElseThrow().drawn()) {
                Typeset.join(said, " " + draft.say("accept.drawn"));
            }
        });
        into.add(new Piece.Paragraph(said));
        into.addAll(new OwnReadings(draft).of(value));
        into.addAll(new Mistakes(draft).of(answer));
    }

    @Override
    public boolean plots() {
        return true;
    }

    @Override
    public boolean shows(TypedBlock block) {
        return block.type().equals("key");
    }
}
