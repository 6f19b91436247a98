package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import tarewright.derivation.Figure;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Resolved;

/**
 * A document for a class to which amounts are dealt out: one part for each hand, each from a page of its own and headed by the groups that get it. Where nothing is dealt
 * it is the document itself.
 */
final class Hands {
    private final Resolved procedure;
    private final boolean open;

    /** @param open whether its reader may see everything */
    Hands(Resolved procedure, boolean open) {
        this.procedure = procedure;
        this.open = open;
    }

    List<Piece> each(Function<Draft, List<Piece>> document) {
        if (procedure.dealt().isEmpty()) {
            return document.apply(Draft.of(procedure, open));
        }
        List<Piece> pieces = new ArrayList<>();
        for (Hand hand : procedure.hands()) {
            if (!pieces.isEmpty()) {
                pieces.add(new Piece.NewPage());
            }
            Draft draft = Draft.of(hand.resolved(), open);
            pieces.add(new Piece.Paragraph(List.of(new Text.Strong(Text.words(who(draft, hand))))));
            pieces.addAll(document.apply(draft));
        }
        return pieces;
    }

    /** What each hand gets and what is expected of it, side by side, for the teacher. */
    List<Piece> sideBySide() {
        Draft draft = Draft.of(procedure, open);
        Grid grid = new Grid(draft, "").words("hands.who", "hands.what").numbers("hands.expected");
        for (Hand hand : procedure.dealt()) {
            List<Text> who = Text.words(who(draft, hand));
            hand.dealt().forEach((name, amount) -> grid.row(who, draft.prose().of(name), shown(draft, amount)));
            hand.resolved().readings().forEach(r -> grid.row(who, draft.prose().of(r.block().name()), shown(draft, r.value())));
            hand.resolved().answers().forEach(a -> a.value().ifPresent(v -> grid.row(who,
                    Text.words(draft.say("hands.answer", "number", a.number())), shown(draft, v))));
        }
        List<Piece> pieces = new ArrayList<>(grid.under(2, "heading.hands"));
        if (!pieces.isEmpty()) {
            pieces.add(new Piece.NewPage());
        }
        return pieces;
    }

    private static List<Text> shown(Draft draft, Figure figure) {
        return Text.words(draft.numbers().printed(figure));
    }

    private String who(Draft draft, Hand hand) {
        String groups = draft.say(hand.groups().size() == 1 ? "hands.group" : "hands.groups", "groups", numbers(hand.groups()));
        boolean everyRun = hand.runs().size() == procedure.setting().runs();
        return everyRun ? groups : groups + ", " + draft.say(hand.runs().size() == 1 ? "hands.run" : "hands.runs", "runs", numbers(hand.runs()));
    }

    private static String numbers(List<Integer> all) {
        return all.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
