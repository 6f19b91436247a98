package tarewright.quantity;

/** What comes of reading a unit: the unit, or what is wrong with it. */
public sealed interface UnitResult {
    record Ok(Unit unit) implements UnitResult {
    }

    record Bad(UnitTrouble trouble) implements UnitResult {
    }
}
