package tarewright.procedure.expression;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;

/**
 * What the names in a formula stand for. Whoever answers says itself why there is no answer; the formula then has no value, and
 * nothing more is said about it.
 */
public interface Lookup {
    /** The figure that a name stands for; empty after a finding, or where one has been made already. */
    Optional<Figure> figure(Expression.Named named, Consumer<Finding> findings);

    /** Every reading of a repeated reading, all of one dimension; empty after a finding. */
    List<Figure> repeated(Expression.Named named, Consumer<Finding> findings);
}
