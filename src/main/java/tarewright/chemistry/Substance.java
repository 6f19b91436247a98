package tarewright.chemistry;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A substance as it stands in a bottle. A hydrate is a substance of its own.
 *
 * @param id a lasting name in lower case with hyphens
 * @param name IUPAC name in British spelling
 * @param synonyms other names in use, the commonest first
 * @param formula as IUPAC writes it; empty for a mixture without one formula, such as litmus
 * @param state at 20 °C; {@link State#AQUEOUS} for what is met in solution only
 * @param casNumber registry number, if known
 * @param density of the pure liquid or solid at 20 °C, if known
 * @param note on the form in which it is met; may be empty
 * @param provenance of name, formula and state
 */
public record Substance(String id, String name, List<String> synonyms, Optional<Formula> formula, State state,
        Optional<String> casNumber, Optional<Density> density, String note, Provenance provenance) {
    public Substance {
        synonyms = List.copyOf(synonyms);
    }

    /** The same with one synonym more. */
    public Substance alsoCalled(String synonym) {
        return new Substance(id, name, Stream.concat(synonyms.stream(), Stream.of(synonym)).toList(), formula, state, casNumber, density, note,
                provenance);
    }

    /**
     * Density of a pure substance at 20 °C.
     *
     * @param kilogramsPerCubicMetre the value; 1000 times that in g/mL
     * @param provenance its own: it need not be that of the name
     */
    public record Density(double kilogramsPerCubicMetre, Provenance provenance) {
        public Density {
            if (!(kilogramsPerCubicMetre > 0)) {
                throw new IllegalArgumentException("density " + kilogramsPerCubicMetre);
            }
        }
    }
}
