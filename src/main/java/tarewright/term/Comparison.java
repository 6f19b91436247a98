package tarewright.term;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What would be printed now of one procedure for one section, beside what was printed last.
 *
 * @param section its folder below the output folder; empty for none
 * @param before the version code that was printed
 * @param now the version code that would be
 * @param changes what moved on paper
 * @param inputs names of the texts that differ
 * @param altered files that are not as they were printed
 */
public record Comparison(String section, String procedure, State state, Optional<String> before, Optional<String> now, List<Change> changes,
        List<String> inputs, List<String> altered) {
    public Comparison {
        changes = List.copyOf(changes);
        inputs = List.copyOf(inputs);
        altered = List.copyOf(altered);
    }

    /** How a procedure stands. */
    public enum State {
        /** Not printed before. */
        NEW,
        /** As it was printed. */
        UNCHANGED,
        /** Words or the program alone differ: nothing that is a figure, an answer or a hazard. */
        UNTOUCHED,
        /** Values are the same, and some are written with other digits. */
        DIGITS,
        /** Something moved. */
        MOVED,
        /** Printed before, and no longer among what would be. */
        GONE,
        /** Has an error, so that nothing would be printed. */
        BAD
    }

    /** @param altered files that are not as they were printed */
    public static Comparison of(Optional<LotRecord> before, Lot now, List<String> altered) {
        return of(before, now.folder(), now.name(), now.version(), now.facts(), now.inputs(), altered);
    }

    /** The same for what a whole term has. */
    public static Comparison of(Optional<LotRecord> before, TermLot now, List<String> altered) {
        return of(before, "", now.name(), now.version(), now.facts(), now.inputs(), altered);
    }

    private static Comparison of(Optional<LotRecord> before, String folder, String name, String version, List<Fact> facts, Map<String, String> inputs, List<String> altered) {
        if (before.isEmpty()) {
            return new Comparison(folder, name, State.NEW, Optional.empty(), Optional.of(version), List.of(), List.of(), List.of());
        }
        LotRecord old = before.get();
        List<Change> changes = Change.between(old.figures(), facts);
        boolean same = old.version().equals(version);
        State state = same ? State.UNCHANGED : changes.isEmpty() ? State.UNTOUCHED : changes.stream().allMatch(Change::digitsAlone) ? State.DIGITS : State.MOVED;
        return new Comparison(folder, name, state, Optional.of(old.version()), Optional.of(version), same ? List.of() : changes, differing(old, inputs), altered);
    }

    public static Comparison gone(LotRecord before) {
        return new Comparison(before.section(), before.procedure(), State.GONE, Optional.of(before.version()), Optional.empty(), List.of(), List.of(), List.of());
    }

    /** @param section its folder */
    public static Comparison bad(String section, String procedure) {
        return new Comparison(section, procedure, State.BAD, Optional.empty(), Optional.empty(), List.of(), List.of(), List.of());
    }

    private static List<String> differing(LotRecord old, Map<String, String> now) {
        Set<String> names = new TreeSet<>(old.inputs().keySet());
        names.addAll(now.keySet());
        return names.stream().filter(n -> !String.valueOf(old.inputs().get(n)).equals(String.valueOf(now.get(n)))).toList();
    }
}
