package tarewright.chemistry;

/** Why an equation that can be read cannot be computed with. It concerns the whole equation, so it has no offsets. */
public sealed interface BalanceTrouble permits Balance.Impossible, Balance.Ambiguous, Balance.Check.Unbalanced,
        Balance.Check.ChargeImbalance, BalanceTrouble.CoefficientTooLarge {
    /** A lasting name such as {@code unbalanced-equation}. */
    String id();

    /** A coefficient beyond any real reaction. */
    record CoefficientTooLarge(String coefficient, int limit) implements BalanceTrouble {
        @Override
        public String id() {
            return "coefficient-too-large";
        }
    }
}
