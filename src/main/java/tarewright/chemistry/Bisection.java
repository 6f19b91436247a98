package tarewright.chemistry;

import java.util.function.DoubleUnaryOperator;

/** Where a rising function takes a value. */
final class Bisection {
    private Bisection() {
    }

    /** The place between two ends where a rising function takes a value, to a tolerance; the nearer end if it does not. */
    static double rising(DoubleUnaryOperator function, double value, double from, double to, double tolerance) {
        double low = from;
        double high = to;
        while (high - low > tolerance) {
            double middle = low + (high - low) / 2;
            if (middle <= low || middle >= high) {
                break;
            }
            if (function.applyAsDouble(middle) < value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low + (high - low) / 2;
    }
}
