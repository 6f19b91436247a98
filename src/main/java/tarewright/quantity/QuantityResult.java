package tarewright.quantity;

/** What comes of reading a quantity: the quantity as typed, or what is wrong with it. */
public sealed interface QuantityResult {
    record Ok(Typed typed) implements QuantityResult {
    }

    record Bad(QuantityTrouble trouble) implements QuantityResult {
    }
}
