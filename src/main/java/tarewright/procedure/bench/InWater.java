package tarewright.procedure.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.Ions;
import tarewright.chemistry.Protolyte;
import tarewright.tables.ReferenceTables;

/**
 * What one mole of something brings into the balance of charges of a solution, in mol.
 *
 * @param strongCharge of its ions that take no part: cations of strong bases less anions of strong acids
 * @param weak its weak acids and bases
 */
record InWater(double strongCharge, List<Protolyte> weak) {
    /** Acids that give up a proton wholly, with what is left of each. Common knowledge of chemistry, no source. */
    private static final Map<String, String> STRONG_ACIDS = Map.of("HCl", "Cl^-", "HBr", "Br^-", "HI", "I^-", "HNO3", "NO3^-",
            "HClO4", "ClO4^-", "HClO3", "ClO3^-", "H2SO4", "HSO4^-", "HMnO4", "MnO4^-");
    private static final Map<String, Integer> CATIONS = Map.of("Li", 1, "Na", 1, "K", 1, "Rb", 1, "Cs", 1, "Mg", 2, "Ca", 2, "Sr", 2,
            "Ba", 2);
    private static final Set<String> INDIFFERENT = Set.of("Li^+", "Na^+", "K^+", "Rb^+", "Cs^+", "Mg^2+", "Ca^2+", "Sr^2+", "Ba^2+",
            "Cl^-", "Br^-", "I^-", "NO3^-", "ClO4^-", "ClO3^-", "MnO4^-");
    private static final Set<String> OF_WATER = Set.of("H^+", "H3O^+", "OH^-", "H2O");

    InWater {
        weak = List.copyOf(weak);
    }

    /** Empty where it is not known what it does: most metal ions take water apart, and no constant of theirs is at hand. */
    static Optional<InWater> of(Formula written, ReferenceTables tables) {
        Formula formula = written.anhydrous();
        if (OF_WATER.contains(formula.plain())) {
            return Optional.of(new InWater(0, List.of()));
        }
        if (STRONG_ACIDS.containsKey(formula.plain())) {
            return parse(STRONG_ACIDS.get(formula.plain())).flatMap(ion -> of(ion, 1, tables));
        }
        if (!tables.acidConstants().steps(formula).isEmpty() || formula.charge() != 0) {
            return of(formula, 1, tables);
        }
        Optional<List<Ions.Count>> ions = tables.enthalpies().ions(formula);
        return ions.isPresent() ? sum(ions.get().stream().map(i -> of(i.ion(), i.count(), tables)).toList())
                : ofSalt(formula, tables);
    }

    private static Optional<InWater> of(Formula ion, int count, ReferenceTables tables) {
        if (OF_WATER.contains(ion.plain())) {
            return Optional.of(new InWater(0, List.of()));
        }
        if (INDIFFERENT.contains(ion.plain())) {
            return Optional.of(new InWater((double) count * ion.charge(), List.of()));
        }
        return tables.acidConstants().protolyte(ion, count).map(p -> new InWater(0, List.of(p)));
    }

    private static Optional<InWater> sum(List<Optional<InWater>> each) {
        double charge = 0;
        List<Protolyte> weak = new ArrayList<>();
        for (Optional<InWater> one : each) {
            if (one.isEmpty()) {
                return Optional.empty();
            }
            charge += one.get().strongCharge();
            weak.addAll(one.get().weak());
        }
        return Optional.of(new InWater(charge, weak));
    }

    /** A salt of an alkali or alkaline earth metal with the anion of a weak acid, by its atoms. */
    private static Optional<InWater> ofSalt(Formula salt, ReferenceTables tables) {
        int charge = CATIONS.entrySet().stream().mapToInt(c -> c.getValue() * salt.atoms().getOrDefault(c.getKey(), 0)).sum();
        Map<String, Integer> rest = salt.atoms().entrySet().stream().filter(a -> !CATIONS.containsKey(a.getKey()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        if (charge == 0 || rest.isEmpty()) {
            return Optional.empty();
        }
        int cations = charge;
        return anion(rest, charge, 1).flatMap(a -> of(a, 1, tables))
                .or(() -> anion(rest, cations, cations).flatMap(a -> of(a, cations, tables)))
                .map(a -> new InWater(cations + a.strongCharge(), a.weak()));
    }

    private static Optional<Formula> anion(Map<String, Integer> atoms, int charge, int parts) {
        if (atoms.values().stream().anyMatch(n -> n % parts != 0)) {
            return Optional.empty();
        }
        String text = atoms.entrySet().stream().sorted(Map.Entry.comparingByKey())
                .map(a -> a.getKey() + (a.getValue() / parts == 1 ? "" : a.getValue() / parts)).collect(Collectors.joining());
        return parse(text + "^" + (charge / parts == 1 ? "" : charge / parts) + "-");
    }

    private static Optional<Formula> parse(String text) {
        return Formula.parse(text) instanceof FormulaResult.Ok ok ? Optional.of(ok.formula()) : Optional.empty();
    }

    /** Moles of acid, or if negative of alkali, that have to be taken up to bring it to a pH, free ions of water apart. */
    double acidAt(double pH) {
        return -strongCharge - weak.stream()
                .mapToDouble(w -> w.molesPerLitre() * (w.chargeWithAll() - w.protonsGiven(pH))).sum();
    }

    /** The weak ones at so many mol/L of the whole. */
    List<Protolyte> weakAt(double molesPerLitre) {
        return weak.stream().map(w -> new Protolyte(w.molesPerLitre() * molesPerLitre, w.pKa(), w.chargeWithAll())).toList();
    }
}
