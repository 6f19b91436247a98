package tarewright.procedure.recipe;

import java.util.Optional;
import tarewright.chemistry.solution.SolutionTrouble;
import tarewright.procedure.declare.QuantityBlock;

/**
 * A solution without a recipe.
 *
 * @param why no recipe is reckoned
 * @param trouble why it cannot be made so; with {@link Why#IMPOSSIBLE} only
 */
public record Unmade(QuantityBlock block, Why why, Optional<SolutionTrouble> trouble) {
    /** Why no recipe is reckoned. */
    public enum Why {
        /** It cannot be made from what is there. */
        IMPOSSIBLE,
        /** It holds a second solute. */
        TWO_SOLUTES,
        /** Iodine is dissolved in iodide, and how much of that is not said. */
        IODINE,
        /** Each indicator is dissolved in a way of its own, in alcohol, in alkali, in water. */
        INDICATOR,
        /** No amount can be reckoned without a formula. */
        NO_FORMULA,
        /** Its strength is not known. */
        NO_STRENGTH,
        /** How much the class takes of it is not known, or is more than any laboratory makes. */
        NO_AMOUNT,
        /** It is as strong as it is sold. */
        AS_SOLD,
        /** What it is made from is not known. */
        NO_SOURCE
    }
}
