package tarewright.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Provenance;

/** Invented substances for tests: one thing said of each, so that what follows from it shows alone. */
final class Rows {
    static final Provenance READ = new Provenance("invented", Confidence.READ);

    private final String id;
    private List<String> formulas = List.of();
    private SubstanceHazards.State state = SubstanceHazards.State.SOLID;
    private Set<Form> forms = Set.of();
    private OptionalDouble molarMass = OptionalDouble.empty();
    private double from;
    private double to = 100;
    private Optional<String> dissolvedAs = Optional.empty();
    private final List<HazardClass> classes = new ArrayList<>();
    private List<String> supplemental = List.of();
    private OptionalDouble mAcute = OptionalDouble.empty();
    private OptionalDouble mChronic = OptionalDouble.empty();
    private Map<Route, Double> estimates = Map.of();
    private final List<SpecificLimit> limits = new ArrayList<>();
    private List<String> suppliersAdd = List.of();
    private Restriction restriction = Restriction.NONE;
    private Basis basis = Basis.SELF_CLASSIFIED;
    private boolean minimum;
    private Provenance provenance = READ;

    private Rows(String id) {
        this.id = id;
    }

    static Rows of(String id) {
        return new Rows(id);
    }

    Rows formula(String... all) {
        formulas = List.of(all);
        return this;
    }

    Rows state(SubstanceHazards.State as) {
        state = as;
        return this;
    }

    Rows forms(Form... all) {
        forms = Set.of(all);
        return this;
    }

    Rows molarMass(double gramsPerMole) {
        molarMass = OptionalDouble.of(gramsPerMole);
        return this;
    }

    Rows between(double low, double high) {
        from = low;
        to = high;
        return this;
    }

    Rows dissolvedAs(String other) {
        dissolvedAs = Optional.of(other);
        return this;
    }

    /** @param hazard as {@code Skin Corr.|1B|H314} */
    Rows is(String hazard) {
        classes.add(hazard(hazard));
        return this;
    }

    Rows says(String... euh) {
        supplemental = List.of(euh);
        return this;
    }

    Rows mFactors(double acute, double chronic) {
        mAcute = OptionalDouble.of(acute);
        mChronic = OptionalDouble.of(chronic);
        return this;
    }

    Rows estimate(Route route, double value) {
        estimates = Map.of(route, value);
        return this;
    }

    Rows limit(String hazard, double percent) {
        limits.add(new SpecificLimit(Optional.of(hazard(hazard)), hazard(hazard).code(), percent, true, READ));
        return this;
    }

    /** A limit of its own for a supplemental statement. */
    Rows saysFrom(String euh, double percent) {
        supplemental = List.of(euh);
        limits.add(new SpecificLimit(Optional.empty(), euh, percent, true, READ));
        return this;
    }

    Rows suppliersAdd(String... codes) {
        suppliersAdd = List.of(codes);
        return this;
    }

    Rows restricted(Restriction to) {
        restriction = to;
        return this;
    }

    Rows basis(Basis on) {
        basis = on;
        return this;
    }

    Rows minimum() {
        minimum = true;
        return this;
    }

    Rows fromMemory() {
        provenance = new Provenance("invented", Confidence.MEMORY);
        return this;
    }

    SubstanceHazards row() {
        return new SubstanceHazards(id, List.of(id), formulas, !formulas.isEmpty(), state, forms, molarMass, 1, from, to, dissolvedAs, classes, "",
                supplemental, mAcute, mChronic, estimates, limits, suppliersAdd, restriction,
                new SubstanceHazards.Listing(basis, "", "", "", minimum, "", basis == Basis.NO_DATA ? "" : "the part", provenance));
    }

    static HazardClass hazard(String text) {
        String[] parts = text.split("\\|");
        return new HazardClass(parts[0], parts[1], parts[2]);
    }

    /** The rules of the tables with these substances instead of theirs. */
    static Rulebook rules(Rows... rows) {
        return Bench.RULES.with(new SubstanceTable(List.of(rows).stream().map(Rows::row).toList()));
    }

    /** The verdict on one of them, so many per cent in a form. */
    static Verdict verdict(Form form, double percent, Rows row) {
        return new Classification(rules(row)).of(Matter.of("m", form, List.of(Part.of(row.id, Content.percent(percent)))));
    }
}
