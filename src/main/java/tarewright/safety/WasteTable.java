package tarewright.safety;

import java.util.List;

/** What is to be done with waste, and what neutralises. */
public record WasteTable(List<WasteRule> rules, List<Neutraliser> neutralisers) {
    public WasteTable {
        rules = List.copyOf(rules);
        neutralisers = List.copyOf(neutralisers);
    }
}
