package tarewright.safety;

import java.util.List;

/** The reactive groups of substances and the pairs of them that must not meet. */
public record ReactiveTable(List<ReactiveMember> members, List<PairRule> pairs) {
    /** Everything that holds water. */
    static final String WATER = "water";
    /** What the classification itself says of acids and of water, for substances that no group names. */
    static final String LIBERATES_WITH_ACID = "liberates-with-acid";
    static final String WATER_REACTIVE = "water-reactive";

    public ReactiveTable {
        members = List.copyOf(members);
        pairs = List.copyOf(pairs);
    }
}
