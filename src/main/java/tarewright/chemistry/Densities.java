package tarewright.chemistry;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Density tables of solutions at 20 °C, by solute. */
public final class Densities {
    private final Map<String, DensityTable> tables = new LinkedHashMap<>();

    public Densities(Collection<DensityTable> all) {
        all.forEach(table -> tables.put(table.solute(), table));
    }

    /** The table of a solute, by the formula of what its mass fraction counts. */
    public Optional<DensityTable> of(String solute) {
        return Optional.ofNullable(tables.get(solute));
    }

    public Collection<DensityTable> all() {
        return java.util.List.copyOf(tables.values());
    }
}
