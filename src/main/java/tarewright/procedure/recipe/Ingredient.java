package tarewright.procedure.recipe;

import java.util.Optional;
import tarewright.chemistry.Formula;
import tarewright.chemistry.solution.Source;
import tarewright.procedure.declare.StockBlock;

/**
 * What a solution is made from.
 *
 * @param kind where it is known from
 * @param source how much of it brings how much
 * @param formula of what is in it
 * @param stock the bottle on the shelf, where it is one
 */
public record Ingredient(Kind kind, Source source, Formula formula, Optional<StockBlock> stock) {
    /** Where it is known from. */
    public enum Kind {
        /** A stock block. */
        SHELF,
        /** Another block of the procedure. */
        BLOCK,
        /** As it is usually sold: the label of the bottle is to be checked. */
        USUAL,
        /** The pure solid, no stock being named. */
        SOLID
    }

    public String name() {
        return source.name();
    }
}
