package tarewright.chemistry;

import java.util.Map;

/**
 * What two formulas share that differ only in how they are written: atoms and charge.
 *
 * @param atoms how many of each element, in {@code units} formula units
 * @param units 1, but more where a formula holds a fraction of an adduct
 * @param charge in elementary charges, signed
 */
public record Composition(Map<String, Integer> atoms, int units, int charge) {
    public Composition {
        atoms = Map.copyOf(atoms);
    }

    public static Composition of(Formula formula) {
        return new Composition(formula.atoms(), formula.units(), formula.charge());
    }
}
