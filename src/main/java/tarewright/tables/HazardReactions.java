package tarewright.tables;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import tarewright.safety.Form;
import tarewright.safety.Need;
import tarewright.safety.PairRule;
import tarewright.safety.ReactiveMember;
import tarewright.safety.ReactiveTable;

/** Reads the reactive groups and what must not meet. */
final class HazardReactions {
    private HazardReactions() {
    }

    static ReactiveTable read() {
        List<ReactiveMember> members = Rows.of("hazards/reactive-members.csv").stream().map(r -> new ReactiveMember(
                r.text("substance"),
                r.text("group"), forms(r, "forms"), HazardCells.number(r, "from_pct", 0), HazardCells.number(r, "to_pct", 100),
                r.optionalNumber("concentrated_from_pct"), r.provenance())).toList();
        List<PairRule> pairs = Rows.of("hazards/reactive-pairs.csv").stream().map(r -> new PairRule(r.text("id"),
                r.text("group_a"),
                need(r, "needs_a"), r.text("group_b"), need(r, "needs_b"), HazardCells.choice(PairRule.Setting.class, r,
                        "setting"),
                HazardCells.choice(PairRule.Severity.class, r, "severity"), r.text("products"), r.optional("gas"),
                        r.text("hazard"),
                r.text("advice"), r.text("note"), r.provenance())).toList();
        Map<String, String> groups = Rows.of("hazards/reactive-groups.csv").stream()
                .collect(Collectors.toMap(r -> r.text("id"), r -> r.text("name")));
        return new ReactiveTable(groups, members, pairs);
    }

    static Set<Form> forms(Row row, String column) {
        Set<Form> forms = new HashSet<>();
        row.list(column).stream().filter(f -> !f.equals("none")).forEach(f -> forms.add(HazardCells.choice(Form.class, row,
                column, f)));
        return forms;
    }

    /** A word, or {@code >=20} or {@code >6} per cent. */
    private static Need need(Row row, String column) {
        String text = row.text(column);
        if (text.startsWith(">=")) {
            return new Need(Need.Kind.AT_LEAST, Double.parseDouble(text.substring(2)));
        }
        return text.startsWith(">") ? new Need(Need.Kind.ABOVE, Double.parseDouble(text.substring(1)))
                : new Need(HazardCells.choice(Need.Kind.class, row, column), 0);
    }
}
