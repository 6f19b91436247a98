package tarewright.term;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One fact that moved between two prints.
 *
 * @param fact as it is now, or as it was where it has gone; of no handout where it moved alike in all
 * @param before what it said; empty where it is new
 * @param now what it says; empty where it has gone
 * @param digitsAlone whether it is the same value, written with other digits
 */
public record Change(Fact fact, List<String> before, List<String> now, boolean digitsAlone) {
    public Change {
        before = List.copyOf(before);
        now = List.copyOf(now);
    }

    /** Whether it was typed, so that it can be the cause of the others. */
    public boolean cause() {
        return fact.typed();
    }

    /** Whether both say that the same thing moved in the same way. */
    boolean isLike(Change other) {
        return fact.isAbout(other.fact) && before.equals(other.before) && now.equals(other.now) && digitsAlone == other.digitsAlone;
    }

    /** What moved, what was typed first; nothing that stayed. What moved alike in every handout is said once. */
    public static List<Change> between(List<Fact> before, List<Fact> now) {
        List<Change> all = new ArrayList<>();
        for (Fact fact : now) {
            Optional<Fact> earlier = counterpart(fact, before);
            List<String> said = earlier.map(Fact::shown).orElse(List.of());
            if (!said.equals(fact.shown())) {
                all.add(new Change(fact, said, fact.shown(), earlier.filter(fact::equalsInValue).isPresent()));
            }
        }
        before.stream().filter(f -> !f.shown().isEmpty() && counterpart(f, now).isEmpty()).forEach(f -> all.add(new Change(f, f.shown(), List.of(), false)));
        List<Change> told = together(all, before, now);
        List<Change> ordered = new ArrayList<>(told.stream().filter(Change::cause).toList());
        told.stream().filter(c -> !c.cause()).forEach(ordered::add);
        return ordered;
    }

    /** Of the same handout; where the other print had one for all, that. */
    private static Optional<Fact> counterpart(Fact fact, List<Fact> others) {
        List<Fact> about = others.stream().filter(fact::isAbout).toList();
        Optional<Fact> same = about.stream().filter(f -> f.hand().equals(fact.hand())).findFirst();
        boolean oneForAll = fact.hand().isEmpty() || about.stream().allMatch(f -> f.hand().isEmpty());
        return same.or(() -> oneForAll ? about.stream().findFirst() : Optional.empty());
    }

    private static List<Change> together(List<Change> all, List<Fact> before, List<Fact> now) {
        Map<String, Integer> handouts = new LinkedHashMap<>();
        now.forEach(f -> handouts.merge(key(f), 1, Integer::sum));
        Map<String, Integer> earlier = new LinkedHashMap<>();
        before.forEach(f -> earlier.merge(key(f), 1, Integer::sum));
        earlier.forEach((key, count) -> handouts.merge(key, count, (n, b) -> n));
        Map<String, List<Change>> byThing = new LinkedHashMap<>();
        all.forEach(c -> byThing.computeIfAbsent(key(c.fact), k -> new ArrayList<>()).add(c));
        List<Change> told = new ArrayList<>();
        byThing.forEach((key, changes) -> {
            Change first = changes.get(0);
            boolean alike = changes.size() == handouts.get(key) && changes.stream().allMatch(first::isLike);
            told.addAll(alike ? List.of(new Change(first.fact.ofAll(), first.before, first.now, first.digitsAlone)) : changes);
        });
        return told;
    }

    private static String key(Fact fact) {
        return String.join("\u0001", fact.about(), fact.of(), fact.what());
    }
}
