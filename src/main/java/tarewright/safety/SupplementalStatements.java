package tarewright.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Which EUH statements of the parts go over to the whole. */
final class SupplementalStatements {
    /** A sensitiser below the limit of its class still brings this on, at a tenth of the limit of its own (CLP Annex II 2.8). */
    static final String CONTAINS_SENSITISER = "EUH208";

    private final List<SupplementalLimit> limits;

    SupplementalStatements(List<SupplementalLimit> limits) {
        this.limits = limits;
    }

    /** A statement and the substances that bring it in. */
    record Supplement(String code, List<String> due) {
        /** As the list has it, with the names of sensitisers where it leaves a place for them. */
        Statement in(StatementList list) {
            Statement statement = list.of(code);
            return new Statement(code, statement.text().replace("<name of sensitising substance>", String.join(", ", due)),
                    statement.kind(), statement.provenance());
        }
    }

    List<Supplement> of(List<Dose> doses, Form form, Dose.Level level, Severest assigned) {
        Map<String, Set<String>> due = new TreeMap<>();
        for (Dose dose : doses) {
            String name = dose.row().name();
            dose.row().supplemental().stream().filter(code -> carries(dose, code, form, level, assigned))
                    .forEach(code -> due.computeIfAbsent(code, c -> new LinkedHashSet<>()).add(name));
            if (sensitises(dose, level, assigned)) {
                due.computeIfAbsent(CONTAINS_SENSITISER, c -> new LinkedHashSet<>()).add(name);
            }
        }
        List<Supplement> supplements = new ArrayList<>();
        due.forEach((code, names) -> supplements.add(new Supplement(code, List.copyOf(names))));
        return supplements;
    }

    private boolean carries(Dose dose, String code, Form form, Dose.Level level, Severest assigned) {
        List<SpecificLimit> own = dose.row().limits().stream().filter(l -> l.code().equals(code)).toList();
        if (!own.isEmpty()) {
            return own.stream().anyMatch(l -> l.reached(dose.at(level)));
        }
        return limits.stream().filter(l -> l.code().equals(code) && l.ingredient().isEmpty()).findFirst()
                .map(l -> Limits.reached(dose.at(level), l.fromPercent()) && dose.at(level) > 0 && switch (l.when()) {
                    case ALWAYS -> true;
                    case NOT_DISSOLVED -> form != Form.SOLUTION;
                    case IF_INHALED -> assigned.of(Endpoint.INHALED).isPresent();
                }).orElse(dose.at(level) > 0);
    }

    private boolean sensitises(Dose dose, Dose.Level level, Severest assigned) {
        for (HazardClass hazard : dose.row().classes()) {
            boolean sensitiser = hazard.endpoint() == Endpoint.SKIN_ALLERGY || hazard.endpoint() == Endpoint.AIRWAYS_ALLERGY;
            if (!sensitiser || assigned.of(hazard.endpoint()).isPresent()) {
                continue;
            }
            double from = dose.row().limits().stream()
                    .filter(l -> l.gives().filter(g -> g.endpoint() == hazard.endpoint()).isPresent())
                    .mapToDouble(l -> l.fromPercent() / 10).min()
                    .orElseGet(() -> limits.stream()
                            .filter(l -> l.ingredient().filter(hazard.name()::equals).isPresent()
                            && l.category().equals(hazard.category()))
                            .mapToDouble(SupplementalLimit::fromPercent).min().orElse(0));
            if (dose.at(level) > 0 && Limits.reached(dose.at(level), from)) {
                return true;
            }
        }
        return false;
    }
}
