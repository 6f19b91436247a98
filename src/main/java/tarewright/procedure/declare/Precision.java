package tarewright.procedure.declare;

/** How the author wants a value shown. */
public sealed interface Precision {
    /** As its uncertainty or the typed digits justify. */
    record Justified() implements Precision {
    }

    /** So many decimals in its unit. */
    record Decimals(int decimals) implements Precision {
    }

    /** So many significant figures. */
    record Figures(int figures) implements Precision {
    }
}
