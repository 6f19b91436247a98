package tarewright.chemistry;

import java.util.List;
import java.util.Map;

/** What the table of formation enthalpies has to say about a reaction. */
public sealed interface ReactionEnthalpy {
    /**
     * All species are known.
     *
     * @param parts reactants, then products; at least one
     */
    record Known(List<Part> parts) implements ReactionEnthalpy {
        public Known {
            parts = List.copyOf(parts);
        }

        /** In J for one mole of the equation as written; below zero where heat is given off. */
        public double joules() {
            return parts.stream().mapToDouble(part -> part.coefficient() * part.formation().joulesPerMole()).sum();
        }

        /** Of the figure as a whole. */
        public Provenance provenance() {
            return parts.stream().map(part -> part.formation().provenance()).reduce(Provenance::and).orElseThrow();
        }
    }

    /**
     * A species with its part in the sum.
     *
     * @param coefficient below zero for a reactant, above it for a product
     * @param species as the equation has it
     * @param formation its enthalpy of formation, from a row or from its ions
     */
    record Part(int coefficient, Species species, FormationEnthalpy formation) {
    }

    /**
     * A trouble: for some species there is no figure. At least one of the lists holds something.
     *
     * @param withoutState species written without their state
     * @param unknown species that the table does not have in that state
     */
    record Missing(List<Species> withoutState, List<Species> unknown) implements ReactionEnthalpy {
        public Missing {
            withoutState = List.copyOf(withoutState);
            unknown = List.copyOf(unknown);
        }

        /** The lasting name under which its words stand. */
        public String id() {
            return "no-formation-enthalpy";
        }

        /** For the words: the species of both lists as an author types them. */
        public Map<String, Object> fields() {
            return Map.of("withoutState", withoutState.stream().map(Species::plain).toList(),
                    "unknown", unknown.stream().map(Species::plain).toList());
        }
    }
}
