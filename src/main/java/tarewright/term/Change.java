package tarewright.term;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One fact that moved between two prints.
 *
 * @param fact as it is now, or as it was where it has gone
 * @param before what it said; empty where it is new
 * @param now what it says; empty where it has gone
 */
public record Change(Fact fact, List<String> before, List<String> now) {
    public Change {
        before = List.copyOf(before);
        now = List.copyOf(now);
    }

    /** Whether it was typed, so that it can be the cause of the others. */
    public boolean cause() {
        return fact.typed();
    }

    /** What moved, what was typed first; nothing that stayed. */
    public static List<Change> between(List<Fact> before, List<Fact> now) {
        List<Change> all = new ArrayList<>();
        for (Fact fact : now) {
            Optional<Fact> earlier = before.stream().filter(fact::isAbout).findFirst();
            List<String> said = earlier.map(Fact::shown).orElse(List.of());
            if (!said.equals(fact.shown())) {
                all.add(new Change(fact, said, fact.shown()));
            }
        }
        before.stream().filter(f -> !f.shown().isEmpty() && now.stream().noneMatch(f::isAbout)).forEach(f -> all.add(new Change(f, f.shown(), List.of())));
        List<Change> ordered = new ArrayList<>(all.stream().filter(Change::cause).toList());
        all.stream().filter(c -> !c.cause()).forEach(ordered::add);
        return ordered;
    }
}
