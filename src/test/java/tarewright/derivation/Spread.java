package tarewright.derivation;

import java.util.Arrays;

/** Mean and standard deviation of draws. */
record Spread(double mean, double deviation) {
    static Spread of(double[] draws) {
        double mean = Arrays.stream(draws).average().orElseThrow();
        return new Spread(mean, Math.sqrt(Arrays.stream(draws).map(d -> (d - mean) * (d - mean)).sum() / (draws.length - 1)));
    }
}
