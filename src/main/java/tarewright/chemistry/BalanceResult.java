package tarewright.chemistry;

import java.util.Optional;

/** What came of balancing or checking an equation, whichever it needed. */
public sealed interface BalanceResult {
    /** A balanced equation. */
    record Ok(BalancedEquation equation) implements BalanceResult {
    }

    /** What stood in the way. */
    record Bad(BalanceTrouble trouble) implements BalanceResult {
    }

    default Optional<BalancedEquation> value() {
        return this instanceof Ok ok ? Optional.of(ok.equation()) : Optional.empty();
    }
}
