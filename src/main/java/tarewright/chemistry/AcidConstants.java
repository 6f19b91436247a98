package tarewright.chemistry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Acid constants, found by the acid, by its base or by any form between. */
public final class AcidConstants {
    private final List<AcidConstant> all;
    private final FormulaIndex<AcidConstant> byAcid;
    private final FormulaIndex<AcidConstant> byBase;

    /**
     * @param all the rows
     * @param isomers what several substances share, see {@link Substances#isomers}
     */
    public AcidConstants(Collection<AcidConstant> all, Set<Composition> isomers) {
        this.all = List.copyOf(all);
        List<AcidConstant> written = all.stream().filter(row -> row.acid().isPresent() && row.base().isPresent()).toList();
        this.byAcid = new FormulaIndex<>(written, row -> row.acid().get(), isomers);
        this.byBase = new FormulaIndex<>(written, row -> row.base().get(), isomers);
    }

    public List<AcidConstant> all() {
        return all;
    }

    /** The row of an indicator or acid by its name. */
    public Optional<AcidConstant> named(String name) {
        return all.stream().filter(row -> row.name().equalsIgnoreCase(name)).findFirst();
    }

    /**
     * All steps of the acid that this is, or is a form of, strongest first: of hydrogencarbonate, those of carbonic acid.
     * Empty if none is known. Water is left out: it is in every solution.
     */
    public List<AcidConstant> steps(Formula form) {
        if (isWater(form)) {
            return List.of();
        }
        List<AcidConstant> steps = new ArrayList<>();
        Optional<AcidConstant> before = byBase.of(form);
        while (before.isPresent() && !steps.contains(before.get()) && !isWater(before.get().acid().get())) {
            steps.add(0, before.get());
            before = byBase.of(before.get().acid().get());
        }
        Optional<AcidConstant> after = byAcid.of(form);
        while (after.isPresent() && !steps.contains(after.get())) {
            steps.add(after.get());
            after = byAcid.of(after.get().base().get());
        }
        return List.copyOf(steps);
    }

    private static boolean isWater(Formula formula) {
        return formula.plain().equals("H2O") || formula.plain().equals("OH^-");
    }

    /** What is put into a solution with a weak acid, a weak base or a salt's ion, in whichever form. */
    public Optional<Protolyte> protolyte(Formula form, double molesPerLitre) {
        List<AcidConstant> steps = steps(form);
        if (steps.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Protolyte(molesPerLitre, steps.stream().map(AcidConstant::pKa).toList(),
                steps.get(0).acid().get().charge()));
    }
}
