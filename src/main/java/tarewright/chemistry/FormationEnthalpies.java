package tarewright.chemistry;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Standard enthalpies of formation on one basis, never mixed with figures of another. */
public final class FormationEnthalpies {
    private final Map<List<String>, FormationEnthalpy> rows = new LinkedHashMap<>();

    public FormationEnthalpies(Collection<FormationEnthalpy> all) {
        all.forEach(row -> rows.put(List.of(row.formula(), row.state()), row));
    }

    /** What is known of a substance or ion in a state ({@code s}, {@code l}, {@code g}, {@code aq}). */
    public Optional<FormationEnthalpy> of(String formula, String state) {
        return Optional.ofNullable(rows.get(List.of(formula, state)));
    }

    public Collection<FormationEnthalpy> all() {
        return List.copyOf(rows.values());
    }
}
