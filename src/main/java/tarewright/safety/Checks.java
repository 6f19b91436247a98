package tarewright.safety;

/** What a number must be; a breach is a bug of the caller. */
final class Checks {
    private Checks() {
    }

    static void share(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share " + share);
        }
    }

    static void notNegative(double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("value " + value);
        }
    }

    static void positive(double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("value " + value);
        }
    }

    static void uncertainty(double uncertainty) {
        if (!(uncertainty >= 0) || Double.isInfinite(uncertainty)) {
            throw new IllegalArgumentException("uncertainty " + uncertainty);
        }
    }
}
