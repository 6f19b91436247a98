package tarewright.chemistry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The substances that are known, found by any of their names or by formula. */
public final class Substances {
    private final List<Substance> all;
    private final Map<String, Substance> byName = new HashMap<>();
    private final Map<String, String> written = new LinkedHashMap<>();
    private final Map<Formula, List<Substance>> byFormula = new LinkedHashMap<>();
    private final Map<Composition, Set<Formula>> byComposition = new HashMap<>();

    /** @param all of which an earlier one goes before a later one that shares a name with it */
    public Substances(Collection<Substance> all) {
        this.all = List.copyOf(all);
        for (Substance substance : this.all) {
            enter(substance.name(), substance);
            substance.synonyms().forEach(name -> enter(name, substance));
            substance.formula().ifPresent(formula -> {
                byFormula.computeIfAbsent(formula, k -> new ArrayList<>()).add(substance);
                byComposition.computeIfAbsent(Composition.of(formula), k -> new LinkedHashSet<>()).add(formula);
            });
        }
    }

    private void enter(String name, Substance substance) {
        byName.putIfAbsent(SubstanceNames.key(name), substance);
        written.putIfAbsent(SubstanceNames.key(name), name);
    }

    /** In the order of the table. */
    public List<Substance> all() {
        return all;
    }

    /** The substance with this name or synonym, see {@link SubstanceNames#key}. A formula is not a name. */
    public Optional<Substance> named(String name) {
        return Optional.ofNullable(byName.get(SubstanceNames.key(name)));
    }

    /**
     * The substances of a formula: those written with it, or else those with the same atoms and charge. Several may share
     * one: forms of an element, a gas and its solution, isomers; the usual one comes first.
     */
    public List<Substance> of(Formula formula) {
        List<Substance> alike = byFormula.get(formula);
        if (alike != null) {
            return Collections.unmodifiableList(alike);
        }
        return byComposition.getOrDefault(Composition.of(formula), Set.of()).stream()
                .flatMap(other -> byFormula.get(other).stream()).toList();
    }

    /** The usual substance of a formula in a state. */
    public Optional<Substance> of(Formula formula, State state) {
        return of(formula).stream().filter(substance -> substance.state() == state).findFirst();
    }

    /** Compositions that differently written formulas share: of these, atoms alone do not say which substance is meant. */
    public Set<Composition> isomers() {
        return byComposition.entrySet().stream().filter(each -> each.getValue().size() > 1).map(Map.Entry::getKey)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Every name and synonym as written, for suggestions. */
    public Collection<String> names() {
        return Collections.unmodifiableCollection(written.values());
    }
}
