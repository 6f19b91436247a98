package tarewright.chemistry;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tarewright.exact.Rational;

/**
 * A reaction equation as written, not yet balanced or checked.
 *
 * @param left the terms before the sign, at least one
 * @param right the terms behind it, at least one
 * @param sign what stands between
 */
public record Equation(List<Term> left, List<Term> right, Sign sign) {
    /** The longest text that is read, in UTF-16 units. */
    public static final int LONGEST = 10_000;
    /** The most species that an equation may have. */
    public static final int MOST_SPECIES = 100;

    public Equation {
        left = List.copyOf(left);
        right = List.copyOf(right);
        if (left.isEmpty() || right.isEmpty()) {
            throw new IllegalArgumentException("an equation with an empty side");
        }
    }

    /** The sign between the two sides, as IUPAC has them. */
    public enum Sign {
        /** The reaction goes from left to right. */
        YIELDS("→", "->"),
        /** The stoichiometric relation alone. */
        STOICHIOMETRIC("=", "="),
        /** An equilibrium. */
        EQUILIBRIUM("⇌", "<=>");

        private final String unicode;
        private final String typed;

        Sign(String unicode, String typed) {
            this.unicode = unicode;
            this.typed = typed;
        }

        public String unicode() {
            return unicode;
        }

        /** In ASCII. */
        public String typed() {
            return typed;
        }
    }

    /**
     * A species with its coefficient.
     *
     * @param written the coefficient, above zero, if one is written
     * @param species the formula with its state
     * @param from where the term starts in the text that was read
     * @param to where it ends
     */
    public record Term(Optional<Rational> written, Species species, int from, int to) {
        /** The written coefficient, or 1. */
        public Rational coefficient() {
            return written.orElse(Rational.ONE);
        }
    }

    /**
     * Reads an equation: {@code Mg(s) + 2 HCl(aq) -> MgCl2(aq) + H2(g)}. A plus between two terms has a space before it or
     * follows a state. A species stands on one side only.
     */
    public static EquationResult parse(String text) {
        return EquationReader.read(text, false);
    }

    /** Reads a complete ionic equation: the same, but the ions that look on stand on both sides. */
    public static EquationResult parseIonic(String text) {
        return EquationReader.read(text, true);
    }

    /** All terms, left then right. */
    public List<Term> terms() {
        return Stream.concat(left.stream(), right.stream()).toList();
    }

    /** Whether any coefficient is written, so that all are meant. */
    public boolean hasCoefficients() {
        return terms().stream().anyMatch(term -> term.written().isPresent());
    }
}
