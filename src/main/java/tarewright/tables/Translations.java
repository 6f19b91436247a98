package tarewright.tables;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tarewright.chemistry.Provenance;

/**
 * What the data files say in English, in another language: names of substances, and phrases such as rules for waste. A phrase is found by the
 * English words themselves, so that one which stands in many rows is translated once and one that was changed is found to be missing.
 */
public final class Translations {
    /** The languages with files of their own. */
    private static final Set<String> LANGUAGES = Set.of("es");
    private static final Translations NONE = new Translations(Map.of(), Map.of());

    private final Map<String, Translation> names;
    private final Map<String, Translation> phrases;

    private Translations(Map<String, Translation> names, Map<String, Translation> phrases) {
        this.names = Map.copyOf(names);
        this.phrases = Map.copyOf(phrases);
    }

    /** Words in another language. @param provenance where they were read, or that they were not */
    public record Translation(String text, Provenance provenance) {
    }

    /** Those with files, BCP 47. */
    static Set<String> languages() {
        return LANGUAGES;
    }

    /** Whether there are files for a language; English needs none. @param language BCP 47, only its first part counts */
    public static boolean known(String language) {
        return LANGUAGES.contains(tag(language));
    }

    /** The translations into a language; empty ones for English and for a language without files. @param language BCP 47 */
    public static Translations into(String language) {
        return known(language) ? Spanish.WORDS : NONE;
    }

    /** Read once, when it is first asked for: an English print does without. */
    private static final class Spanish {
        private static final Translations WORDS = new Translations(read("substance-names_es.csv", "name"), read("phrases_es.csv", "phrase"));
    }

    private static String tag(String language) {
        return language.split("-", 2)[0].toLowerCase(Locale.ROOT);
    }

    private static Map<String, Translation> read(String file, String english) {
        Map<String, Translation> all = new LinkedHashMap<>();
        for (Row row : Rows.of(file)) {
            if (all.put(row.text(english), new Translation(row.text("translation"), row.provenance())) != null) {
                throw new IllegalStateException(file + ": " + row.text(english) + " stands there twice");
            }
        }
        return all;
    }

    /** What a substance is called. @param english its name in our tables */
    public Optional<Translation> name(String english) {
        return Optional.ofNullable(names.get(english));
    }

    /** What a phrase is. @param english as it stands in a data file */
    public Optional<Translation> phrase(String english) {
        return Optional.ofNullable(phrases.get(english));
    }

    /** Every name by its English one. */
    public Map<String, Translation> names() {
        return names;
    }

    /** Every phrase by its English words. */
    public Map<String, Translation> phrases() {
        return phrases;
    }
}
