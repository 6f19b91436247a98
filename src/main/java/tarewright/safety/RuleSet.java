package tarewright.safety;

import java.util.Set;
import tarewright.chemistry.Provenance;

/**
 * Which list was used, to be printed on the panel.
 *
 * @param id such as {@code eu-clp}
 * @param countries the codes (ISO 3166) for which it is the country's own
 * @param title the regulation
 * @param edition its state
 * @param note what else to know of the edition
 */
public record RuleSet(String id, Set<String> countries, String title, String edition, String note, Provenance provenance) {
    public RuleSet {
        countries = Set.copyOf(countries);
    }
}
