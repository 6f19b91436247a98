package tarewright.safety;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Provenance;

/**
 * What is to be done with a kind of waste.
 *
 * @param kind how the waste is recognised
 * @param values by what: elements, statements, groups, forms, or a pH
 * @param sink whether it may go there
 * @param container which one it goes into
 * @param text what to do, in the table's words
 * @param authority what stands behind it
 */
public record WasteRule(String id, Kind kind, List<String> values, Sink sink, Optional<String> container, String text,
        String authority,
        Provenance provenance) {
    /** How a kind of waste is recognised. */
    public enum Kind {
        UNKNOWN, ELEMENT, CODE, GROUP, FORM, PH_BELOW, PH_ABOVE,
        /** A group, where the pH is not known. */
        WITHOUT_PH,
        /** What no other rule takes. */
        REST
    }

    /** Whether something may go into the sink. */
    public enum Sink {
        /** If the local rules allow it. */
        LOCAL,
        /** Not as it is. */
        NEVER
    }

    /** Whether what this rule forbids is allowed once it is neutral. */
    public boolean mendedByNeutralising() {
        return kind == Kind.PH_BELOW || kind == Kind.PH_ABOVE || kind == Kind.WITHOUT_PH;
    }

    public WasteRule {
        values = List.copyOf(values);
    }
}
