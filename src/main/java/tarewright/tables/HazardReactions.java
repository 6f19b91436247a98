package tarewright.tables;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
        List<ReactiveMember> members = Rows.of("hazards/reactive-members.csv").stream().map(r -> new ReactiveMember(r.text("substance"),
                r.text("group"), forms(r, "forms"), HazardCells.number(r, "from_pct", 0), HazardCells.number(r, "to_pct", 100),
                r.optionalNumber("concentrated_from_pct"), r.provenance())).toList();
        List<PairRule> pairs = Rows.of("hazards/reactive-pairs.csv").stream().map(r -> new PairRule(r.text("id"), r.text("group_a"),
                need(r, "needs_a"), r.text("group_b"), need(r, "needs_b"), HazardCells.choice(PairRule.Setting.class, r, "setting"),
                HazardCells.choice(PairRule.Severity.class, r, "severity"), r.text("products"), r.optional("gas"), r.text("hazard"),
                r.text("advice"), r.text("note"), r.provenance())).toList();
        return new ReactiveTable(members, pairs);
    }

    static Set<Form> forms(Row row, String column) {
        Set<Form> forms = new HashSet<>();
        for (String form : row.text(column).split(" ")) {
            if (!form.isEmpty() && !form.equals("none")) {
                forms.add(HazardCells.choice(Form.class, row, column, form));
            }
        }
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
