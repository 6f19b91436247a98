package tarewright.chemistry;

import java.util.Map;

/**
 * What two formulas share that differ only in how they are written: atoms and charge.
 *
 * @param atoms how many of each element
 * @param charge in elementary charges, signed
 */
public record Composition(Map<String, Integer> atoms, int charge) {
    public Composition {
        atoms = Map.copyOf(atoms);
    }

    public static Composition of(Formula formula) {
        return new Composition(formula.atoms(), formula.charge());
    }
}
