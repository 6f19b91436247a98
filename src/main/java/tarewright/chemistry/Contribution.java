package tarewright.chemistry;

/**
 * What one element adds to a molar mass.
 *
 * @param element the element with its atomic weight
 * @param count how many of its atoms the formula has, at least one
 */
public record Contribution(Element element, int count) {
    /** In g/mol. */
    public double molarMass() {
        return count * element.atomicWeight();
    }
}
