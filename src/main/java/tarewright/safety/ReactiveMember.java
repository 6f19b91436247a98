package tarewright.safety;

import java.util.OptionalDouble;
import java.util.Set;
import tarewright.chemistry.Provenance;

/**
 * That a substance belongs to a reactive group, in some forms and from some strength on.
 *
 * @param substance id in the table of substances
 * @param group such as {@code acid-mineral}
 * @param forms the forms in which it does; empty for all
 * @param fromPercent the strengths at which it does, from
 * @param toPercent and to
 * @param concentratedFromPercent from where on this group's pairs call it concentrated
 */
public record ReactiveMember(String substance, String group, Set<Form> forms, double fromPercent, double toPercent,
        OptionalDouble concentratedFromPercent, Provenance provenance) {
    public ReactiveMember {
        forms = Set.copyOf(forms);
    }

    boolean belongs(Form form, double low, double high) {
        return (forms.isEmpty() || forms.contains(form)) && Limits.reached(high, fromPercent) && low <= toPercent;
    }
}
