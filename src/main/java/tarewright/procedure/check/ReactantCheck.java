package tarewright.procedure.check;

import java.util.function.Consumer;
import tarewright.chemistry.BalancedEquation;
import tarewright.finding.Finding;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;

/** Every reactant of an equation in use must come from a block; water is there anyway, and electrons come from a wire. */
final class ReactantCheck implements Check {
    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ResolvedReaction reaction : procedure.reactions()) {
            if (reaction.block().shownOnly() || reaction.block().equation().isEmpty()) {
                continue;
            }
            for (PotAccount pot : reaction.pots()) {
                if (pot.reactants().isEmpty()) {
                    continue;
                }
                for (BalancedEquation.Term term : reaction.block().equation().get().reactants()) {
                    String formula = term.species().formula().plain();
                    boolean provided = formula.equals("H2O") || term.species().formula().isElectron()
                            || pot.reactants().stream().anyMatch(r -> r.formula().equals(formula));
                    if (!provided) {
                        findings.accept(new CheckFinding.ReactantMissing(term.species().unicode(), reaction.name(),
                                reaction.block().block().equation().orElseThrow().span()));
                    }
                }
            }
        }
    }
}
