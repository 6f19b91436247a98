package tarewright.procedure.declare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Which fields each type of block has. */
final class Vocabulary {
    static final String FRONT = "front matter";
    static final String TERM = "front matter of a term";
    /** Of a file with blocks of a term: what is said at the top is said in the term itself. */
    static final String BESIDE = "front matter of a file beside a term";

    private static final List<String> FRONT_FIELDS = List.of("title", "code", "time", "group size", "runs", "level", "language", "country", "room",
            "hood", "groups", "spare", "paper", "aims", "after", "labels", "gases");
    private static final List<String> IN_POT = List.of("for", "excess over", "at least", "made by", "moles", "reacts in", "batch", "in", "role",
            "found by students", "label as", "shown as", "vary", "vary over");
    private static final Map<String, List<String>> FIELDS = fields();

    private Vocabulary() {
    }

    private static Map<String, List<String>> fields() {
        Map<String, List<String>> all = new TreeMap<>();
        all.put(FRONT, FRONT_FIELDS);
        all.put("reaction", List.of("goes to", "catalyst", "limiting", "shown only"));
        all.put("solid", with(IN_POT, "substance", "mass", "density", "purity", "weigh with", "cut as", "portion of", "portions",
                "acts as"));
        all.put("liquid", with(IN_POT, "substance", "volume", "mass", "density", "purity", "measure with", "portion of", "portions",
                "acts as"));
        all.put("solution", with(IN_POT, "solute", "volume", "strength", "density", "measure with", "portion of", "portions", "acts as", "also",
                "made from", "made up to", "series", "keeps"));
        all.put("gas", with(IN_POT, "substance", "wanted", "volume", "mass", "fits", "collected", "at", "wash", "dead volume", "real"));
        all.put("value", List.of("is", "versions", "unit", "shown to"));
        all.put("reading", List.of("of", "unit", "read with", "times", "concordant within", "by difference", "expect"));
        all.put("caution", List.of("severity", "hazard", "consequence", "avoid"));
        all.put("answer", List.of("value", "words", "choice", "marks", "lines", "shown to", "within", "unit", "reject"));
        all.put("waste", List.of("of", "into", "neutralise with"));
        all.put("trial", List.of("of", "gave", "on"));
        all.put("settled", List.of("finding", "because"));
        all.put("graph", List.of("x", "y", "of", "before", "mixed at", "drift"));
        all.put(TERM, List.of("term", "school", "paper", "spare", "documents", "procedures", "copies", "language", "country", "labels", "versions"));
        all.put(BESIDE, List.of());
        all.put("section", List.of("groups", "group size", "date", "room", "on the day", "procedures", "copies", "spare", "versions"));
        all.put("stock", List.of("substance", "solute", "strength", "density", "purity", "pack", "on hand", "price", "keeps"));
        return Map.copyOf(all);
    }

    private static List<String> with(List<String> some, String... more) {
        List<String> all = new ArrayList<>(List.of(more));
        all.addAll(some);
        return List.copyOf(all);
    }

    /** The fields of a type, or of the front matter; empty for a type whose fields are names. */
    static List<String> of(String type) {
        return FIELDS.getOrDefault(type, List.of());
    }

    /** The types that have a field. */
    static List<String> typesWith(String key) {
        return FIELDS.entrySet().stream().filter(e -> !e.getKey().startsWith(FRONT) && e.getValue().contains(key)).map(Map.Entry::getKey).sorted().toList();
    }
}
