package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import tarewright.derivation.Figure;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.resolve.ResolvedReading;

/**
 * A document for a class to which amounts are dealt out: one part for each hand, each from a page of its own and headed by the groups that get it. Where nothing is dealt
 * it is the document itself.
 */
final class Hands {
    /** As many columns as leave room for a value and its range in each. */
    private static final int ABREAST = 5;

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
                pieces.add(new Piece.NextSheet());
            }
            Draft draft = Draft.of(hand.resolved(), open);
            pieces.add(said(draft, hand));
            pieces.addAll(document.apply(draft));
        }
        return pieces;
    }

    /**
     * The key: first all hands side by side, then the first in full and of the others what differs, then the sheet of each filled in.
     *
     * @param keys makes the key of a hand
     */
    List<Piece> key(Function<Draft, Key> keys) {
        if (procedure.dealt().isEmpty()) {
            return keys.apply(Draft.of(procedure, open)).pieces();
        }
        List<Piece> pieces = new ArrayList<>(sideBySide());
        List<Piece> leaves = new ArrayList<>();
        List<Key> before = new ArrayList<>();
        for (Hand hand : procedure.hands()) {
            Draft draft = Draft.of(hand.resolved(), open);
            Key key = keys.apply(draft);
            pieces.add(new Piece.Heading(2, Text.words(who(draft, hand))));
            pieces.addAll(before.isEmpty() ? key.account() : key.after(before.get(0)));
            leaves.addAll(key.filledIn(List.of(said(draft, hand))));
            before.add(key);
        }
        pieces.addAll(leaves);
        return pieces;
    }

    private Piece said(Draft draft, Hand hand) {
        return new Piece.Paragraph(List.of(new Text.Strong(Text.words(who(draft, hand)))));
    }

    /** What each hand gets and what is expected of it and accepted, side by side, for the teacher. */
    private List<Piece> sideBySide() {
        List<Piece> pieces = new ArrayList<>();
        Draft draft = Draft.of(procedure, open);
        List<Hand> dealt = procedure.dealt();
        for (int from = 0; from < dealt.size(); from += ABREAST) {
            pieces.addAll(abreast(draft, dealt.subList(from, Math.min(from + ABREAST, dealt.size()))));
        }
        if (!pieces.isEmpty()) {
            pieces.add(0, draft.heading(2, "heading.hands"));
            pieces.add(new Piece.NewPage());
        }
        return pieces;
    }

    private List<Piece> abreast(Draft draft, List<Hand> hands) {
        Accepted accepted = new Accepted(draft);
        List<List<Text>> heads = new ArrayList<>(List.of(Text.words(draft.say("hands.what"))));
        hands.forEach(hand -> heads.add(Text.words(who(draft, hand))));
        Resolved one = hands.get(0).resolved();
        List<List<List<Text>>> rows = new ArrayList<>();
        hands.get(0).dealt().keySet().forEach(name -> rows.add(row(draft.prose().of(name), hands, hand -> shown(draft, hand.dealt().get(name)))));
        for (ResolvedReading reading : one.readings()) {
            String name = reading.block().name();
            rows.add(row(draft.prose().of(name), hands, hand -> hand.resolved().reading(name)
                    .map(r -> with(draft, r.value(), accepted.range(r.value()))).orElse(List.of())));
        }
        for (ResolvedAnswer answer : one.answers()) {
            // Versions of the questions' numbers stand side by side in each hand's own account.
            if (procedure.versions().isEmpty() && answer.value().isPresent()) {
                rows.add(row(Text.words(draft.say("hands.answer", "number", answer.number())), hands, hand -> hand.resolved().answer(answer.block().block())
                        .flatMap(a -> a.value().map(v -> with(draft, v, a.accepted().flatMap(range -> accepted.range(v, range))))).orElse(List.of())));
            }
        }
        List<Boolean> right = new ArrayList<>(List.of(false));
        hands.forEach(hand -> right.add(true));
        return List.of(new Piece.Table(List.of(), heads, rows, right, true, Piece.Use.READ));
    }

    private static List<List<Text>> row(List<Text> head, List<Hand> hands, Function<Hand, List<Text>> cell) {
        List<List<Text>> row = new ArrayList<>(List.of(head));
        hands.forEach(hand -> row.add(cell.apply(hand)));
        return row;
    }

    private static List<Text> with(Draft draft, Figure value, Optional<String> range) {
        List<Text> set = new ArrayList<>(List.of(new Text.Strong(shown(draft, value))));
        range.ifPresent(r -> Typeset.join(set, " (" + r + ")"));
        return set;
    }

    private static List<Text> shown(Draft draft, Figure figure) {
        return Text.words(draft.numbers().printed(figure));
    }

    private String who(Draft draft, Hand hand) {
        String groups = groups(draft, hand.groups());
        boolean everyRun = hand.runs().size() == procedure.setting().runs();
        return everyRun ? groups : groups + ", " + draft.say(hand.runs().size() == 1 ? "hands.run" : "hands.runs", "runs", numbers(hand.runs()));
    }

    /** Groups by their numbers. */
    static String groups(Draft draft, List<Integer> groups) {
        return draft.say(groups.size() == 1 ? "hands.group" : "hands.groups", "groups", numbers(groups));
    }

    private static String numbers(List<Integer> all) {
        return all.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
