package tarewright.procedure.bench;

import java.util.List;
import java.util.Optional;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.safety.AirEstimate;
import tarewright.safety.Verdict;

/**
 * Something that the students take from a bottle.
 *
 * @param source the block whose bottle it is
 * @param uses what is measured out of it
 * @param verdict what it is classified as, at its real strength
 * @param air for a gas: what it would do to the air of the room
 */
public record Taken(ResolvedQuantity source, List<ResolvedQuantity> uses, Verdict verdict, Optional<AirEstimate> air) {
    public Taken {
        uses = List.copyOf(uses);
    }

    boolean isUsedIn(List<String> blocks) {
        return uses.stream().anyMatch(u -> blocks.contains(u.name()));
    }
}
