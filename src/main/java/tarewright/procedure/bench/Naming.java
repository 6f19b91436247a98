package tarewright.procedure.bench;

import java.util.Optional;
import tarewright.chemistry.Species;
import tarewright.chemistry.Substance;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.ResolvedQuantity;

/** What things on the bench are called. A page may have to keep a name from its reader; the hazards are the same whatever the name. */
public interface Naming {
    /** As the author names them. */
    Naming USUAL = new Naming() {
        @Override
        public String bottle(QuantityBlock block, Optional<Matter> matter) {
            String name = block.labelAs().or(() -> matter.map(Matter::name))
                    .or(() -> block.mixture().map(m -> m.value().name())).orElse(block.name());
            return block.strength().map(s -> name + " (" + s.at().text() + ")").orElse(name);
        }

        @Override
        public String product(Species species, Optional<ResolvedQuantity> block, Optional<Substance> substance) {
            return block.flatMap(q -> q.block().labelAs()).or(() -> substance.map(Substance::name))
                    .orElse(species.formula().plain());
        }
    };

    /** @param block whose bottle it is @param matter what it holds, if known */
    String bottle(QuantityBlock block, Optional<Matter> matter);

    /** @param block that it is in the procedure, if any @param substance its row in the tables, if any */
    String product(Species species, Optional<ResolvedQuantity> block, Optional<Substance> substance);
}
