package tarewright.safety;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Provenance;

/**
 * A rule of precedence among the pictograms of one label (CLP Article 26).
 *
 * @param present the pictogram that must be there
 * @param because the statement for which it must be there; empty for any
 * @param drops the pictogram that must not appear
 * @param onlyFor the statements for which it must not appear; empty for all
 */
public record PictogramRule(String id, String present, Optional<String> because, String drops, List<String> onlyFor,
        Provenance provenance) {
    public PictogramRule {
        onlyFor = List.copyOf(onlyFor);
    }
}
