package tarewright.safety;

import java.util.List;
import java.util.Optional;

/** A matter whose every part is in the tables. */
public record Classified(Matter matter, RuleSet ruleSet, List<Assigned> assigned, List<Statement> statements,
        List<Statement> supplemental, List<String> pictograms, Optional<SignalWord> signalWord, List<NearLimit> nearLimits,
        List<Remark> remarks, List<SubstanceHazards> rows) implements Verdict {
    public Classified {
        assigned = List.copyOf(assigned);
        statements = List.copyOf(statements);
        supplemental = List.copyOf(supplemental);
        pictograms = List.copyOf(pictograms);
        nearLimits = List.copyOf(nearLimits);
        remarks = List.copyOf(remarks);
        rows = List.copyOf(rows);
    }

    @Override
    public boolean known() {
        return true;
    }
}
