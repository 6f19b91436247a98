package tarewright.procedure.declare;

import java.util.Optional;
import tarewright.chemistry.Formula;
import tarewright.chemistry.Substance;

/**
 * A substance as the author named it.
 *
 * @param written the author's word for it
 * @param formula its formula
 * @param substance its row in the table of substances; none where only a formula was given that the table does not hold
 */
public record Matter(String written, Formula formula, Optional<Substance> substance) {
    /** A name to print: the table's, else what the author wrote. */
    public String name() {
        return substance.map(Substance::name).orElse(written);
    }
}
