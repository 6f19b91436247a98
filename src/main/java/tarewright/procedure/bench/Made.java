package tarewright.procedure.bench;

import java.util.Optional;
import tarewright.chemistry.Species;
import tarewright.chemistry.Substance;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.safety.AirEstimate;
import tarewright.safety.Verdict;

/**
 * What a reaction makes.
 *
 * @param reaction the one that makes most of it, or makes it strongest
 * @param block the quantity that it is, if it is one
 * @param substance its row in the tables, if it has one
 * @param verdict what it is classified as, at the strength that it comes to in its pot
 * @param air for a gas whose amount is known: what it would do to the air of the room
 */
public record Made(ResolvedReaction reaction, Species species, Optional<ResolvedQuantity> block, Optional<Substance> substance,
        Verdict verdict, Optional<AirEstimate> air) {
}
