package tarewright.procedure.declare;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.BalancedEquation;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Typed;

/**
 * A {@code reaction}.
 *
 * @param equation balanced; none if it could not be, which was a finding
 * @param goesTo the yield as a fraction
 * @param catalysts names over the arrow
 * @param limiting the block that the author says limits
 * @param limitingVaries the author says that it varies
 * @param shownOnly printed, not computed with
 */
public record ReactionBlock(TypedBlock block, Optional<BalancedEquation> equation, Optional<At<Typed>> goesTo, List<At<String>> catalysts,
        Optional<At<String>> limiting, boolean limitingVaries, boolean shownOnly) {
    public ReactionBlock {
        catalysts = List.copyOf(catalysts);
    }

    public String name() {
        return block.name();
    }
}
