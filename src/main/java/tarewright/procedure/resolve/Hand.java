package tarewright.procedure.resolve;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import tarewright.derivation.Figure;

/**
 * What some of the groups get, where amounts are dealt out.
 *
 * @param label a number, from 1, in the order of the first group that gets it; empty where nothing is dealt
 * @param groups that get it, from 1
 * @param runs of those groups in which they do it, from 1
 * @param dealt by block name, the amounts that make this hand another than the rest
 * @param resolved the procedure with these amounts; its class totals are those of the whole class
 */
public record Hand(String label, List<Integer> groups, List<Integer> runs, Map<String, Figure> dealt, Resolved resolved) {
    public Hand {
        groups = List.copyOf(groups);
        runs = List.copyOf(runs);
        dealt = Collections.unmodifiableMap(new LinkedHashMap<>(dealt));
    }

    /** How often it is done in the class. */
    public int times() {
        return groups.size() * runs.size();
    }

    static List<Integer> upTo(int last) {
        return IntStream.rangeClosed(1, last).boxed().toList();
    }
}
