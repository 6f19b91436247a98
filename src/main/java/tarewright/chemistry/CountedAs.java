package tarewright.chemistry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tarewright.exact.Rational;

/**
 * A strength may count another formula than the solute's own: phosphoric acid as P₂O₅, a nitrate as N, bleach as Cl₂. The element that both hold tells how many units
 * of the solute one unit of what is counted stands for.
 */
public final class CountedAs {
    /** Nearly everything holds these: they tell nothing. */
    private static final Set<String> EVERYWHERE = Set.of("H", "O");
    private static final Set<String> DIVALENT = Set.of("Mg", "Ca", "Sr", "Ba");
    private static final Set<String> BESIDE_HYPOCHLORITE = Set.of("Li", "Na", "K", "Mg", "Ca", "H");

    private CountedAs() {
    }

    /**
     * Formula units of the solute for one of what is counted: 2 of H₃PO₄ for one P₂O₅; empty where the two formulas do not settle it.
     *
     * <p>Two conventions of the trade go before the element: <em>available chlorine</em> counts one Cl₂ for each hypochlorite, since that is what acid sets free; and
     * the <em>hardness</em> of water counts one CaCO₃ for each atom of an alkaline earth metal.
     */
    public static Optional<Rational> unitsOfSolute(Formula counted, Formula solute) {
        if (counted.anhydrous().sameComposition(solute.anhydrous())) {
            return Optional.of(Rational.ONE);
        }
        if (counted.plain().equals("Cl2") && isHypochlorite(solute)) {
            return Optional.of(Rational.ONE.over(solute.count("Cl")));
        }
        if (counted.plain().equals("CaCO3")) {
            return hardness(solute);
        }
        List<Rational> ratios = counted.anhydrous().atoms().keySet().stream().filter(e -> !EVERYWHERE.contains(e) && solute.count(e).signum() != 0)
                .map(e -> counted.count(e).over(solute.count(e))).distinct().toList();
        return ratios.size() == 1 ? Optional.of(ratios.get(0)) : Optional.empty();
    }

    private static boolean isHypochlorite(Formula solute) {
        Map<String, Integer> atoms = solute.anhydrous().atoms();
        return atoms.containsKey("Cl") && atoms.get("Cl").equals(atoms.get("O"))
                && atoms.keySet().stream().allMatch(e -> e.equals("Cl") || e.equals("O") || BESIDE_HYPOCHLORITE.contains(e));
    }

    /** Of a salt with one kind of alkaline earth metal. What has none would be counted by the acid that it takes up, which formulas do not tell. */
    private static Optional<Rational> hardness(Formula solute) {
        List<String> metals = solute.atoms().keySet().stream().filter(DIVALENT::contains).toList();
        return metals.size() == 1 ? Optional.of(Rational.ONE.over(solute.count(metals.get(0)))) : Optional.empty();
    }
}
