package tarewright.safety;

import java.util.Optional;

/**
 * One substance in a matter.
 *
 * @param substance its name, its id in the tables or its formula, as the author or the table of substances has it
 * @param formula its formula in plain writing ({@code CuSO4.5H2O}, {@code Ca(OH)2}), asked where the name is not in the tables
 * @param content how much of it there is
 */
public record Part(String substance, Optional<String> formula, Content content) {
    public static Part of(String substance, Content content) {
        return new Part(substance, Optional.empty(), content);
    }

    public static Part of(String substance, String formula, Content content) {
        return new Part(substance, Optional.of(formula), content);
    }
}
