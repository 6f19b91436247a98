package tarewright.procedure.check;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import tarewright.finding.Finding;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.procedure.resolve.ResolvedReaction.Reactant;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/** What the author says is limiting must be. */
final class LimitingCheck implements Check {
    private static final Unit MILLIMOLE = Units.symbol("mmol").orElseThrow();

    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ResolvedReaction reaction : procedure.reactions()) {
            reaction.block().limiting().ifPresent(claim -> meant(reaction.pots(), claim.value()).stream()
                    .filter(pot -> !pot.limiting().isEmpty() && !pot.limiting().contains(claim.value()))
                    .forEach(pot -> findings.accept(new CheckFinding.LimitingClaim(claim.value(), String.join(", ", pot.limiting()),
                            turns(pot, claim.value()), turns(pot, pot.limiting().get(0)), claim.at()))));
        }
    }

    /** Of several batches a claim is about the one that its block is in. */
    private static List<PotAccount> meant(List<PotAccount> pots, String claimed) {
        List<PotAccount> with = pots.stream().filter(p -> p.reactants().stream().anyMatch(r -> r.blocks().contains(claimed))).toList();
        return with.isEmpty() ? pots : with;
    }

    /** How much of the reaction a reactant is enough for. */
    private static String turns(PotAccount pot, String name) {
        return pot.reactants().stream().filter(r -> r.blocks().contains(name)).mapToDouble(Reactant::turns).boxed()
                .map(t -> Amount.of(t, MILLIMOLE)).collect(Collectors.joining(", "));
    }
}
