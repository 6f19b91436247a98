package tarewright.procedure.recipe;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.solution.Act;
import tarewright.chemistry.solution.Care;
import tarewright.chemistry.solution.Plan;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.QuantityBlock;

/**
 * How a solution is made for the whole class.
 *
 * @param block the solution
 * @param strength amount concentration
 * @param needed what the class takes, with spare, and what other solutions are made of it
 * @param volume what is made: the flasks together
 * @param batches flasks of one size each; at least one
 * @param from what it is made from
 * @param care what goes into what, and whether it gets hot
 * @param rise in temperature of the first flask if it kept all its heat, where the table tells
 * @param rework how the shelf differs from what the procedure names
 * @param keeps how long it keeps, in the author's words
 */
public record Recipe(QuantityBlock block, Figure strength, Figure needed, Figure volume, List<Batch> batches, Ingredient from, Care care,
        Optional<Figure> rise, Optional<Rework> rework, Optional<String> keeps) {
    /** In kelvins: more than this is warned of. */
    public static final double WARN = 10;

    public Recipe {
        batches = List.copyOf(batches);
    }

    public String name() {
        return block.name();
    }

    /** Whether it warms by more than 10 K. */
    public boolean hot() {
        return rise.filter(r -> r.value() > WARN).isPresent();
    }

    /**
     * Flasks that are filled alike.
     *
     * @param count of flasks, 1 or more
     * @param plan of one flask
     * @param acts what to do, step by step of the plan
     */
    public record Batch(int count, Plan plan, List<List<Act>> acts) {
        public Batch {
            acts = List.copyOf(acts);
        }
    }
}
