package tarewright.safety;

/** Comparing a percentage with a limit. */
final class Limits {
    /** So that 10 % typed as 0.1 is not below 10 %: the rounding of binary fractions goes to the stricter side. */
    private static final double SLACK = 1e-9;

    private Limits() {
    }

    static boolean reached(double percent, double limit) {
        return percent >= limit * (1 - SLACK);
    }
}
