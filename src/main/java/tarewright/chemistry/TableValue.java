package tarewright.chemistry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.OptionalDouble;

/** What a table or a published equation has to say when asked: a figure with where it comes from, or why there is none. */
public sealed interface TableValue {
    /** The figure, if there is one. */
    OptionalDouble value();

    /**
     * A figure, in the unit that the method asked for names.
     *
     * @param figure the value
     * @param provenance of the rows it was made from
     */
    record Known(double figure, Provenance provenance) implements TableValue {
        @Override
        public OptionalDouble value() {
            return OptionalDouble.of(figure);
        }
    }

    /**
     * A trouble: asked outside the stretch in which the table or equation holds. Nothing is extrapolated.
     *
     * @param limit which end was passed
     * @param asked what was asked for, in {@code unit}
     * @param from the least that may be asked
     * @param to the most
     * @param unit of the three: {@code °C}, {@code %}, {@code mol/L}, {@code kPa}
     */
    record OutOfRange(Limit limit, double asked, double from, double to, String unit) implements TableValue {
        /** The lasting name under which its words stand. */
        public String id() {
            return limit.id();
        }

        /** For the words: the three figures to five digits, and their unit. */
        public Map<String, Object> fields() {
            return Map.of("asked", plain(asked), "from", plain(from), "to", plain(to), "unit", unit);
        }

        private static String plain(double figure) {
            if (Double.isNaN(figure) || Double.isInfinite(figure)) {
                return String.valueOf(figure);
            }
            BigDecimal rounded = new BigDecimal(figure).round(new MathContext(5)).stripTrailingZeros();
            boolean readable = rounded.signum() == 0 || Math.abs(rounded.precision() - rounded.scale()) <= 9;
            return readable ? rounded.toPlainString() : rounded.toString();
        }

        @Override
        public OptionalDouble value() {
            return OptionalDouble.empty();
        }
    }

    /** An end beyond which nothing is known. */
    enum Limit {
        /** Before the first or behind the last row of a table, or outside an equation's stated range. */
        TABLE("out-of-table-range"),
        /** Hotter than the critical point of water: there is no vapour pressure. */
        CRITICAL_POINT("above-critical-point-of-water"),
        /** Colder than the triple point of water: it would be ice. */
        TRIPLE_POINT("below-triple-point-of-water"),
        /** Stronger than a saturated solution, or than the pure substance. */
        SATURATION("stronger-than-table");

        private final String id;

        Limit(String id) {
            this.id = id;
        }

        /** The lasting name of the trouble. */
        public String id() {
            return id;
        }
    }
}
