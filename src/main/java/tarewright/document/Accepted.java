package tarewright.document;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Gradient;
import tarewright.wording.Outward;

/** The range in which a student's value is accepted, and why it is that wide. */
final class Accepted {
    /** Two standard uncertainties to each side (JCGM 100:2008, 6.3.3: about 95 %). */
    private static final double COVERAGE = 2;
    private static final int SOURCES = 2;

    private final Draft draft;

    Accepted(Draft draft) {
        this.draft = draft;
    }

    /** {@code 0.077 g to 0.081 g}; empty where nothing makes it wide enough to show. */
    Optional<String> range(Figure figure) {
        double half = COVERAGE * figure.standardUncertainty();
        return half > 0 ? printed(figure, figure.value() - half, figure.value() + half) : Optional.empty();
    }

    /** The range of a worked answer; empty where nothing makes it wide enough to show. */
    Optional<String> range(Figure figure, tarewright.derivation.Accepted accepted) {
        if (accepted.to() <= accepted.from()) {
            return Optional.empty();
        }
        return printed(figure, accepted.from(), accepted.to());
    }

    private Optional<String> printed(Figure figure, double from, double to) {
        Outward range = Outward.of(figure, from, to);
        String least = draft.numbers().printed(range.from(), range.unit(), range.decimals());
        String most = draft.numbers().printed(range.to(), range.unit(), range.decimals());
        return least.equals(most) ? Optional.empty() : Optional.of(draft.say("accept.range", "from", least, "to", most));
    }

    /** What makes it that wide, the largest first; empty where the author set the limit or nothing is uncertain. */
    List<Text> why(Figure figure) {
        return why(figure.gradient().largest(SOURCES));
    }

    /** The sources that matter most, by their symbols. */
    List<Text> why(List<Gradient.Part> largest) {
        List<List<Text>> sources = largest.stream().map(Gradient.Part::source)
                .map(s -> draft.typeset().symbol(s.symbol())).filter(s -> !s.isEmpty()).distinct().toList();
        return Typeset.joined(sources, ", ");
    }
}
