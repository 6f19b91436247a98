package tarewright.chemistry;

import tarewright.exact.Rational;

/**
 * What one element adds to a molar mass.
 *
 * @param element the element with its atomic weight
 * @param count how many of its atoms the formula has, above zero; whole but for a fraction of water of crystallisation
 */
public record Contribution(Element element, Rational count) {
    /** In g/mol. */
    public double molarMass() {
        return count.doubleValue() * element.atomicWeight();
    }
}
