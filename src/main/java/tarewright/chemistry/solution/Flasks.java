package tarewright.chemistry.solution;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The usual volumetric flasks and bulb pipettes. Nominal capacities of ISO 1042 (flasks) and ISO 648 (pipettes), as far as a
 * teaching laboratory has them; from memory.
 */
public final class Flasks {
    private static final double MILLILITRE = 1e-6;
    /** A volume worked out in binary arithmetic that should be 100 mL still goes into a flask of 100 mL. */
    private static final double SAME = 1e-9;
    private static final List<Double> SIZES = millilitres(5, 10, 25, 50, 100, 250, 500, 1000, 2000);
    private static final List<Double> PIPETTES = millilitres(1, 2, 5, 10, 20, 25, 50, 100);
    /** More litres than any laboratory makes; beyond them nothing is planned. */
    private static final int MOST = 10_000;

    private Flasks() {
    }

    private static List<Double> millilitres(int... sizes) {
        List<Double> list = new ArrayList<>();
        for (int size : sizes) {
            list.add(size * MILLILITRE);
        }
        return List.copyOf(list);
    }

    /**
     * Flasks of one size that are filled alike.
     *
     * @param capacity of each, in m³
     * @param count 1 or more
     */
    public record Filling(double capacity, int count) {
    }

    /** Capacities in m³, smallest first. */
    public static List<Double> sizes() {
        return SIZES;
    }

    /** The smallest flask that holds so much, in m³; empty beyond the largest. */
    public static OptionalDouble holding(double volume) {
        return SIZES.stream().mapToDouble(Double::doubleValue).filter(size -> size >= volume * (1 - SAME)).findFirst();
    }

    /**
     * The flasks that hold so much: the smallest that does, or, beyond the largest, as many of the largest as are filled and the
     * smallest for the rest.
     *
     * @param volume in m³
     * @return empty for nothing, for less than nothing and for more than 20 m³
     */
    public static List<Filling> filling(double volume) {
        double largest = SIZES.get(SIZES.size() - 1);
        if (!(volume > 0) || volume > MOST * largest) {
            return List.of();
        }
        int whole = (int) Math.floor(volume / largest * (1 + SAME));
        double rest = volume - whole * largest;
        List<Filling> fillings = new ArrayList<>();
        double last = rest > volume * SAME ? holding(rest).orElse(largest) : 0;
        int large = last == largest ? whole + 1 : whole;
        if (large > 0) {
            fillings.add(new Filling(largest, large));
        }
        if (last > 0 && last < largest) {
            fillings.add(new Filling(last, 1));
        }
        return List.copyOf(fillings);
    }

    /** Whether a bulb pipette delivers just this volume, in m³. */
    static boolean isBulb(double volume) {
        return PIPETTES.stream().anyMatch(size -> Math.abs(size - volume) <= size * SAME);
    }
}
