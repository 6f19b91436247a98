package tarewright.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Provenance;
import tarewright.finding.Finding;
import tarewright.safety.Basis;
import tarewright.safety.HazardClass;
import tarewright.safety.Restriction;
import tarewright.safety.Rulebook;
import tarewright.safety.SpecificLimit;
import tarewright.safety.SubstanceHazards;
import tarewright.tables.HazardFinding.ClassificationMissing;
import tarewright.tables.HazardFinding.NotAConcentrationLimit;
import tarewright.tables.HazardFinding.NotAHazardClass;
import tarewright.tables.HazardFinding.NotAMolarMass;
import tarewright.tables.HazardFinding.NotASupplementalStatement;
import tarewright.tables.OwnTableFinding.NotASubstanceState;
import tarewright.tables.OwnTableFinding.SubstanceNameMissing;
import tarewright.text.Span;

/** One row of a teacher's own hazard table on its way to a substance. */
final class HazardOwnRow {
    private static final Pattern LIMIT = Pattern.compile("([0-9]{1,3}(?:\\.[0-9]{1,9})?) ?% (.+)");
    private static final Pattern MOLAR_MASS = Pattern.compile("[0-9]{1,6}(\\.[0-9]{1,9})?");
    private static final Map<String, SubstanceHazards.State> STATES = Map.of("s", SubstanceHazards.State.SOLID, "l",
            SubstanceHazards.State.LIQUID, "g", SubstanceHazards.State.GAS, "aq", SubstanceHazards.State.SOLUTION);

    private final Map<String, OwnCell> cells;
    private final Span at;
    private final String file;
    private final Rulebook rules;
    private final List<Finding> findings;

    /** @param at of the row @param file what the table is called */
    HazardOwnRow(Map<String, OwnCell> cells, Span at, String file, Rulebook rules, List<Finding> findings) {
        this.cells = cells;
        this.at = at;
        this.file = file;
        this.rules = rules;
        this.findings = findings;
    }

    /** The substance, unless something is wrong with its row. */
    Optional<SubstanceHazards> substance() {
        int before = findings.size();
        String name = text("name");
        if (name.isEmpty()) {
            findings.add(new SubstanceNameMissing(at));
        } else if (text("classification").isEmpty()) {
            findings.add(new ClassificationMissing(name, at));
        }
        List<String> names = new ArrayList<>(List.of(name));
        names.addAll(list("synonyms"));
        Provenance provenance = new Provenance(text("source").isEmpty() ? file : file + ": " + text("source"), Confidence.READ);
        SubstanceHazards.Listing listing = new SubstanceHazards.Listing(Basis.TEACHER, "", "", "", false, "", "", provenance);
        SubstanceHazards substance = new SubstanceHazards("own " + name, names, list("formula"), true, state(), Set.of(),
                molarMass(), 1,
                0, 100, Optional.empty(), classes(), "", supplemental(), OptionalDouble.empty(), OptionalDouble.empty(), Map.of(),
                limits(provenance), List.of(), Restriction.NONE, listing);
        return findings.size() == before ? Optional.of(substance) : Optional.empty();
    }

    private String text(String column) {
        OwnCell cell = cells.get(column);
        return cell == null ? "" : cell.text();
    }

    private List<String> list(String column) {
        return OwnSubstances.parts(text(column)).stream().filter(t -> !t.isEmpty()).toList();
    }

    private Span at(String column) {
        return cells.get(column).at();
    }

    private List<HazardClass> classes() {
        List<HazardClass> classes = new ArrayList<>();
        for (String text : list("classification")) {
            if (!text.equals("none")) {
                hazard(text).ifPresentOrElse(classes::add, () -> findings.add(new NotAHazardClass(text, at("classification"))));
            }
        }
        return classes;
    }

    private Optional<HazardClass> hazard(String text) {
        try {
            return Optional.of(HazardSubstances.hazard(text)).filter(this::onLabels);
        } catch (IllegalArgumentException | IndexOutOfBoundsException notOne) {
            return Optional.empty();
        }
    }

    /** Whether class, category and statement belong together by the label elements of the rule set. */
    private boolean onLabels(HazardClass hazard) {
        return rules.labelElements().stream().anyMatch(e -> e.hazardClass().equals(hazard.name()) && e.codes().contains(
                hazard.code())
                && (e.categories().contains(hazard.category()) || e.categories().isEmpty() && hazard.category().isEmpty()));
    }

    private List<SpecificLimit> limits(Provenance provenance) {
        List<SpecificLimit> limits = new ArrayList<>();
        for (String text : list("limits")) {
            Matcher limit = LIMIT.matcher(text);
            Optional<HazardClass> gives = limit.matches() ? hazard(limit.group(2)) : Optional.empty();
            if (gives.isEmpty() || Double.parseDouble(limit.group(1)) > 100) {
                findings.add(new NotAConcentrationLimit(text, at("limits")));
            } else {
                limits.add(new SpecificLimit(gives, gives.get().code(), Double.parseDouble(limit.group(1)), true, provenance));
            }
        }
        return limits;
    }

    private List<String> supplemental() {
        List<String> codes = list("statements");
        codes.stream().filter(c -> rules.statements().find(c).isEmpty() || !c.startsWith("EUH"))
                .forEach(c -> findings.add(new NotASupplementalStatement(c, at("statements"))));
        return codes;
    }

    private SubstanceHazards.State state() {
        SubstanceHazards.State state = STATES.get(text("state"));
        if (state == null && !text("state").isEmpty()) {
            findings.add(new NotASubstanceState(text("state"), at("state")));
        }
        return state == null ? SubstanceHazards.State.SOLID : state;
    }

    private OptionalDouble molarMass() {
        String text = text("molar_mass");
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!MOLAR_MASS.matcher(text).matches() || Double.parseDouble(text) == 0) {
            findings.add(new NotAMolarMass(text, at("molar_mass")));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(text));
    }
}
