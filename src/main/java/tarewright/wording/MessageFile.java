package tarewright.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;

/**
 * Words by key in one language, each key that the language lacks in English. The files are UTF-8, one for each subject and
 * language: {@code findings_en.properties}.
 */
public final class MessageFile {
    private static final String FOLDER = "/tarewright/words/";
    private static final String ENGLISH = "en";

    private final String name;
    private final List<Properties> layers;

    private MessageFile(String name, List<Properties> layers) {
        this.name = name;
        this.layers = List.copyOf(layers);
    }

    /**
     * The words of a subject.
     *
     * @param name the file's name without its language: {@code findings}
     * @param language BCP 47; for {@code es-MX} the words are looked for in {@code es-MX}, then {@code es}, then English
     */
    public static MessageFile of(String name, String language) {
        Set<String> tags = new LinkedHashSet<>(List.of(language, language.split("-", 2)[0].toLowerCase(Locale.ROOT), ENGLISH));
        List<Properties> layers = new ArrayList<>();
        for (String tag : tags) {
            if (tag.matches("[A-Za-z0-9-]+")) {
                load(FOLDER + name + "_" + tag + ".properties").ifPresent(layers::add);
            }
        }
        if (layers.isEmpty()) {
            throw new IllegalStateException("no words for " + name);
        }
        return new MessageFile(name, layers);
    }

    /** The words under a key, if there are any. */
    public Optional<String> find(String key) {
        return layers.stream().map(layer -> layer.getProperty(key)).filter(words -> words != null).findFirst();
    }

    /** The words under a key that is there. */
    public String get(String key) {
        return find(key).orElseThrow(() -> new IllegalStateException("no words for " + key + " in " + name));
    }

    /**
     * The words under {@code key}, or those under {@code key.1}, {@code key.2} … in their order; none if there are none. All
     * are of one language.
     */
    public List<String> variants(String key) {
        return layers.stream().map(layer -> variants(layer, key)).filter(found -> !found.isEmpty()).findFirst().orElse(List.of());
    }

    private static List<String> variants(Properties layer, String key) {
        List<String> found = new ArrayList<>();
        String words = layer.getProperty(key);
        for (int i = 1; words != null || i == 1; i++) {
            if (words != null) {
                found.add(words);
            }
            words = layer.getProperty(key + "." + i);
        }
        return found;
    }

    /** Every key of every layer, in alphabetical order. */
    public Set<String> keys() {
        Set<String> keys = new TreeSet<>();
        layers.forEach(layer -> keys.addAll(layer.stringPropertyNames()));
        return keys;
    }

    /** The languages that a subject has words in, as two letters, in alphabetical order. */
    static List<String> languages(String name) {
        return Arrays.stream(Locale.getISOLanguages()).filter(l -> has(name, l)).sorted().toList();
    }

    private static boolean has(String name, String tag) {
        return tag.matches("[A-Za-z0-9-]+") && MessageFile.class.getResource(FOLDER + name + "_" + tag + ".properties") != null;
    }

    /** Whether a subject has words in a language. @param language BCP 47 */
    static boolean speaks(String name, String language) {
        return has(name, language) || has(name, language.split("-", 2)[0].toLowerCase(Locale.ROOT));
    }

    private static Optional<Properties> load(String resource) {
        try (InputStream in = MessageFile.class.getResourceAsStream(resource)) {
            if (in == null) {
                return Optional.empty();
            }
            Properties words = new Properties();
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return Optional.of(words);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
