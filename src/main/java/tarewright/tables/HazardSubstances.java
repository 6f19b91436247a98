package tarewright.tables;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tarewright.safety.Basis;
import tarewright.safety.Form;
import tarewright.safety.HazardClass;
import tarewright.safety.Restriction;
import tarewright.safety.Route;
import tarewright.safety.SpecificLimit;
import tarewright.safety.SubstanceHazards;

/** Reads substances with their classes and their own limits. */
final class HazardSubstances {
    private HazardSubstances() {
    }

    static List<SubstanceHazards> read(List<HazardCsv> substances, List<HazardCsv> limits) {
        Map<String, List<SpecificLimit>> own = new HashMap<>();
        for (HazardCsv row : limits) {
            Optional<HazardClass> gives = row.maybe("hazard_class")
                    .map(c -> new HazardClass(c, row.text("category"), row.text("code")));
            own.computeIfAbsent(row.text("substance"), s -> new ArrayList<>()).add(new SpecificLimit(gives, row.text("code"),
                    row.number("from_pct"), !row.text("inclusive").equals("no"), row.reference()));
        }
        return substances.stream().map(row -> substance(row, own.getOrDefault(row.text("id"), List.of()))).toList();
    }

    private static SubstanceHazards substance(HazardCsv row, List<SpecificLimit> limits) {
        List<String> names = new ArrayList<>(List.of(row.text("name")));
        names.addAll(row.list("also"));
        Set<Form> forms = new HashSet<>();
        for (String form : row.text("forms").split(" ")) {
            if (!form.isEmpty() && !form.equals("none")) {
                forms.add(row.choice(Form.class, "forms", form));
            }
        }
        Map<Route, Double> estimates = new EnumMap<>(Route.class);
        row.maybeNumber("ate_oral").ifPresent(e -> estimates.put(Route.ORAL, e));
        row.maybeNumber("ate_inhaled").ifPresent(e -> estimates.put(row.choice(Route.class, "ate_kind"), e));
        boolean byFormula = row.yes("by_formula") && !row.text("forms").equals("none");
        SubstanceHazards.Listing listing = new SubstanceHazards.Listing(row.choice(Basis.class, "status"), row.text("cas"),
                row.text("index"), row.text("applies_from"), row.yes("minimum"), row.text("note"), row.text("from_memory"),
                row.reference());
        return new SubstanceHazards(row.text("id"), names, row.list("formula"), byFormula,
                row.choice(SubstanceHazards.State.class, "state"), forms, row.maybeNumber("molar_mass"), row.number("lightest", 1),
                row.number("from_pct", 0), row.number("to_pct", 100), row.maybe("dissolved_as"), classes(row), row.text("qualifiers"),
                row.list("euh"), row.maybeNumber("m_acute"), row.maybeNumber("m_chronic"), estimates, limits,
                List.of(row.text("suppliers_add").split(" ")).stream().filter(c -> !c.isEmpty()).toList(),
                row.maybe("restriction").map(r -> row.choice(Restriction.class, "restriction", r)).orElse(Restriction.NONE), listing);
    }

    private static List<HazardClass> classes(HazardCsv row) {
        return row.list("classification").stream().filter(c -> !c.equals("none")).map(HazardSubstances::hazard).toList();
    }

    /** {@code Skin Corr. 1B H314}; effects on lactation have no category. */
    static HazardClass hazard(String text) {
        String[] words = text.split(" ");
        String code = words[words.length - 1];
        String last = words.length > 2 ? words[words.length - 2] : "";
        boolean category = !last.isEmpty() && Character.isDigit(last.charAt(0));
        int name = text.length() - code.length() - 1 - (category ? last.length() + 1 : 0);
        return new HazardClass(text.substring(0, name), category ? last : "", code);
    }
}
