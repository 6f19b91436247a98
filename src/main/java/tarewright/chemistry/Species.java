package tarewright.chemistry;

import java.util.Optional;

/** A substance or an ion as it takes part in a reaction, with its state where that is written. */
public record Species(Formula formula, Optional<State> state) {
    /** {@code MgCl2(aq)}, as an author types it. */
    public String plain() {
        return formula.plain() + brackets();
    }

    /** {@code MgCl₂(aq)}. */
    public String unicode() {
        return formula.unicode() + brackets();
    }

    private String brackets() {
        return state.map(each -> "(" + each.letters() + ")").orElse("");
    }

    /** Whether this can be the same as another: the formulas are, and the states where both are written. */
    public boolean sameAs(Species other) {
        return formula.equals(other.formula) && (state.isEmpty() || other.state.isEmpty() || state.equals(other.state));
    }

    @Override
    public String toString() {
        return plain();
    }
}
