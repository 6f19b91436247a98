package tarewright.procedure.prepare;

import java.util.List;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.resolve.Resolved;
import tarewright.safety.Rulebook;

/**
 * One procedure of one section of a term.
 *
 * @param section its name; may be empty
 * @param procedure resolved for it, without errors
 * @param shelf the bottles of the term
 * @param rules of the procedure's country
 */
public record Need(String section, Resolved procedure, List<StockBlock> shelf, Rulebook rules) {
    public Need {
        shelf = List.copyOf(shelf);
    }

    /**
     * What is worked out of it.
     *
     * @param part what it takes off the shelf
     */
    public record Worked(Order.Part part, Recipes recipes, BenchSafety safety) {
    }

    /** Worked out anew each time. */
    public Worked worked() {
        Recipes recipes = Recipes.of(procedure, shelf);
        BenchSafety safety = BenchSafety.of(procedure, shelf, rules);
        Supplies supplies = Supplies.of(procedure, safety.bench(), recipes);
        return new Worked(new Order.Part(section, supplies, Draw.of(supplies, recipes, shelf)), recipes, safety);
    }
}
