package tarewright.chemistry;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An equation whose atoms and charges balance. */
public record BalancedEquation(List<Term> reactants, List<Term> products, Equation.Sign sign) {
    /** The largest coefficient; no reaction that is carried out comes near. */
    public static final int LARGEST_COEFFICIENT = 1_000_000;

    public BalancedEquation {
        reactants = List.copyOf(reactants);
        products = List.copyOf(products);
    }

    /**
     * A species with its coefficient.
     *
     * @param coefficient from 1 to {@link #LARGEST_COEFFICIENT}
     * @param species the formula with its state
     */
    public record Term(int coefficient, Species species) {
        public Term {
            if (coefficient < 1 || coefficient > LARGEST_COEFFICIENT) {
                throw new IllegalArgumentException("coefficient " + coefficient);
            }
        }

        private String written(Function<Species, String> text) {
            return (coefficient == 1 ? "" : coefficient + " ") + text.apply(species);
        }
    }

    /** All terms, reactants then products. */
    public List<Term> terms() {
        return Stream.concat(reactants.stream(), products.stream()).toList();
    }

    /** The coefficient of a formula, whichever its side; of the first where it stands there in several states. */
    public Optional<Integer> coefficient(Formula formula) {
        return term(formula).map(Term::coefficient);
    }

    /** The term of a formula; the first where it stands there in several states. */
    public Optional<Term> term(Formula formula) {
        return terms().stream().filter(term -> term.species().formula().equals(formula)).findFirst();
    }

    public boolean isReactant(Formula formula) {
        return reactants.stream().anyMatch(term -> term.species().formula().equals(formula));
    }

    public boolean isProduct(Formula formula) {
        return products.stream().anyMatch(term -> term.species().formula().equals(formula));
    }

    /** As an author types it: {@code Mg(s) + 2 HCl(aq) -> MgCl2(aq) + H2(g)}. */
    public String plain() {
        return side(reactants, Species::plain) + " " + sign.typed() + " " + side(products, Species::plain);
    }

    /** {@code Mg(s) + 2 HCl(aq) → MgCl₂(aq) + H₂(g)}. */
    public String unicode() {
        return side(reactants, Species::unicode) + " " + sign.unicode() + " " + side(products, Species::unicode);
    }

    private static String side(List<Term> terms, Function<Species, String> text) {
        return terms.stream().map(term -> term.written(text)).collect(Collectors.joining(" + "));
    }

    @Override
    public String toString() {
        return plain();
    }
}
