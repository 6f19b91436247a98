package tarewright.procedure.resolve;

import java.util.List;
import java.util.Optional;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.ReactionBlock;

/** One pot in which a reaction goes: who takes part, and what is left over from elsewhere that takes part too. */
record Pot(Key key, ReactionBlock reaction, List<Part> parts, List<Part> leftOvers) {
    Pot {
        parts = List.copyOf(parts);
        leftOvers = List.copyOf(leftOvers);
    }

    record Key(String reaction, String batch) {
    }

    List<Part> reactants() {
        return parts.stream().filter(Part::reactant).toList();
    }

    Optional<Part> of(QuantityBlock block) {
        return parts.stream().filter(p -> p.block() == block).findFirst();
    }
}
