package tarewright.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The fixed words of the documents in one language. A sentence is whole in the file, with placeholders in braces where names
 * and amounts go, so that another language can order it its own way. A key that is missing is a bug.
 */
public final class DocumentWords {
    private final MessageFile words;

    private DocumentWords(MessageFile words) {
        this.words = words;
    }

    /** Whether the documents have words in a language. @param language BCP 47 */
    public static boolean known(String language) {
        return MessageFile.speaks("documents", language);
    }

    /** The languages that the documents have words in, as two letters, in alphabetical order. */
    public static List<String> languages() {
        return MessageFile.languages("documents");
    }

    /** @param language BCP 47 */
    public static DocumentWords in(String language) {
        return new DocumentWords(MessageFile.of("documents", language));
    }

    /** The words of a key, if there are any. */
    public Optional<String> find(String key) {
        return words.find(key);
    }

    /**
     * The words of a key.
     *
     * @param named name, value, name, value …: what goes into the placeholders
     */
    public String say(String key, Object... named) {
        return String.join("", compose(key, Function.identity(), name -> {
            for (int i = 0; i < named.length; i += 2) {
                if (named[i].equals(name)) {
                    return List.of(String.valueOf(named[i + 1]));
                }
            }
            throw new IllegalStateException("no value for {" + name + "} of " + key);
        }));
    }

    /** The words of a key as pieces: its own words, and in the place of each placeholder what stands for it. */
    public <T> List<T> compose(String key, Function<String, T> own, Function<String, List<T>> named) {
        String template = words.get(key);
        List<T> pieces = new ArrayList<>();
        int from = 0;
        while (from < template.length()) {
            int open = template.indexOf('{', from);
            int close = open < 0 ? -1 : template.indexOf('}', open);
            int end = close < 0 ? template.length() : open;
            if (end > from) {
                pieces.add(own.apply(template.substring(from, end)));
            }
            if (close >= 0) {
                pieces.addAll(named.apply(template.substring(open + 1, close)));
            }
            from = close < 0 ? template.length() : close + 1;
        }
        return pieces;
    }
}
