package tarewright.procedure.bench;

import java.util.List;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;

/**
 * The solutions that a group makes up itself: in a vessel of its own ({@code made up to}) and from something of this procedure. Nobody hands them
 * out, so they stand in no list of what is handed out; what they are made from does.
 */
public final class OwnSolutions {
    private OwnSolutions() {
    }

    /** Whether a group makes up what this block is taken from. */
    public static boolean holds(Resolved procedure, QuantityBlock block) {
        QuantityBlock bottle = Bottles.source(procedure, block);
        return bottle.madeUpTo().isPresent()
                && bottle.madeFrom().filter(n -> procedure.procedure().quantity(n.value()).isPresent()).isPresent();
    }

    /** Those solutions, in the order of the procedure. */
    public static List<ResolvedQuantity> of(Resolved procedure) {
        return procedure.quantities().stream()
                .filter(q -> Bottles.source(procedure, q.block()) == q.block() && holds(procedure, q.block())).toList();
    }
}
