package tarewright.chemistry.solution;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tarewright.chemistry.AcidConstant;
import tarewright.chemistry.AcidConstants;
import tarewright.chemistry.Acidity;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.Ions;
import tarewright.chemistry.Protolyte;
import tarewright.chemistry.Provenance;

/**
 * The pH of a solution by what is dissolved in it: strong and weak acids and bases, their salts, buffers of them. Nothing is
 * said where an ion is not known: most metal ions make water acid, and how much is not in the table.
 *
 * <p>At 25 °C; concentrations stand for activities, so that above some 0.1 mol/L a real pH differs by tenths.
 */
public final class PhOf {
    /** Ions that neither give nor take protons in water to speak of: common practice, no source. */
    private static final List<String> ONLOOKERS = List.of("Li^+", "Na^+", "K^+", "Rb^+", "Cs^+", "Mg^2+", "Ca^2+", "Sr^2+", "Ba^2+",
            "Cl^-", "Br^-", "I^-", "NO3^-", "ClO4^-", "ClO3^-", "S2O3^2-", "BrO3^-", "MnO4^-");
    /** Acids that give up their first proton wholly, with what is left then: common practice, no source. */
    private static final List<List<String>> STRONG = List.of(List.of("HCl", "Cl^-"), List.of("HBr", "Br^-"), List.of("HI", "I^-"),
            List.of("HNO3", "NO3^-"), List.of("HClO4", "ClO4^-"), List.of("HClO3", "ClO3^-"), List.of("H2SO4", "HSO4^-"));
    private static final Provenance PRACTICE = new Provenance("strong electrolyte: common practice, no source", Confidence.LIBRARY);

    private final AcidConstants constants;
    private final Acidity acidity;
    private final Ions ions;

    public PhOf(AcidConstants constants, Acidity acidity) {
        this.constants = constants;
        this.acidity = acidity;
        Stream<Formula> named = Stream.concat(ONLOOKERS.stream(), Stream.of("H^+", "OH^-", "SO4^2-", "HSO4^-")).map(PhOf::formula);
        Stream<Formula> protolytes = constants.all().stream().flatMap(row -> Stream.concat(row.acid().stream(), row.base().stream()))
                .filter(f -> f.charge() != 0);
        this.ions = new Ions(Stream.concat(named, protolytes).distinct().toList());
    }

    /** @param molesPerLitre of the formula as written, not negative */
    public record Dissolved(Formula formula, double molesPerLitre) {
    }

    /** @param provenance of the weakest datum behind it */
    public record Result(double pH, Provenance provenance) {
    }

    /** The pH of a solution of one substance. */
    public Optional<Result> of(Formula solute, double molesPerLitre) {
        return of(List.of(new Dissolved(solute, molesPerLitre)));
    }

    /** The pH of several in one solution; strengths are those in the mixture. Empty if anything of them is not known. */
    public Optional<Result> of(Collection<Dissolved> all) {
        Account account = new Account();
        for (Dissolved each : all) {
            boolean number = each.molesPerLitre() >= 0 && Double.isFinite(each.molesPerLitre());
            if (!number || !put(each.formula().anhydrous(), each.molesPerLitre(), account)) {
                return Optional.empty();
            }
        }
        return Optional.of(new Result(acidity.of(account.charge, account.protolytes), account.provenance));
    }

    private static final class Account {
        private double charge;
        private final List<Protolyte> protolytes = new ArrayList<>();
        private Provenance provenance = PRACTICE;
    }

    private boolean put(Formula whole, double moles, Account account) {
        if (whole.sameComposition(formula("H2O"))) {
            return true;
        }
        // An ion alone: what balances its charge is not said.
        if (whole.charge() != 0) {
            return false;
        }
        Optional<List<String>> strong = STRONG.stream().filter(pair -> formula(pair.get(0)).sameComposition(whole)).findFirst();
        if (strong.isPresent()) {
            return ion(formula(strong.get().get(1)), moles, account);
        }
        if (protolyte(whole, moles, account)) {
            return true;
        }
        Optional<List<Ions.Count>> parts = ions.of(whole);
        return parts.isPresent() && parts.get().stream().allMatch(part -> ion(part.ion(), moles * part.count(), account));
    }

    /** Hydrogen and hydroxide ions are what the balance of charges is solved for: only what stays as it is adds to the charge. */
    private boolean ion(Formula ion, double moles, Account account) {
        if (ion.sameComposition(formula("OH^-")) || ion.sameComposition(formula("H^+"))) {
            return true;
        }
        if (ONLOOKERS.contains(ion.plain())) {
            account.charge += ion.charge() * moles;
            return true;
        }
        return protolyte(ion, moles, account);
    }

    private boolean protolyte(Formula form, double moles, Account account) {
        Optional<Protolyte> found = constants.protolyte(form, moles);
        found.ifPresent(account.protolytes::add);
        for (AcidConstant step : constants.steps(form)) {
            account.provenance = account.provenance == PRACTICE ? step.provenance() : account.provenance.and(step.provenance());
        }
        return found.isPresent();
    }

    private static Formula formula(String text) {
        return ((FormulaResult.Ok) Formula.parse(text)).formula();
    }
}
