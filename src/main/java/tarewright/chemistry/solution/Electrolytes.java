package tarewright.chemistry.solution;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tarewright.chemistry.AcidConstants;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.Ions;

/**
 * What a substance brings into the balance of charges of a solution, by its formula: strong and weak acids and bases, their salts. The one way
 * from a formula to a pH. Nothing is said where an ion is not known: most metal ions make water acid, and how much is not in the table.
 */
public final class Electrolytes {
    /** Ions that neither give nor take protons in water to speak of: common practice, no source. */
    private static final Set<String> ONLOOKERS = Set.of("Li^+", "Na^+", "K^+", "Rb^+", "Cs^+", "Mg^2+", "Ca^2+", "Sr^2+", "Ba^2+",
            "Cl^-", "Br^-", "I^-", "NO3^-", "ClO4^-", "ClO3^-", "MnO4^-");
    /** Acids that give up their first proton wholly, with what is left then: common practice, no source. */
    private static final Map<String, String> STRONG = Map.of("HCl", "Cl^-", "HBr", "Br^-", "HI", "I^-", "HNO3", "NO3^-", "HClO4", "ClO4^-",
            "HClO3", "ClO3^-", "H2SO4", "HSO4^-", "HMnO4", "MnO4^-");
    private static final Set<String> OF_WATER = Set.of("H2O", "H^+", "H3O^+", "OH^-");

    private final AcidConstants constants;
    private final Ions ions;

    public Electrolytes(AcidConstants constants) {
        this.constants = constants;
        Stream<Formula> protolytes = constants.all().stream().flatMap(row -> Stream.concat(row.acid().stream(), row.base().stream()));
        Stream<Formula> named = Stream.concat(ONLOOKERS.stream(), Stream.of("OH^-")).map(Electrolytes::formula);
        // In one order whatever the run: a set has none.
        this.ions = new Ions(Stream.concat(named, protolytes).distinct().sorted(Comparator.comparing(Formula::plain)).toList());
    }

    /** What one mole brings; empty where it is not known what it does. Water of crystallisation joins the water. */
    public Optional<InWater> of(Formula written) {
        Formula formula = written.anhydrous();
        Optional<String> rest = STRONG.entrySet().stream().filter(e -> formula(e.getKey()).sameComposition(formula)).map(Map.Entry::getValue).findFirst();
        if (rest.isPresent()) {
            return ion(formula(rest.get()));
        }
        Optional<InWater> whole = ion(formula);
        if (whole.isPresent() || formula.charge() != 0) {
            return whole;
        }
        return ions.of(formula).flatMap(this::all);
    }

    private Optional<InWater> all(List<Ions.Count> parts) {
        Optional<InWater> sum = Optional.of(InWater.NOTHING);
        for (Ions.Count part : parts) {
            sum = sum.flatMap(s -> ion(part.ion()).map(i -> s.and(i.times(part.count()))));
        }
        return sum;
    }

    /** An ion, or a molecule that gives or takes protons. */
    private Optional<InWater> ion(Formula form) {
        if (OF_WATER.contains(form.plain())) {
            return Optional.of(InWater.NOTHING);
        }
        if (ONLOOKERS.contains(form.plain())) {
            return Optional.of(new InWater(form.charge(), List.of()));
        }
        return constants.protolyte(form, 1).map(p -> new InWater(0, List.of(p)));
    }

    private static Formula formula(String text) {
        return ((FormulaResult.Ok) Formula.parse(text)).formula();
    }
}
