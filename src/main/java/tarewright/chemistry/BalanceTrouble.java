package tarewright.chemistry;

import java.util.Map;

/** Why an equation that can be read cannot be computed with. It concerns the whole equation, so it has no offsets. */
public sealed interface BalanceTrouble permits Balance.Impossible, Balance.Ambiguous, Balance.Check.Unbalanced,
        Balance.Check.ChargeImbalance, BalanceTrouble.CoefficientTooLarge {
    /** A lasting name such as {@code unbalanced-equation}. */
    String id();

    /** What the words about it may name, by the name of the placeholder; a name without a value may be missing. */
    Map<String, Object> fields();

    /** A coefficient beyond any real reaction. */
    record CoefficientTooLarge(String coefficient, int limit) implements BalanceTrouble {
        @Override
        public String id() {
            return "coefficient-too-large";
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("coefficient", coefficient, "limit", limit);
        }
    }
}
