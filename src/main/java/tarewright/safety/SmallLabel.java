package tarewright.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The label of a small bottle. Corrosion, damage to eyes and anything toxic are never left out, whatever a table says; nor is
 * anything of a matter that is not known. What the regulation lets go on a condition stays too: nobody here can tell whether it is met, and
 * students are not the trained users that it thinks of.
 *
 * @param statements what stays
 * @param omitted what the regulation lets go, with its clause
 */
public record SmallLabel(List<Statement> statements, List<Omitted> omitted) {
    /** The largest package to which the rule applies, in litres. */
    public static final double UP_TO = 0.125;
    private static final Set<String> NEVER = Set.of("H290", "H300", "H301", "H304", "H310", "H311", "H314", "H318", "H330",
            "H331", "H334",
            "H317", "H370", "H372");

    /** A statement that is left out. */
    public record Omitted(Statement statement, SmallPackRule by) {
    }

    public SmallLabel {
        statements = List.copyOf(statements);
        omitted = List.copyOf(omitted);
    }

    /** @param litres what the bottle can hold */
    public static SmallLabel of(Verdict verdict, double litres, Rulebook rules) {
        List<Statement> kept = new ArrayList<>();
        List<Omitted> omitted = new ArrayList<>();
        for (Statement statement : verdict.statements()) {
            List<HazardClass> because = verdict.assigned().stream().map(Assigned::hazard)
                    .filter(h -> h.code().equals(statement.code())).toList();
            boolean may = verdict.known() && litres <= UP_TO * (1 + 1e-9) && !NEVER.contains(statement.code());
            SmallPackRule rule = may ? rules.smallPacks().stream().filter(r -> r.onlyIf().isEmpty() && !because.isEmpty() && because.stream().allMatch(r::covers)).findFirst()
                    .orElse(null) : null;
            if (rule == null) {
                kept.add(statement);
            } else {
                omitted.add(new Omitted(statement, rule));
            }
        }
        return new SmallLabel(kept, omitted);
    }
}
