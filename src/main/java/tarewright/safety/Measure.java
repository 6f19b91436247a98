package tarewright.safety;

import java.util.List;

/**
 * Something to wear, to have at hand, to do or to leave alone.
 *
 * @param rule what it is, its sign and its authority: the first rule that asked for it
 * @param reasons everything that asked for it; empty for what holds in every lesson
 */
public record Measure(ProtectionRule rule, List<Reason> reasons) {
    public Measure {
        reasons = List.copyOf(reasons);
    }

    /**
     * Why.
     *
     * @param matter what asked for it, by name
     * @param codes its statements that did; empty where its substance or its being unknown did
     * @param known whether the matter is in the tables
     */
    public record Reason(String matter, List<String> codes, boolean known) {
        public Reason {
            codes = List.copyOf(codes);
        }
    }
}
