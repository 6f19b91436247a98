package tarewright.procedure.resolve;

import tarewright.chemistry.Species;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.ReactionBlock;

/**
 * A block's part in a reaction.
 *
 * @param reactant on the left of the equation; else on the right
 * @param coefficient of the species in the balanced equation
 * @param ions how many of the species one formula unit of the block's substance brings: 2 for chloride from calcium chloride
 */
record Part(QuantityBlock block, ReactionBlock reaction, Species species, boolean reactant, int coefficient, int ions) {
    /** Which pot: two batches of one reaction are kept apart. */
    Pot.Key pot() {
        return new Pot.Key(reaction.name(), block.batch());
    }
}
