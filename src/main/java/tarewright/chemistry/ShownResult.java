package tarewright.chemistry;

/** What came of reading a formula that is only shown. */
public sealed interface ShownResult {
    /** A formula to show. */
    record Ok(ShownFormula formula) implements ShownResult {
    }

    /** What stood in the way. */
    record Bad(FormulaTrouble trouble) implements ShownResult {
    }
}
