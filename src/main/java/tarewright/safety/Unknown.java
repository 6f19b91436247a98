package tarewright.safety;

import java.util.List;
import java.util.Optional;

/**
 * A matter with something in it that the tables do not have: hazards not known, treat as hazardous.
 *
 * @param parts the names that were not found, at least one
 * @param rest what the parts that are known bring in; a lower bound
 */
public record Unknown(List<String> parts, Classified rest) implements Verdict {
    public Unknown {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("nothing unknown in " + rest.matter().name());
        }
    }

    @Override
    public Matter matter() {
        return rest.matter();
    }

    @Override
    public RuleSet ruleSet() {
        return rest.ruleSet();
    }

    @Override
    public boolean known() {
        return false;
    }

    @Override
    public List<Assigned> assigned() {
        return rest.assigned();
    }

    @Override
    public List<Statement> statements() {
        return rest.statements();
    }

    @Override
    public List<Statement> supplemental() {
        return rest.supplemental();
    }

    @Override
    public List<String> pictograms() {
        return rest.pictograms();
    }

    @Override
    public Optional<SignalWord> signalWord() {
        return rest.signalWord();
    }

    @Override
    public List<NearLimit> nearLimits() {
        return rest.nearLimits();
    }

    @Override
    public List<Remark> remarks() {
        return rest.remarks();
    }

    @Override
    public List<SubstanceHazards> rows() {
        return rest.rows();
    }
}
