package tarewright.safety;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Provenance;

/** What a label shows for a hazard class: CLP Annex I, the label-element table of each class. */
public record LabelElement(String hazardClass, List<String> categories, List<String> codes, List<String> pictograms,
        Optional<SignalWord> signalWord, Provenance provenance) {
    public LabelElement {
        categories = List.copyOf(categories);
        codes = List.copyOf(codes);
        pictograms = List.copyOf(pictograms);
    }
}
