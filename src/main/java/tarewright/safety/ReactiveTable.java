package tarewright.safety;

import java.util.List;
import java.util.Map;

/**
 * The reactive groups of substances and the pairs of them that must not meet.
 *
 * @param groups the names of the groups by their ids, in the table's words
 */
public record ReactiveTable(Map<String, String> groups, List<ReactiveMember> members, List<PairRule> pairs) {
    /** Everything that holds water. */
    static final String WATER = "water";
    /** What the classification itself says of acids and of water, for substances that no group names. */
    static final String LIBERATES_WITH_ACID = "liberates-with-acid";
    static final String WATER_REACTIVE = "water-reactive";

    public ReactiveTable {
        groups = Map.copyOf(groups);
        members = List.copyOf(members);
        pairs = List.copyOf(pairs);
    }
}
