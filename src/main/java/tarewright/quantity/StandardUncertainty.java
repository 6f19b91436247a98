package tarewright.quantity;

/** Standard uncertainties from what is known of an instrument. Source: JCGM 100:2008, 4.3.7 to 4.3.9. */
public final class StandardUncertainty {
    private StandardUncertainty() {
    }

    /**
     * Of a value that may lie anywhere within ± {@code halfWidth} with equal probability: a/√3 (4.3.7). A tolerance or a
     * resolution, of which nothing more is known.
     */
    public static double rectangular(double halfWidth) {
        return halfWidth / Math.sqrt(3);
    }

    /** Of a value within ± {@code halfWidth} that is likelier near the middle: a/√6 (4.3.9). A meniscus set to a line. */
    public static double triangular(double halfWidth) {
        return halfWidth / Math.sqrt(6);
    }

    /** Of independent parts added or subtracted: the root of the sum of their squares (5.1.2). */
    public static double combined(double... parts) {
        double sum = 0;
        for (double part : parts) {
            sum = Math.hypot(sum, part);
        }
        return sum;
    }
}
