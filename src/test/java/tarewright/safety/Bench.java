package tarewright.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import tarewright.tables.HazardTables;

/** Matters for tests. */
final class Bench {
    static final Rulebook RULES = HazardTables.standard();
    static final Classification CLASSIFICATION = new Classification(RULES);

    private Bench() {
    }

    static Verdict solution(String solute, double percent) {
        return CLASSIFICATION.of(Matter.solution(solute, solute, Content.percent(percent)));
    }

    static List<String> codes(Verdict verdict) {
        return verdict.statements().stream().map(Statement::code).toList();
    }

    /** One to four substances of the tables in random shares, in a random form. */
    static Matter random(SplittableRandom random) {
        List<SubstanceHazards> rows = RULES.substances().rows();
        List<Part> parts = new ArrayList<>();
        double left = 100;
        int count = random.nextInt(1, 5);
        for (int i = 0; i < count; i++) {
            double percent = left * Math.pow(random.nextDouble(), 2);
            left -= percent;
            parts.add(Part.of(rows.get(random.nextInt(rows.size())).id(), Content.percent(percent)));
        }
        return Matter.of("mixture", Form.values()[random.nextInt(Form.values().length)], parts);
    }
}
