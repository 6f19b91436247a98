package tarewright.chemistry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tarewright.chemistry.ReactionEnthalpy.Part;

/**
 * Standard enthalpies of formation on one basis, never mixed with figures of another. What is dissolved is taken at infinite
 * dilution; a strong electrolyte that has no row of its own is the sum of its {@linkplain Ions ions}.
 */
public final class FormationEnthalpies {
    private final Map<State, FormulaIndex<FormationEnthalpy>> byState = new EnumMap<>(State.class);
    private final Ions ions;

    /**
     * @param all the rows
     * @param isomers what several substances share, see {@link Substances#isomers}
     */
    public FormationEnthalpies(Collection<FormationEnthalpy> all, Set<Composition> isomers) {
        for (State state : State.values()) {
            byState.put(state, new FormulaIndex<>(all.stream().filter(row -> row.state() == state).toList(),
                    FormationEnthalpy::formula, isomers));
        }
        this.ions = new Ions(byState.get(State.AQUEOUS).all().stream().map(FormationEnthalpy::formula)
                .filter(formula -> formula.charge() != 0).toList());
    }

    /** Every row. */
    public List<FormationEnthalpy> all() {
        return byState.values().stream().flatMap(index -> index.all().stream()).toList();
    }

    /** What is known of a substance or ion in a state; of a dissolved strong electrolyte, the sum over its ions. */
    public Optional<FormationEnthalpy> of(Formula formula, State state) {
        Optional<FormationEnthalpy> row = byState.get(state).of(formula);
        return row.isPresent() || state != State.AQUEOUS ? row : ions.of(formula).flatMap(split -> sum(formula, split));
    }

    /** The ions of a strong electrolyte, as far as they are in the table. */
    public Optional<List<Ions.Count>> ions(Formula electrolyte) {
        return ions.of(electrolyte);
    }

    private Optional<FormationEnthalpy> sum(Formula whole, List<Ions.Count> split) {
        double joules = 0;
        Optional<Provenance> provenance = Optional.empty();
        for (Ions.Count ion : split) {
            Optional<FormationEnthalpy> row = byState.get(State.AQUEOUS).of(ion.ion());
            if (row.isEmpty()) {
                return Optional.empty();
            }
            joules += ion.count() * row.get().joulesPerMole();
            provenance = Optional.of(provenance.map(row.get().provenance()::and).orElse(row.get().provenance()));
        }
        double total = joules;
        return provenance.map(from -> new FormationEnthalpy(whole, State.AQUEOUS, total, from));
    }

    /** The enthalpy of a reaction as written, at 298.15 K and 100 kPa. Every species needs its state. */
    public ReactionEnthalpy of(BalancedEquation equation) {
        List<Part> parts = new ArrayList<>();
        List<Species> missing = new ArrayList<>();
        for (BalancedEquation.Term term : equation.terms()) {
            Species species = term.species();
            int sign = equation.reactants().contains(term) ? -1 : 1;
            species.state().flatMap(state -> of(species.formula(), state)).ifPresentOrElse(
                    row -> parts.add(new Part(sign * term.coefficient(), species, row)), () -> missing.add(species));
        }
        if (!missing.isEmpty()) {
            Map<Boolean, List<Species>> stated = missing.stream()
                    .collect(Collectors.partitioningBy(species -> species.state().isPresent()));
            return new ReactionEnthalpy.Missing(stated.get(false), stated.get(true));
        }
        return new ReactionEnthalpy.Known(parts);
    }
}
