package tarewright.chemistry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Into which ions a strong electrolyte parts in much water: a salt, a strong base, or one of the strong acids. What is no
 * salt of known ions is left whole.
 */
public final class Ions {
    /** Anions whose acids part fully in much water: common practice, no source. Of every other the acid stays whole. */
    private static final Set<String> STRONG = Set.of("Cl^-", "Br^-", "I^-", "NO3^-", "ClO3^-", "ClO4^-", "SO4^2-");

    private final List<Formula> cations;
    private final List<Formula> anions;

    /** @param known the ions that may come of it */
    public Ions(Collection<Formula> known) {
        this.cations = known.stream().filter(ion -> ion.charge() > 0).toList();
        // The largest first, so that a complex ion is not taken apart.
        this.anions = known.stream().filter(ion -> ion.charge() < 0)
                .sorted(Comparator.comparingInt(Ions::size).reversed()).toList();
    }

    private static int size(Formula ion) {
        return ion.atoms().values().stream().mapToInt(Integer::intValue).sum();
    }

    /**
     * An ion and how many of it.
     *
     * @param count above zero
     * @param ion its formula
     */
    public record Count(int count, Formula ion) {
    }

    /**
     * The ions of one formula unit, cations first, water of crystallisation left out; empty if it is none of known ions,
     * or has a charge itself.
     */
    public Optional<List<Count>> of(Formula electrolyte) {
        Formula whole = electrolyte.anhydrous();
        if (whole.charge() != 0) {
            return Optional.empty();
        }
        for (Formula anion : anions) {
            for (int many = 1; contains(whole.atoms(), anion.atoms(), many); many++) {
                Optional<List<Count>> split = positive(minus(whole.atoms(), anion.atoms(), many), -many * anion.charge());
                if (split.isPresent() && parts(split.get(), anion)) {
                    List<Count> ions = new ArrayList<>(split.get());
                    ions.add(new Count(many, anion));
                    return Optional.of(List.copyOf(ions));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean parts(List<Count> cations, Formula anion) {
        boolean acid = cations.stream().anyMatch(each -> each.ion().plain().equals("H^+"));
        return !acid || cations.size() == 1 && STRONG.contains(anion.plain());
    }

    /** One cation, or two, that use up just these atoms and this charge. */
    private Optional<List<Count>> positive(Map<String, Integer> atoms, int charge) {
        for (Formula cation : cations) {
            int many = charge / cation.charge();
            if (many * cation.charge() == charge && many > 0 && minus(atoms, cation.atoms(), many).isEmpty()
                    && contains(atoms, cation.atoms(), many)) {
                return Optional.of(List.of(new Count(many, cation)));
            }
        }
        for (Formula first : cations) {
            for (int many = 1; many * first.charge() < charge && contains(atoms, first.atoms(), many); many++) {
                Map<String, Integer> rest = minus(atoms, first.atoms(), many);
                int left = charge - many * first.charge();
                for (Formula second : cations) {
                    int others = left / second.charge();
                    if (others > 0 && others * second.charge() == left && contains(rest, second.atoms(), others)
                            && minus(rest, second.atoms(), others).isEmpty()) {
                        return Optional.of(List.of(new Count(many, first), new Count(others, second)));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static boolean contains(Map<String, Integer> atoms, Map<String, Integer> part, int times) {
        return part.entrySet().stream().allMatch(each -> atoms.getOrDefault(each.getKey(), 0) >= times * each.getValue());
    }

    private static Map<String, Integer> minus(Map<String, Integer> atoms, Map<String, Integer> part, int times) {
        Map<String, Integer> rest = new HashMap<>(atoms);
        part.forEach((symbol, count) -> rest.merge(symbol, -times * count, (a, b) -> a + b == 0 ? null : Integer.valueOf(a + b)));
        return rest;
    }
}
