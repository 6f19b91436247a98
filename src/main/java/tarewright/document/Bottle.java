package tarewright.document;

import java.util.List;
import java.util.Optional;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.safety.AirEstimate;
import tarewright.safety.Verdict;

/**
 * Something on the bench with its hazards.
 *
 * @param name as on its label, without the strength
 * @param strength as on its label; empty where it has none or must not be seen
 * @param formula empty where the name says enough or it must not be seen
 * @param verdict what it is classified as, at its real strength
 * @param masked whether its reader must not learn what it is or how strong: the tables' own names for it stay out
 * @param uses the quantities that are taken from it; for a product the quantity that it is, if it is one
 * @param air for a gas: what it would do to the air of the room
 */
record Bottle(List<Text> name, List<Text> strength, List<Text> formula, Verdict verdict, boolean masked,
        List<ResolvedQuantity> uses, Optional<AirEstimate> air) {
    Bottle {
        name = List.copyOf(name);
        strength = List.copyOf(strength);
        formula = List.copyOf(formula);
        uses = List.copyOf(uses);
    }

    /** An indicator is bought in a solvent that no procedure tells: its class is that of the dry dye in water, which says too little. */
    boolean solventUnknown() {
        return uses.stream().anyMatch(u -> u.block().role() == QuantityBlock.Role.INDICATOR && u.block().is(QuantityBlock.Kind.SOLUTION));
    }
}
