package tarewright.chemistry;

import java.util.List;
import java.util.Optional;

/** What came of reading an equation. */
public sealed interface EquationResult {
    /** An equation, not yet balanced or checked. */
    record Ok(Equation equation) implements EquationResult {
    }

    /** What stood in the way, in the order of the text; at least one. */
    record Bad(List<EquationTrouble> troubles) implements EquationResult {
        public Bad {
            troubles = List.copyOf(troubles);
        }
    }

    default Optional<Equation> value() {
        return this instanceof Ok ok ? Optional.of(ok.equation()) : Optional.empty();
    }
}
