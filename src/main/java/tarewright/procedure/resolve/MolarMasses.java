package tarewright.procedure.resolve;

import java.util.Optional;
import tarewright.chemistry.Formula;
import tarewright.derivation.Figure;
import tarewright.tables.ReferenceTables;

/** Molar masses of what stands in no block: of a bottle on the shelf. */
public final class MolarMasses {
    private final Constituents constituents;

    public MolarMasses(ReferenceTables tables) {
        this.constituents = new Constituents(tables);
    }

    /** Empty where an element has no atomic weight. */
    public Optional<Figure> of(Formula formula) {
        return constituents.unweighed(formula).isEmpty() ? Optional.of(constituents.molarMass(formula)) : Optional.empty();
    }
}
