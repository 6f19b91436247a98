package tarewright.safety;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The substances of a rule set, and finding the row that speaks for one. */
public final class SubstanceTable {
    private final Map<String, SubstanceHazards> byId = new LinkedHashMap<>();
    private final Map<String, List<SubstanceHazards>> byName = new HashMap<>();
    private final Map<String, List<SubstanceHazards>> byFormula = new HashMap<>();
    private final Map<String, List<SubstanceHazards>> byDryFormula = new HashMap<>();

    public SubstanceTable(List<SubstanceHazards> rows) {
        for (SubstanceHazards row : rows) {
            byId.put(row.id(), row);
        }
        for (SubstanceHazards row : byId.values()) {
            row.names().stream().map(Names::plain).distinct().forEach(name -> add(byName, name, row));
            if (row.byFormula()) {
                row.formulas().stream().map(Names::formula).distinct().forEach(formula -> add(byFormula, formula, row));
                row.formulas().stream().map(Names::dry).distinct().forEach(formula -> add(byDryFormula, formula, row));
            }
        }
    }

    private static void add(Map<String, List<SubstanceHazards>> index, String key, SubstanceHazards row) {
        index.computeIfAbsent(key, k -> new ArrayList<>()).add(row);
    }

    public List<SubstanceHazards> rows() {
        return List.copyOf(byId.values());
    }

    public Optional<SubstanceHazards> byId(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** This table with other rows laid over it: a row with the id of one of ours replaces it. */
    public SubstanceTable with(List<SubstanceHazards> over) {
        List<SubstanceHazards> rows = new ArrayList<>(byId.values());
        rows.removeIf(row -> over.stream().anyMatch(o -> o.id().equals(row.id())));
        rows.addAll(0, over);
        return new SubstanceTable(rows);
    }

    /** This table without one substance. */
    public SubstanceTable without(String id) {
        return new SubstanceTable(byId.values().stream().filter(row -> !row.id().equals(id)).toList());
    }

    /**
     * The row that speaks for a part in a matter of this form. A name goes before a formula; among rows of one name or formula,
     * the one for the form and strength. A name that says how fine a solid is, such as ribbon or foil, is believed where the form
     * does not say it. Rows without data are no rows.
     *
     * @param percent mass percentage of the part, as far as known before the row is found
     */
    public Optional<SubstanceHazards> find(Part part, Form form, double percent) {
        List<SubstanceHazards> named = new ArrayList<>();
        byId(part.substance()).ifPresent(named::add);
        named.addAll(byName.getOrDefault(Names.plain(part.substance()), List.of()));
        List<SubstanceHazards> ofFormula = new ArrayList<>();
        for (String formula : part.formula().map(f -> List.of(f, part.substance())).orElse(List.of(part.substance()))) {
            ofFormula.addAll(byFormula.getOrDefault(Names.formula(formula), List.of()));
            ofFormula.addAll(byDryFormula.getOrDefault(Names.dry(formula), List.of()));
        }
        return named.stream().filter(row -> row.fits(form, percent)).findFirst()
                .or(() -> form == Form.SOLID ? named.stream().findFirst() : Optional.empty())
                .or(() -> ofFormula.stream().filter(row -> row.fits(form, percent)).findFirst())
                .or(() -> named.stream().findFirst()).or(() -> ofFormula.stream().findFirst())
                .map(row -> form == Form.SOLUTION ? row.dissolvedAs().flatMap(this::byId).orElse(row) : row)
                .filter(SubstanceHazards::known);
    }
}
