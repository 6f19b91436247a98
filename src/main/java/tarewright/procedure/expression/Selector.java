package tarewright.procedure.expression;

import java.util.Optional;

/** What makes one figure of a repeated reading. */
public enum Selector {
    MEAN("mean of"), LARGEST("largest of"), SMALLEST("smallest of");

    private final String words;

    Selector(String words) {
        this.words = words;
    }

    /** As it is typed. */
    public String words() {
        return words;
    }

    /** The selector that a name with single spaces starts with, {@code mean of titre}; the name may end there. */
    static Optional<Selector> startOf(String name) {
        for (Selector selector : values()) {
            if (name.equals(selector.words) || name.startsWith(selector.words + " ")) {
                return Optional.of(selector);
            }
        }
        return Optional.empty();
    }
}
