package tarewright.procedure.prepare;

import java.util.List;
import tarewright.procedure.declare.StockBlock;
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
}
