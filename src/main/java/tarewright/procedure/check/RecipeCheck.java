package tarewright.procedure.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import tarewright.chemistry.solution.SolutionTrouble;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.declare.TroubleFinding;
import tarewright.procedure.recipe.Recipe;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.recipe.Unmade;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.text.Span;

/** Each solution can be made: so much dissolves, and what it is made from is strong enough. */
final class RecipeCheck implements Check {
    /** Two strengths that differ by less are the same, typed in two ways. */
    private static final double SAME = 1e-9;

    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ResolvedQuantity solution : procedure.quantities()) {
            Recipes.beyondSolubility(procedure, solution).ifPresent(t -> findings.accept(finding(t, strength(solution.block()))));
            upward(procedure, solution).ifPresent(findings);
        }
        Recipes recipes = Recipes.of(procedure, List.of());
        recipes.recipes().stream().filter(Recipe::hot).forEach(r -> findings.accept(new CheckFinding.HotToMake(r.block().name(), Amount.of(r.rise().orElseThrow()),
                strength(r.block()))));
        for (Unmade unmade : recipes.unmade()) {
            boolean ofBlock = unmade.block().madeFrom().flatMap(n -> procedure.quantity(n.value())).isPresent();
            unmade.trouble().filter(t -> t instanceof SolutionTrouble.StockTooWeak && !ofBlock)
                    .ifPresent(t -> findings.accept(finding(t, unmade.block().madeFrom().map(At::at).orElseGet(() -> strength(unmade.block())))));
        }
    }

    private static TroubleFinding finding(SolutionTrouble trouble, Span at) {
        return new TroubleFinding(trouble.id(), at, trouble);
    }

    private static Span strength(QuantityBlock block) {
        return block.strength().map(At::at).orElseGet(() -> block.block().nameSpan());
    }

    /** A bottle that is stronger than what it is diluted from; where it says how much of it there is, working that out has found it. */
    private static Optional<Finding> upward(Resolved procedure, ResolvedQuantity solution) {
        QuantityBlock block = solution.block();
        if (!block.is(Kind.SOLUTION) || !(block.rule() instanceof AmountRule.Unfixed) || block.madeUpTo().isPresent()) {
            return Optional.empty();
        }
        Optional<Figure> from = block.madeFrom().flatMap(n -> procedure.quantity(n.value())).filter(q -> q.block() != block && q.block().is(Kind.SOLUTION))
                .flatMap(q -> q.figure(Property.STRENGTH));
        return solution.figure(Property.STRENGTH).flatMap(c -> from.filter(f -> c.value() > f.value() * (1 + SAME))
                .map(f -> finding(new SolutionTrouble.DilutionImpossible(c.value(), f.value()), strength(block))));
    }
}
