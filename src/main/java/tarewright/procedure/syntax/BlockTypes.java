package tarewright.procedure.syntax;

import java.util.List;
import java.util.Set;

/** The type words that make a fenced code block a typed block. */
public final class BlockTypes {
    /** Every type, in the order of the manual. */
    public static final List<String> ALL = List.of("reaction", "solid", "liquid", "solution", "gas", "value", "reading",
            "apparatus", "caution", "answer", "graph", "waste", "trial", "settled", "key", "prep", "section", "stock");
    private static final Set<String> KNOWN = Set.copyOf(ALL);
    private static final Set<String> NAMED = Set.of("reaction", "solid", "liquid", "solution", "gas", "value", "reading", "graph",
            "section", "stock");
    private static final Set<String> MARKDOWN = Set.of("key", "prep");

    private BlockTypes() {
    }

    static boolean isKnown(String word) {
        return KNOWN.contains(word);
    }

    /** Whether a block of this type must have a name. */
    static boolean needsName(String type) {
        return NAMED.contains(type);
    }

    /** Whether Markdown stands inside instead of fields. */
    static boolean holdsMarkdown(String type) {
        return MARKDOWN.contains(type);
    }
}
