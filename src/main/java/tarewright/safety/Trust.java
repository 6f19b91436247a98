package tarewright.safety;

/** How far a row of the tables is proven. */
public enum Trust {
    /** Seen in a stored public copy of its source. */
    READ,
    /** From an open data file. */
    LIBRARY,
    /** Recalled, not seen: mark what is printed from it. */
    MEMORY,
    /** From the teacher's own table. */
    TEACHER
}
