package tarewright.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Provenance;
import tarewright.safety.Basis;
import tarewright.safety.HazardClass;
import tarewright.safety.Restriction;
import tarewright.safety.Rulebook;
import tarewright.safety.SpecificLimit;
import tarewright.safety.SubstanceHazards;
import tarewright.tables.HazardOwnTable.Trouble;

/** One row of a teacher's own hazard table on its way to a substance. */
final class OwnRow {
    private static final Pattern LIMIT = Pattern.compile("([0-9]+(?:\\.[0-9]+)?) ?% (.+)");
    private static final int LONGEST = 10_000;

    private final Map<String, String> cells;
    private final int line;
    private final String fileName;
    private final Rulebook rules;
    private final List<Trouble> troubles;

    OwnRow(Map<String, String> cells, int line, String fileName, Rulebook rules, List<Trouble> troubles) {
        this.cells = cells;
        this.line = line;
        this.fileName = fileName;
        this.rules = rules;
        this.troubles = troubles;
    }

    /** The substance; what is wrong with it has then been added to the troubles. */
    Optional<SubstanceHazards> substance() {
        String name = cell("name");
        if (name.isEmpty()) {
            trouble(Trouble.Kind.NO_NAME, "name");
            return Optional.empty();
        }
        if (cell("classification").isEmpty()) {
            trouble(Trouble.Kind.NO_CLASSIFICATION, "classification");
            return Optional.empty();
        }
        List<String> names = new ArrayList<>(List.of(name));
        names.addAll(list("also"));
        List<HazardClass> classes = classes();
        Provenance provenance = new Provenance(fileName + (cell("source").isEmpty() ? "" : ": " + cell("source")),
                Confidence.READ);
        SubstanceHazards.Listing listing = new SubstanceHazards.Listing(Basis.TEACHER, "", "", "", false, "", "", provenance);
        return Optional.of(new SubstanceHazards("own " + name, names, list("formula"), true, state(), Set.of(), molarMass(), 1,
                0, 100,
                Optional.empty(), classes, "", supplemental(), OptionalDouble.empty(), OptionalDouble.empty(), Map.of(),
                        limits(provenance),
                List.of(), Restriction.NONE, listing));
    }

    private String cell(String column) {
        String cell = cells.getOrDefault(column, "");
        return cell.length() > LONGEST ? "" : cell;
    }

    private List<String> list(String column) {
        return Arrays.stream(cell(column).split("\\|")).map(String::strip).filter(t -> !t.isEmpty()).toList();
    }

    private void trouble(Trouble.Kind kind, String column) {
        troubles.add(new Trouble(kind, line, column, cell(column)));
    }

    private List<HazardClass> classes() {
        List<HazardClass> classes = new ArrayList<>();
        for (String text : list("classification")) {
            if (!text.equals("none")) {
                Optional<HazardClass> hazard = hazard(text);
                hazard.ifPresentOrElse(classes::add,
                        () -> troubles.add(new Trouble(Trouble.Kind.NOT_A_CLASS, line, "classification", text)));
            }
        }
        return classes;
    }

    private Optional<HazardClass> hazard(String text) {
        try {
            return Optional.of(HazardSubstances.hazard(text)).filter(this::onLabels);
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
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
            double percent = limit.matches() ? Double.parseDouble(limit.group(1)) : -1;
            if (gives.isEmpty() || percent < 0 || percent > 100) {
                troubles.add(new Trouble(Trouble.Kind.NOT_A_LIMIT, line, "limits", text));
            } else {
                limits.add(new SpecificLimit(gives, gives.get().code(), percent, true, provenance));
            }
        }
        return limits;
    }

    private List<String> supplemental() {
        List<String> codes = list("statements");
        codes.stream().filter(c -> rules.statements().find(c).isEmpty() || !c.startsWith("EUH"))
                .forEach(c -> troubles.add(new Trouble(Trouble.Kind.NOT_A_STATEMENT, line, "statements", c)));
        return codes;
    }

    private SubstanceHazards.State state() {
        String text = cell("state");
        if (text.isEmpty()) {
            return SubstanceHazards.State.SOLID;
        }
        Optional<SubstanceHazards.State> state = Arrays.stream(SubstanceHazards.State.values())
                .filter(s -> s.name().equalsIgnoreCase(text)).findFirst();
        if (state.isEmpty()) {
            trouble(Trouble.Kind.NOT_A_STATE, "state");
        }
        return state.orElse(SubstanceHazards.State.SOLID);
    }

    private OptionalDouble molarMass() {
        String text = cell("molar mass");
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!text.matches("[0-9]{1,6}(\\.[0-9]{1,9})?") || Double.parseDouble(text) == 0) {
            trouble(Trouble.Kind.NOT_A_NUMBER, "molar mass");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(text));
    }
}
