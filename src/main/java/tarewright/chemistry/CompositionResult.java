package tarewright.chemistry;

import java.util.Optional;

/** What came of looking for a formula by composition. */
public sealed interface CompositionResult {
    /**
     * A formula.
     *
     * @param formula its elements in the order given
     * @param deviation the largest relative distance of a measured ratio from its whole number: 0.01 is 1 %
     */
    record Ok(Formula formula, double deviation) implements CompositionResult {
    }

    /** What stood in the way. */
    record Bad(CompositionTrouble trouble) implements CompositionResult {
    }

    default Optional<Formula> value() {
        return this instanceof Ok ok ? Optional.of(ok.formula()) : Optional.empty();
    }
}
