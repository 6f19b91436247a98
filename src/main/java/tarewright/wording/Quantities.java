package tarewright.wording;

import java.util.Optional;

/** The names of the quantities that letters stand for: {@code n} is the amount of substance. */
public final class Quantities {
    private final MessageFile names;

    private Quantities(MessageFile names) {
        this.names = names;
    }

    /** @param language BCP 47 */
    public static Quantities in(String language) {
        return new Quantities(MessageFile.of("quantities", language));
    }

    /** What a letter stands for; empty for words, which stand for themselves. */
    public Optional<String> name(String letter) {
        return names.find("letter." + letter);
    }

    /** The words for a relation that is not a product or a sum; its lasting name where there are none. */
    String relation(String name) {
        return names.find("relation." + name.replace(' ', '-')).orElse(name);
    }

    String smallestOf() {
        return names.get("smallest-of");
    }

    String largestOf() {
        return names.get("largest-of");
    }

    /** What stands between a relation and the values it is taken at. */
    String at() {
        return names.get("at");
    }
}
