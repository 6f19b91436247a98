package tarewright.chemistry;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Rows of a table found by formula: written alike, or else of the same atoms and charge, such as {@code HC2H3O2} for
 * {@code CH3COOH}. Atoms alone are not enough where two rows, or two substances known elsewhere, share them: propanal
 * is not found as propanone.
 *
 * @param <T> a row
 */
public final class FormulaIndex<T> {
    private final Map<Formula, T> written = new LinkedHashMap<>();
    private final Map<Composition, T> composed = new HashMap<>();

    /**
     * @param rows of which an earlier one goes before a later one with the same formula
     * @param formula of a row
     * @param isomers what several substances share, see {@link Substances#isomers}
     */
    public FormulaIndex(Collection<T> rows, Function<T, Formula> formula, Set<Composition> isomers) {
        Set<Composition> shared = new HashSet<>(isomers);
        for (T row : rows) {
            Formula its = formula.apply(row);
            Composition composition = Composition.of(its);
            boolean seen = written.putIfAbsent(its, row) != null;
            if (!seen && composed.putIfAbsent(composition, row) != null) {
                shared.add(composition);
            }
        }
        composed.keySet().removeAll(shared);
    }

    /** The row of a formula. */
    public Optional<T> of(Formula formula) {
        T row = written.get(formula);
        return Optional.ofNullable(row != null ? row : composed.get(Composition.of(formula)));
    }

    /** Every row that is found by its own formula, in order. */
    public List<T> all() {
        return List.copyOf(written.values());
    }
}
