package tarewright.procedure.expression;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Words before a bracket that elsewhere are functions. Here there are none: one figure is picked by {@code mean of titre}. */
final class Functions {
    private static final Map<String, Selector> SELECTORS = Map.of("mean", Selector.MEAN, "average", Selector.MEAN,
            "avg", Selector.MEAN, "max", Selector.LARGEST, "maximum", Selector.LARGEST, "largest", Selector.LARGEST,
            "min", Selector.SMALLEST, "minimum", Selector.SMALLEST, "smallest", Selector.SMALLEST);
    private static final Set<String> OTHERS = Set.of("sqrt", "log", "log10", "ln", "exp", "sum", "abs", "round");

    private Functions() {
    }

    static boolean isOne(String name) {
        return SELECTORS.containsKey(fold(name)) || OTHERS.contains(fold(name));
    }

    /** How what is likely meant is written; empty for what formulas do not have. */
    static List<String> instead(String name) {
        Selector selector = SELECTORS.get(fold(name));
        return selector == null ? List.of() : List.of(selector.words());
    }

    private static String fold(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
