package tarewright.chemistry;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Density tables of solutions at 20 °C, by solute. */
public final class Densities {
    private final FormulaIndex<DensityTable> tables;

    /**
     * @param all one table for each solute
     * @param isomers what several substances share, see {@link Substances#isomers}
     */
    public Densities(Collection<DensityTable> all, Set<Composition> isomers) {
        this.tables = new FormulaIndex<>(all, DensityTable::solute, isomers);
    }

    /**
     * The table of a solute, by the formula of what its mass fraction counts. A hydrate is not found: a strength that
     * counts it is first to be turned into one that counts the {@linkplain Formula#anhydrous anhydrous} solute.
     */
    public Optional<DensityTable> of(Formula solute) {
        return tables.of(solute);
    }

    public List<DensityTable> all() {
        return tables.all();
    }
}
