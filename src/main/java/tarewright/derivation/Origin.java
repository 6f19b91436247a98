package tarewright.derivation;

/** Where a figure comes from that was not worked out from others. */
public sealed interface Origin {
    /** Typed by the author in the procedure. */
    record Author() implements Origin {
    }

    /** The room, the groups or a value of the day: what the print is for. @param what such as {@code temperature of room} */
    record Circumstance(String what) implements Origin {
    }

    /** A published table. @param source its reference. @param proven false where the value is from memory */
    record Table(String source, boolean proven) implements Origin {
    }

    /** A physical constant. @param source its reference */
    record Constant(String source) implements Origin {
    }

    /** A whole number that is exact: a coefficient, a count of groups. */
    record Counted() implements Origin {
    }

    /** What the author says a reading will be, where nothing computes it. */
    record Expected() implements Origin {
    }
}
