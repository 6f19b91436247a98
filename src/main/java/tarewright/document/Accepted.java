package tarewright.document;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.derivation.Figure;
import tarewright.derivation.Gradient;
import tarewright.procedure.declare.At;
import tarewright.quantity.Dimension;
import tarewright.quantity.Rounding;
import tarewright.quantity.Typed;
import tarewright.wording.Numbers;

/** The range in which a student's value is accepted, and why it is that wide. */
final class Accepted {
    /** Two standard uncertainties to each side (JCGM 100:2008, 6.3.3: about 95 %). */
    private static final double COVERAGE = 2;
    private static final int SOURCES = 2;

    private final Draft draft;

    Accepted(Draft draft) {
        this.draft = draft;
    }

    /** {@code 0.077 g to 0.081 g}; empty where nothing makes it wide enough to show. @param within the author's own limit */
    Optional<String> range(Figure figure, Optional<At<Typed>> within) {
        OptionalDouble half = within.map(w -> limit(figure, w.value()))
                .orElseGet(() -> figure.standardUncertainty() > 0 ? OptionalDouble.of(COVERAGE * figure.standardUncertainty())
                        : OptionalDouble.empty());
        if (half.isEmpty()) {
            return Optional.empty();
        }
        int decimals = Numbers.decimals(figure);
        double low = outward(figure.unit().fromSi(figure.value() - half.getAsDouble()), decimals, Rounding.Direction.DOWN);
        double high = outward(figure.unit().fromSi(figure.value() + half.getAsDouble()), decimals, Rounding.Direction.UP);
        String from = draft.numbers().printed(low, figure.unit(), decimals);
        String to = draft.numbers().printed(high, figure.unit(), decimals);
        return from.equals(to) ? Optional.empty() : Optional.of(draft.say("accept.range", "from", from, "to", to));
    }

    /** To the last digit shown, away from the value: nobody loses a mark by how the range is printed. */
    private static double outward(double value, int decimals, Rounding.Direction direction) {
        return new Rounding(direction, Math.pow(10, -decimals)).apply(value);
    }

    /** In the coherent SI unit: per cent of the value, or so much of its own kind. */
    private static OptionalDouble limit(Figure figure, Typed within) {
        if (within.dimension().equals(figure.dimension())) {
            return OptionalDouble.of(within.value() * within.unit().factor());
        }
        return within.dimension().equals(Dimension.NONE) ? OptionalDouble.of(Math.abs(figure.value()) * within.si())
                : OptionalDouble.empty();
    }

    /** What makes it that wide, the largest first; empty where the author set the limit or nothing is uncertain. */
    List<Text> why(Figure figure) {
        List<List<Text>> sources = figure.gradient().largest(SOURCES).stream().map(Gradient.Part::source)
                .map(s -> draft.typeset().symbol(s.symbol())).filter(s -> !s.isEmpty()).distinct().toList();
        return Typeset.joined(sources, ", ");
    }
}
