package tarewright.tables;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.safety.Basis;
import tarewright.safety.HazardClass;
import tarewright.safety.Restriction;
import tarewright.safety.Route;
import tarewright.safety.SpecificLimit;
import tarewright.safety.SubstanceHazards;

/** Reads substances with their classes and their own limits. */
final class HazardSubstances {
    private HazardSubstances() {
    }

    /** @param ions which substance stands for an ion: its formula is then one of the substance's */
    static List<SubstanceHazards> read(List<Row> substances, List<Row> limits, List<Row> ions) {
        Map<String, List<SpecificLimit>> own = new HashMap<>();
        for (Row row : limits) {
            Optional<HazardClass> gives = row.optional("hazard_class")
                    .map(c -> new HazardClass(c, row.text("category"), row.text("code")));
            own.computeIfAbsent(row.text("substance"), s -> new ArrayList<>()).add(new SpecificLimit(gives, row.text("code"),
                    row.number("from_pct"), !row.text("inclusive").equals("no"), row.provenance()));
        }
        Map<String, List<String>> standsFor = new HashMap<>();
        ions.forEach(row -> standsFor.computeIfAbsent(row.text("stands_for"), s -> new ArrayList<>()).add(row.text("ion")));
        return substances.stream().map(row -> substance(row, own.getOrDefault(row.text("id"), List.of()),
                standsFor.getOrDefault(row.text("id"), List.of()))).toList();
    }

    private static SubstanceHazards substance(Row row, List<SpecificLimit> limits, List<String> ions) {
        List<String> names = new ArrayList<>(List.of(row.text("name")));
        names.addAll(row.list("also"));
        List<String> formulas = new ArrayList<>(row.list("formula"));
        formulas.addAll(ions);
        Map<Route, Double> estimates = new EnumMap<>(Route.class);
        row.optionalNumber("ate_oral").ifPresent(e -> estimates.put(Route.ORAL, e));
        row.optionalNumber("ate_inhaled").ifPresent(e -> estimates.put(HazardCells.choice(Route.class, row, "ate_kind"), e));
        boolean byFormula = HazardCells.yes(row, "by_formula") && !row.text("forms").equals("none");
        SubstanceHazards.Listing listing = new SubstanceHazards.Listing(HazardCells.choice(Basis.class, row, "status"),
                row.text("cas"),
                row.text("index"), row.text("applies_from"), HazardCells.yes(row, "minimum"), row.text("note"),
                        row.text("from_memory"),
                row.provenance());
        return new SubstanceHazards(row.text("id"), names, formulas, byFormula,
                HazardCells.choice(SubstanceHazards.State.class, row, "state"), HazardReactions.forms(row, "forms"),
                row.optionalNumber("molar_mass"), HazardCells.number(row, "lightest", 1),
                HazardCells.number(row, "from_pct", 0), HazardCells.number(row, "to_pct", 100), row.optional("dissolved_as"),
                        classes(row), row.text("qualifiers"),
                row.list("euh"), row.optionalNumber("m_acute"), row.optionalNumber("m_chronic"), estimates, limits,
                row.list("suppliers_add"),
                row.optional("restriction").map(r -> HazardCells.choice(Restriction.class, row, "restriction",
                        r)).orElse(Restriction.NONE), listing);
    }

    private static List<HazardClass> classes(Row row) {
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
