package tarewright.wording;

import tarewright.chemistry.Confidence;
import tarewright.tables.Translations;
import tarewright.tables.Translations.Translation;

/** What the tables say, in the language of a document: names of substances, and the phrases of the data files. */
public final class TableWords {
    private final boolean other;
    private final Translations translations;

    private TableWords(boolean other, Translations translations) {
        this.other = other;
        this.translations = translations;
    }

    /** @param language BCP 47 */
    public static TableWords in(String language) {
        return new TableWords(Translations.known(language), Translations.into(language));
    }

    /** A substance by its name in the tables; a name that is not in the list stays as it is, and {@link #lacks} tells. */
    public String name(String english) {
        return translations.name(english).map(Translation::text).orElse(english);
    }

    /** Whether a name is printed as the tables have it because the language has none for it. Never so in English. */
    public boolean lacks(String english) {
        return other && translations.name(english).isEmpty();
    }

    /** Whether a name was not compared with anything published. */
    public boolean isUnproven(String english) {
        return translations.name(english).filter(t -> t.provenance().confidence() == Confidence.MEMORY).isPresent();
    }

    /** Whether a phrase of the data files is printed in other words than its English ones. */
    public boolean isOther(String english) {
        return translations.phrase(english).isPresent();
    }

    /** A phrase of a data file; one that the language lacks stays as it is. */
    public String phrase(String english) {
        return translations.phrase(english).map(Translation::text).orElse(english);
    }
}
