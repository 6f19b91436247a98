package tarewright.quantity;

/** What comes of reading a strength: the strength, or what is wrong with it. */
public sealed interface StrengthResult {
    record Ok(Strength strength) implements StrengthResult {
    }

    record Bad(QuantityTrouble trouble) implements StrengthResult {
    }
}
