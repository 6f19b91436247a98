package tarewright.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import tarewright.quantity.Rounding;

/**
 * Readings as one student of a class on paper might have got them, each to a division of its instrument, such that whatever is worked from them is accepted.
 *
 * <p>Errors are drawn as in {@link PaperClass}. A draw with which a reading or a result would not be accepted is drawn again.
 */
public final class Supplied {
    /** So many draws with errors of one size before another is tried. */
    private static final int PATIENCE = 100;
    /**
     * Sizes of the errors, as multiples of the instruments': larger ones where a balance read to its digit would show every student the same, smaller ones where little is
     * accepted.
     */
    private static final double[] SIZES = {1, 1.5, 2, 3, 0.8, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1, 0.05};
    private static final double SAME = 1e-9;

    private final List<Figure> readings;
    private final List<Limit> limits;
    private final List<Spread> spreads;
    private final PaperClass pot;

    /** What must lie within a range, in coherent SI units. */
    public record Limit(Figure figure, double from, double to) {
        /** Two standard uncertainties to each side (JCGM 100:2008, 6.3.3: about 95 %), outward to the last digit that is read. */
        public static Limit of(Figure reading) {
            double half = Accepted.COVERAGE * reading.standardUncertainty();
            double from = reading.value() - half;
            double to = reading.value() + half;
            return rounding(reading).or(() -> digit(reading)).map(r -> new Limit(reading,
                    new Rounding(Rounding.Direction.DOWN, r.divisionSi(), r.zeroSi()).apply(from),
                    new Rounding(Rounding.Direction.UP, r.divisionSi(), r.zeroSi()).apply(to))).orElse(new Limit(reading, from, to));
        }

        /** The same range outward to the last digit that the figure is shown with, as a key prints it. */
        public Limit printed() {
            return digit(figure).map(r -> new Limit(figure, new Rounding(Rounding.Direction.DOWN, r.divisionSi(), r.zeroSi()).apply(from),
                    new Rounding(Rounding.Direction.UP, r.divisionSi(), r.zeroSi()).apply(to))).orElse(this);
        }

        private static Optional<Rounding> digit(Figure figure) {
            return figure.decimals().isEmpty() ? Optional.empty()
                    : Optional.of(Rounding.of(Rounding.Direction.NEAREST, Math.pow(10, -figure.decimals().getAsInt()), figure.unit()));
        }

        /** A last binary digit decides nothing. */
        boolean holds(double value) {
            double hair = SAME * Math.abs(figure.value());
            return value >= from - hair && value <= to + hair;
        }
    }

    /** How far the largest and the smallest of some readings may be apart, in the coherent SI unit. */
    public record Spread(List<Figure> readings, double most) {
        public Spread {
            readings = List.copyOf(readings);
        }
    }

    /**
     * @param readings single ones, each read off once
     * @param limits of readings and of what is worked from them
     */
    public Supplied(List<Figure> readings, List<Limit> limits, List<Spread> spreads) {
        this.readings = List.copyOf(readings);
        this.limits = List.copyOf(limits);
        this.spreads = List.copyOf(spreads);
        this.pot = new PaperClass(this.readings);
    }

    /** A value for each reading, in their order, in coherent SI units, at least one not the expected one; empty where there are no such values. */
    public Optional<List<Double>> draw(SplittableRandom random) {
        for (int i = 0; i < SIZES.length * PATIENCE; i++) {
            double size = SIZES[i / PATIENCE];
            double[] drawn = pot.draw(random);
            List<Double> values = new ArrayList<>();
            Again paper = new Again();
            boolean differs = false;
            for (int k = 0; k < drawn.length; k++) {
                Figure reading = readings.get(k);
                double off = reading.value() + size * (drawn[k] - reading.value());
                double value = rounding(reading).map(r -> r.apply(off)).orElse(reading.value());
                differs |= Math.abs(value - reading.value()) > SAME * Math.abs(reading.value());
                paper.with(reading, value);
                values.add(value);
            }
            if (differs && isAccepted(paper)) {
                return Optional.of(values);
            }
        }
        return Optional.empty();
    }

    private boolean isAccepted(Again paper) {
        return limits.stream().allMatch(l -> l.holds(paper.value(l.figure()))) && spreads.stream().allMatch(s -> {
            var range = s.readings().stream().mapToDouble(paper::value).summaryStatistics();
            return range.getMax() - range.getMin() <= s.most() * (1 + SAME);
        });
    }

    /** To which division a figure is read; none where no instrument is known. */
    public static Optional<Rounding> rounding(Figure figure) {
        if (figure.step() instanceof Step.Read read) {
            return Optional.of(read.rounding());
        }
        return figure.step() instanceof Step.Same same ? rounding(same.other()) : Optional.empty();
    }
}
