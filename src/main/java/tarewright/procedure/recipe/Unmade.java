package tarewright.procedure.recipe;

import java.util.Optional;
import tarewright.chemistry.solution.SolutionTrouble;
import tarewright.procedure.declare.QuantityBlock;

/**
 * A solution without a recipe.
 *
 * @param trouble why it cannot be made so; none where only something is not known: its strength, its formula, what it is made from
 */
public record Unmade(QuantityBlock block, Optional<SolutionTrouble> trouble) {
}
