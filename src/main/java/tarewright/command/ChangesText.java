package tarewright.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import tarewright.term.Change;
import tarewright.term.Comparison;
import tarewright.term.Comparison.State;
import tarewright.wording.MessageFile;

/** What differs between two prints, in lines: a line for each thing, what was typed first. */
final class ChangesText {
    private final MessageFile words = MessageFile.of("changes", "en");

    /** One procedure that is printed for no section. */
    List<String> alone(Comparison each) {
        List<String> lines = new ArrayList<>(List.of(say("head." + word(each.state()), "name", each.procedure(), "before", each.before().orElse(""),
                "version", each.now().orElse(""))));
        lines.addAll(lines("  ", each.changes()));
        lines.addAll(rest("  ", each));
        return lines;
    }

    /**
     * One procedure of a term: how it stands in which sections, then what moved alike in every section that does it, then what moved in one alone.
     *
     * @param each of one procedure, a section after the other
     */
    List<String> term(List<Comparison> each) {
        Map<State, List<Comparison>> byState = new LinkedHashMap<>();
        each.forEach(c -> byState.computeIfAbsent(c.state(), s -> new ArrayList<>()).add(c));
        String heads = byState.entrySet().stream().map(e -> say("term." + word(e.getKey()), "sections", sections(e.getValue(), each.size())))
                .collect(Collectors.joining("; "));
        List<String> lines = new ArrayList<>(List.of(each.get(0).procedure() + ": " + heads));
        Set<List<String>> everywhere = everywhere(each);
        List<Change> common = each.get(0).changes().stream().filter(c -> everywhere.contains(told(c))).toList();
        if (!common.isEmpty()) {
            lines.add("  " + say("section", "section", say("every")));
            lines.addAll(lines("    ", common));
        }
        for (Comparison section : each) {
            List<String> own = new ArrayList<>(lines("    ", section.changes().stream().filter(c -> !everywhere.contains(told(c))).toList()));
            own.addAll(rest("    ", section));
            if (!own.isEmpty()) {
                lines.add("  " + say("section", "section", section.section()));
                lines.addAll(own);
            }
        }
        return lines;
    }

    /** What a whole term has: its order list and its prep sheet. */
    List<String> whole(Comparison term) {
        List<String> lines = new ArrayList<>(List.of(say("whole." + word(term.state()), "name", term.procedure())));
        lines.addAll(lines("  ", term.changes()));
        lines.addAll(rest("  ", term));
        return lines;
    }

    /** What moved alike wherever the procedure was printed before, in two sections at least. */
    private Set<List<String>> everywhere(List<Comparison> each) {
        List<Comparison> moved = each.stream().filter(c -> c.state() != State.NEW && c.state() != State.GONE && c.state() != State.BAD).toList();
        if (moved.size() < 2) {
            return Set.of();
        }
        Set<List<String>> all = new LinkedHashSet<>(moved.get(0).changes().stream().map(this::told).toList());
        moved.forEach(c -> all.retainAll(c.changes().stream().map(this::told).toList()));
        return all;
    }

    private List<String> told(Change change) {
        return List.of(thing(change), moved(change));
    }

    private String sections(List<Comparison> of, int all) {
        return of.size() == all && all > 1 ? say("every") : of.stream().map(Comparison::section).collect(Collectors.joining(", "));
    }

    private static String word(State state) {
        return state.name().toLowerCase(Locale.ROOT);
    }

    /** What is not a figure: which texts differ where nothing moved, which files were altered. */
    private List<String> rest(String indent, Comparison each) {
        List<String> lines = new ArrayList<>();
        if (each.state() == State.UNTOUCHED) {
            lines.add(indent + say("inputs", "inputs", each.inputs().isEmpty() ? say("inputs.program") : String.join(", ", each.inputs())));
        }
        if (!each.altered().isEmpty()) {
            lines.add(indent + say("altered", "files", String.join(", ", each.altered())));
        }
        return lines;
    }

    /** @param named name, value, name, value … */
    private String say(String key, String... named) {
        String said = words.get(key);
        for (int i = 0; i < named.length; i += 2) {
            said = said.replace("{" + named[i] + "}", named[i + 1]);
        }
        return said;
    }

    private List<String> lines(String indent, List<Change> changes) {
        Map<String, List<String>> byThing = new LinkedHashMap<>();
        changes.forEach(c -> byThing.computeIfAbsent(thing(c), t -> new ArrayList<>()).add(moved(c)));
        return byThing.entrySet().stream().map(e -> indent + e.getKey() + ": " + String.join("; ", e.getValue())).toList();
    }

    private String thing(Change change) {
        String key = "about." + change.fact().about();
        String of = change.fact().of();
        String thing = say(!of.isEmpty() && words.find(key + ".of").isPresent() ? key + ".of" : key, "of", of);
        return change.fact().hand().isEmpty() ? thing : say("handout", "thing", thing, "hand", change.fact().hand());
    }

    private String moved(Change change) {
        String what = change.fact().what().isEmpty() ? "" : change.fact().what() + " ";
        boolean set = change.before().size() + change.now().size() != 2 || change.fact().what().isEmpty();
        if (!set) {
            String now = change.now().get(0);
            return what + (change.digitsAlone() ? say("digits", "before", change.before().get(0), "now", now)
                    : say("moved", "before", withoutUnit(change.before().get(0), now), "now", now));
        }
        List<String> lost = change.before().stream().filter(b -> !change.now().contains(b)).toList();
        List<String> gained = change.now().stream().filter(n -> !change.before().contains(n)).toList();
        List<String> said = new ArrayList<>();
        if (!lost.isEmpty()) {
            said.add(say("lost", "items", String.join(", ", lost)));
        }
        if (!gained.isEmpty()) {
            said.add(say("gained", "items", String.join(", ", gained)));
        }
        return what + (said.isEmpty() ? say("moved", "before", String.join(", ", change.before()), "now", String.join(", ", change.now()))
                : String.join(", ", said));
    }

    /** {@code 1.0} of {@code 1.0 mol/L} where the other has the same unit. */
    private static String withoutUnit(String before, String now) {
        int unit = before.indexOf(' ');
        int other = now.indexOf(' ');
        boolean same = unit > 0 && other > 0 && before.substring(unit).equals(now.substring(other)) && before.substring(0, unit).matches("[-0-9.e]+");
        return same ? before.substring(0, unit) : before;
    }
}
