package tarewright.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import tarewright.procedure.resolve.ResolvedGraph;
import tarewright.procedure.resolve.ResolvedGraph.Scale;

/** A graph to plot, and in the key what comes of it. */
final class Graphing {
    /** Numbers of an axis that the students number themselves. */
    private static final int UNNUMBERED = 11;

    private final Draft draft;

    Graphing(Draft draft) {
        this.draft = draft;
    }

    /** @param solved whether what is expected is drawn: in the key alone */
    Piece.Graph of(ResolvedGraph graph, boolean solved) {
        boolean drawn = solved && graph.x().scale().isPresent() && graph.y().scale().isPresent();
        String axes = draft.say("graph.axes", "x", spoken(graph.x()), "y", spoken(graph.y()));
        String said = drawn && !graph.expected().isEmpty() ? axes + " " + draft.say("graph.expected", "points", points(graph))
                : axes;
        return new Piece.Graph(axis(graph.x()), axis(graph.y()), drawn ? spots(graph, graph.expected()) : List.of(),
                drawn ? spots(graph, graph.line()) : List.of(), said);
    }

    private Piece.Axis axis(ResolvedGraph.Axis axis) {
        String unit = axis.unit().symbol();
        String name = unit.isEmpty() ? axis.words() : axis.words() + " / " + (unit.contains("/") ? "(" + unit + ")" : unit);
        return axis.scale().map(s -> new Piece.Axis(name, s.ticks().stream().map(t -> number(t, s.decimals())).toList(),
                parts(s)))
                .orElseGet(() -> new Piece.Axis(name, Collections.nCopies(UNNUMBERED, ""), 5));
    }

    /** Twos are parted into four, so that each line is worth a half; ones and fives into five. */
    private static int parts(Scale scale) {
        return new BigDecimal(Double.toString(scale.step())).stripTrailingZeros().unscaledValue().intValue() == 2 ? 4 : 5;
    }

    private String number(double value, int decimals) {
        return draft.numbers().localised(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString());
    }

    private String spoken(ResolvedGraph.Axis axis) {
        String name = axis(axis).name();
        return axis.scale().map(s -> draft.say("graph.range", "name", name, "from", number(s.from(), s.decimals()), "to",
                number(s.to(), s.decimals()))).orElse(name);
    }

    private String points(ResolvedGraph graph) {
        int x = graph.x().scale().orElseThrow().decimals() + 1;
        int y = graph.y().scale().orElseThrow().decimals() + 2;
        return graph.expected().stream().map(p -> draft.say("graph.point", "x", number(p.x(), x), "y", number(p.y(), y)))
                .collect(Collectors.joining("; "));
    }

    /** What lies off the axes is not drawn; a line is cut at their ends. */
    private static List<Piece.Spot> spots(ResolvedGraph graph, List<ResolvedGraph.Point> points) {
        List<Piece.Spot> spots = new ArrayList<>();
        for (ResolvedGraph.Point point : points) {
            double x = share(graph.x().scale().orElseThrow(), point.x());
            double y = share(graph.y().scale().orElseThrow(), point.y());
            if (x >= 0 && x <= 1 && y >= 0 && y <= 1) {
                spots.add(new Piece.Spot(x, y));
            }
        }
        return spots;
    }

    private static double share(Scale scale, double value) {
        return (value - scale.from()) / (scale.to() - scale.from());
    }
}
