package tarewright.safety;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import tarewright.chemistry.Provenance;

/**
 * What the tables say of one substance in one state.
 *
 * @param id a lasting name such as {@code sulfuric-acid}
 * @param names the name first, then others in use
 * @param formulas in plain writing; empty where there is none
 * @param byFormula whether the formula alone names it: not where isomers share it
 * @param state how the undiluted substance is
 * @param forms the forms for which this row speaks; empty for all
 * @param molarMass in g/mol, of the first formula
 * @param lightest the lowest density, in g/mL, that its solutions in water can have
 * @param fromPercent the strengths for which this row speaks, from
 * @param toPercent and to
 * @param dissolvedAs the row that speaks for it once it is in water
 * @param classes published for the undiluted substance
 * @param qualifiers routes and organs that the publisher adds to statements, in its words
 * @param supplemental EUH statements
 * @param mAcute multiplying factor for acute aquatic toxicity; empty where none is given, which does not mean 1
 * @param mChronic the same for chronic
 * @param estimates acute toxicity estimates that the table prints
 * @param limits specific concentration limits
 * @param suppliersAdd statements that suppliers often add and the list does not have
 * @param listing where all this comes from
 */
public record SubstanceHazards(String id, List<String> names, List<String> formulas, boolean byFormula, State state,
        Set<Form> forms,
        OptionalDouble molarMass, double lightest, double fromPercent, double toPercent, Optional<String> dissolvedAs,
        List<HazardClass> classes, String qualifiers, List<String> supplemental, OptionalDouble mAcute, OptionalDouble mChronic,
        Map<Route, Double> estimates, List<SpecificLimit> limits, List<String> suppliersAdd, Restriction restriction,
                Listing listing) {
    /** How the undiluted substance is. */
    public enum State {
        SOLID, LIQUID, SOLUTION, GAS
    }

    /**
     * Where a row comes from.
     *
     * @param cas CAS number, or empty
     * @param index Annex VI index number, or empty
     * @param appliesFrom date from which the entry applies, or empty
     * @param minimum whether Annex VI marks it as a minimum classification
     * @param note the table's remark, in English
     * @param fromMemory which part of the row is recalled and not read; empty if none
     */
    public record Listing(Basis basis, String cas, String index, String appliesFrom, boolean minimum, String note,
            String fromMemory,
            Provenance provenance) {
    }

    public SubstanceHazards {
        names = List.copyOf(names);
        formulas = List.copyOf(formulas);
        forms = Set.copyOf(forms);
        classes = List.copyOf(classes);
        supplemental = List.copyOf(supplemental);
        estimates = Map.copyOf(estimates);
        limits = List.copyOf(limits);
        suppliersAdd = List.copyOf(suppliersAdd);
        if (names.isEmpty()) {
            throw new IllegalArgumentException("no name for " + id);
        }
    }

    public String name() {
        return names.get(0);
    }

    /**
     * The same substance with another's classification. Its id stays, by which it is found in what must not meet, and so do its restriction, the
     * forms and strengths for which the row speaks, and whatever the other does not say of formula and molar mass.
     */
    public SubstanceHazards classifiedAs(SubstanceHazards other) {
        List<String> allNames = java.util.stream.Stream.concat(other.names.stream(), names.stream()).distinct().toList();
        return new SubstanceHazards(id, allNames, other.formulas.isEmpty() ? formulas : other.formulas, byFormula, state, forms,
                other.molarMass.isPresent() ? other.molarMass : molarMass, lightest, fromPercent, toPercent, dissolvedAs, other.classes, other.qualifiers,
                other.supplemental, mAcute, mChronic, other.estimates, other.limits, suppliersAdd, restriction, other.listing);
    }

    public boolean known() {
        return listing.basis() != Basis.NO_DATA;
    }

    boolean fits(Form form, double percent) {
        return (forms.isEmpty() || forms.contains(form)) && percent >= fromPercent && percent <= toPercent;
    }

    /** The multiplying factor that a generic limit asks for; 1 where none is given. */
    double mFactor(GenericLimit.MFactor which) {
        return switch (which) {
            case NONE -> 1;
            case ACUTE -> mAcute.orElse(1);
            case CHRONIC -> mChronic.orElse(1);
        };
    }
}
