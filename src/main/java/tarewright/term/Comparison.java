package tarewright.term;

import java.util.List;
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
        if (before.isEmpty()) {
            return new Comparison(now.folder(), now.name(), State.NEW, Optional.empty(), Optional.of(now.version()), List.of(), List.of(), List.of());
        }
        LotRecord old = before.get();
        List<Change> changes = Change.between(old.figures(), now.facts());
        boolean same = old.version().equals(now.version());
        State state = same ? State.UNCHANGED : changes.isEmpty() ? State.UNTOUCHED : changes.stream().allMatch(Change::digitsAlone) ? State.DIGITS : State.MOVED;
        return new Comparison(now.folder(), now.name(), state, Optional.of(old.version()), Optional.of(now.version()), same ? List.of() : changes,
                differing(old, now), altered);
    }

    public static Comparison gone(LotRecord before) {
        return new Comparison(before.section(), before.procedure(), State.GONE, Optional.of(before.version()), Optional.empty(), List.of(), List.of(), List.of());
    }

    /** @param section its folder */
    public static Comparison bad(String section, String procedure) {
        return new Comparison(section, procedure, State.BAD, Optional.empty(), Optional.empty(), List.of(), List.of(), List.of());
    }

    private static List<String> differing(LotRecord old, Lot now) {
        Set<String> names = new TreeSet<>(old.inputs().keySet());
        names.addAll(now.inputs().keySet());
        return names.stream().filter(n -> !String.valueOf(old.inputs().get(n)).equals(String.valueOf(now.inputs().get(n)))).toList();
    }
}
