package tarewright.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tarewright.term.Change;
import tarewright.wording.MessageFile;

/** What differs between two prints of one procedure, in lines: a line for each thing, what was typed first. */
final class ChangesText {
    private final MessageFile words = MessageFile.of("changes", "en");

    /** @param named name, value, name, value … */
    String say(String key, String... named) {
        String said = words.get(key);
        for (int i = 0; i < named.length; i += 2) {
            said = said.replace("{" + named[i] + "}", named[i + 1]);
        }
        return said;
    }

    List<String> lines(List<Change> changes) {
        Map<String, List<String>> byThing = new LinkedHashMap<>();
        changes.forEach(c -> byThing.computeIfAbsent(thing(c), t -> new ArrayList<>()).add(moved(c)));
        return byThing.entrySet().stream().map(e -> "  " + e.getKey() + ": " + String.join("; ", e.getValue())).toList();
    }

    private String thing(Change change) {
        String key = "about." + change.fact().about();
        String of = change.fact().of();
        return say(!of.isEmpty() && words.find(key + ".of").isPresent() ? key + ".of" : key, "of", of);
    }

    private String moved(Change change) {
        String what = change.fact().what().isEmpty() ? "" : change.fact().what() + " ";
        boolean set = change.before().size() + change.now().size() != 2 || change.fact().what().isEmpty();
        if (!set) {
            return what + say("moved", "before", withoutUnit(change.before().get(0), change.now().get(0)), "now", change.now().get(0));
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
