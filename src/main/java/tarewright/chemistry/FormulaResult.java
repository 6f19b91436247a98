package tarewright.chemistry;

import java.util.Optional;

/** What came of reading a formula. */
public sealed interface FormulaResult {
    /** A formula. */
    record Ok(Formula formula) implements FormulaResult {
    }

    /** What stood in the way; offsets count from the start of the text that was read. */
    record Bad(FormulaTrouble trouble) implements FormulaResult {
    }

    default Optional<Formula> value() {
        return this instanceof Ok ok ? Optional.of(ok.formula()) : Optional.empty();
    }
}
