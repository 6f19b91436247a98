package tarewright.procedure.resolve;

import java.util.Locale;
import java.util.Optional;

/** A figure that a quantity has; the words are those of references and of the keys in {@code figures}. */
public enum Property {
    MASS("m"), VOLUME("V"), LENGTH("l"), MOLES("n"), MOLAR_MASS("M"), STRENGTH("c"), DENSITY("ρ"), PURITY("w"), CLASS_TOTAL("total"), CLASS_LENGTH("total"),
    EXCESS("excess"), LEFT_OVER("n"), MOST("m"), YIELD("m"), DRY("V"), MOIST("V"), DISSOLVED("V"), LARGEST("V"),
    MOLAR_VOLUME("Vm"), TAKEN("V");

    private final String letter;

    Property(String letter) {
        this.letter = letter;
    }

    /** The symbol of the quantity (IUPAC Green Book), or a word. */
    public String letter() {
        return letter;
    }

    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static Optional<Property> of(String words) {
        for (Property property : values()) {
            if (property.words().equals(words)) {
                return Optional.of(property);
            }
        }
        return Optional.empty();
    }
}
