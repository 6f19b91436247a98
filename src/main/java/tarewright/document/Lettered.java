package tarewright.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tarewright.derivation.Figure;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.resolve.Version;

/** What one hand does, in each version of the questions' numbers, for the key: their numbers and answers side by side. */
final class Lettered {
    private final List<Part> parts;

    /** A version of the hand. @param letter empty where there is one version */
    record Part(String letter, Draft draft) {
        String named() {
            return draft.say("version.named", "letter", letter);
        }
    }

    private Lettered(List<Part> parts) {
        this.parts = List.copyOf(parts);
    }

    /** @param whole the procedure with all its versions. @param hand one of its hands, as it stands there */
    static Lettered of(Resolved whole, Draft hand) {
        int at = 0;
        List<Hand> hands = whole.hands();
        while (at < hands.size() - 1 && hands.get(at).resolved() != hand.procedure()) {
            at++;
        }
        List<Part> parts = new ArrayList<>();
        for (Version version : whole.eachVersion()) {
            Draft draft = version.letter().isEmpty() ? hand : Draft.of(version.resolved().hands().get(at).resolved(), hand.open());
            parts.add(new Part(version.letter(), draft));
        }
        return new Lettered(parts);
    }

    List<Part> parts() {
        return parts;
    }

    boolean several() {
        return parts.size() > 1;
    }

    /** The values that are not the same in every version. */
    Set<String> differing() {
        Set<String> names = new LinkedHashSet<>();
        if (several()) {
            parts.get(0).draft().procedure().values().keySet().stream()
                    .filter(name -> parts.stream().map(p -> value(p, name).map(Figure::value)).distinct().count() > 1).forEach(names::add);
        }
        return Collections.unmodifiableSet(names);
    }

    private static Optional<Figure> value(Part part, String name) {
        return Optional.ofNullable(part.draft().procedure().values().get(name));
    }

    /** The numbers that differ, then every answer that is a figure with what is accepted, a column for each version; nothing where there is one. */
    List<Piece> sideBySide() {
        if (!several()) {
            return List.of();
        }
        Draft draft = parts.get(0).draft();
        Grid grid = new Grid(draft, "version.caption").words("version.what");
        parts.forEach(p -> grid.number(p.named()));
        for (String name : differing()) {
            grid.row(draft.prose().of(name), parts.stream().map(p -> value(p, name).map(f -> Text.words(p.draft().numbers().printed(f))).orElse(List.of())).toList());
        }
        for (ResolvedAnswer answer : draft.procedure().answers()) {
            if (answer.value().isPresent()) {
                grid.row(Text.words(draft.say("hands.answer", "number", answer.number())), answered(answer));
            }
        }
        return grid.under(2, "heading.versions");
    }

    /** What is the same as in the first version is said to be. */
    private List<List<Text>> answered(ResolvedAnswer answer) {
        List<List<Text>> cells = new ArrayList<>();
        for (Part part : parts) {
            List<Text> said = answered(part, answer);
            cells.add(!cells.isEmpty() && said.equals(cells.get(0)) ? Text.words(part.draft().say("version.same")) : said);
        }
        return cells;
    }

    private static List<Text> answered(Part part, ResolvedAnswer plain) {
        Optional<ResolvedAnswer> answer = part.draft().procedure().answer(plain.block().block());
        List<Text> said = new ArrayList<>();
        answer.flatMap(ResolvedAnswer::value).ifPresent(value -> {
            said.add(new Text.Filled(part.draft().numbers().printed(value)));
            answer.get().accepted().flatMap(a -> new Accepted(part.draft()).range(value, a))
                    .ifPresent(range -> Typeset.join(said, " (" + range + ")"));
        });
        return said;
    }
}
