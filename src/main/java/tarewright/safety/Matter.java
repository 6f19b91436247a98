package tarewright.safety;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Something on the bench: a solid, a solution, a stock, a product, what is left in a cup.
 *
 * @param name what the procedure calls it; only for pointing at it
 * @param parts the substances in it, at least one; what they leave of a {@link Form#SOLUTION} is water
 * @param litres its volume, where it is known
 * @param grams its mass, where it is known
 * @param pH where it is known; it counts only where nothing else is known of a part's effect on skin and eyes
 */
public record Matter(String name, Form form, List<Part> parts, OptionalDouble litres, OptionalDouble grams, OptionalDouble pH) {
    public Matter {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("no part in " + name);
        }
    }

    /** One undiluted substance. */
    public static Matter pure(String name, Form form, String substance) {
        return of(name, form, List.of(Part.of(substance, Content.pure())));
    }

    /** One substance in water. */
    public static Matter solution(String name, String solute, Content content) {
        return of(name, Form.SOLUTION, List.of(Part.of(solute, content)));
    }

    public static Matter of(String name, Form form, List<Part> parts) {
        return new Matter(name, form, parts, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    public Matter litres(double volume) {
        return new Matter(name, form, parts, OptionalDouble.of(volume), grams, pH);
    }

    public Matter grams(double mass) {
        return new Matter(name, form, parts, litres, OptionalDouble.of(mass), pH);
    }

    public Matter atPH(double value) {
        return new Matter(name, form, parts, litres, grams, OptionalDouble.of(value));
    }
}
