package tarewright.chemistry;

/** How well a datum is proven. */
public enum Confidence {
    /** The figure was seen in a copy of the source. */
    READ,
    /** It comes from an open data file or a published equation as a library evaluates it. */
    LIBRARY,
    /** Neither: recalled, unproven. What is printed from it is to be marked. */
    MEMORY;

    /** The less proven of two. */
    public Confidence weaker(Confidence other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
