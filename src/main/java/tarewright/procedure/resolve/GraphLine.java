package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Sweep;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.Graphs.Dealer;
import tarewright.procedure.resolve.Graphs.Shown;
import tarewright.procedure.resolve.ResolvedGraph.Point;

/**
 * How what goes up follows from the amount that is dealt: the law behind the points, worked out again for other amounts. Straight pieces are given by their ends, and
 * where two meet (a limiting reactant changes) by the point where they cross.
 */
final class GraphLine {
    private static final int SAMPLES = 400;
    /** In shares of the height of what is drawn. */
    private static final double STRAIGHT = 1e-9;
    private static final double SMOOTH = 1e-3;
    private static final int FEW = 8;

    private final List<Dealer> dealers;
    private final Shown x;
    private final Shown y;

    GraphLine(List<Dealer> dealers, Shown x, Shown y) {
        this.dealers = dealers;
        this.x = x;
        this.y = y;
    }

    List<Point> corners() {
        if (x.figures().isEmpty() || y.figures().isEmpty()) {
            return List.of();
        }
        List<Point> sampled = sampled();
        if (sampled.size() < 2) {
            return List.of();
        }
        List<Point> straight = crossing(thinned(sampled, STRAIGHT));
        return straight.size() <= FEW ? straight : thinned(sampled, SMOOTH);
    }

    private List<Point> sampled() {
        Bench bench = dealers.get(0).bench();
        Figure along = x.figures().get(0).figure();
        Figure up = y.figures().get(0).figure();
        for (QuantityBlock block : bench.procedure.quantities()) {
            Optional<Figure> moved = block.dealt().isEmpty() ? Optional.empty() : bench.figure(block, Amounts.measuredOut(block));
            if (moved.isPresent()) {
                Sweep sweep = new Sweep(moved.get(), List.of(along, up));
                if (sweep.movesAll()) {
                    return sampled(sweep, largest(block));
                }
            }
        }
        return List.of();
    }

    private double largest(QuantityBlock block) {
        return dealers.stream().flatMap(d -> d.bench().figure(d.bench().procedure.quantity(block.name()).orElseThrow(), Amounts.measuredOut(block)).stream())
                .mapToDouble(Figure::value).max().orElse(0);
    }

    /** From nothing to the end of the axis, or to the largest amount where the axis has no numbers. */
    private List<Point> sampled(Sweep sweep, double largest) {
        double end = x.axis().scale().map(ResolvedGraph.Scale::to).orElse(x.axis().unit().fromSi(sweep.at(largest)[0]));
        double reach = largest;
        while (x.axis().unit().fromSi(sweep.at(reach)[0]) < end && reach < 8 * largest) {
            reach *= 2;
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= SAMPLES; i++) {
            double[] at = sweep.at(reach * i / SAMPLES);
            Point point = new Point(x.axis().unit().fromSi(at[0]), y.axis().unit().fromSi(at[1]), "");
            if (Double.isFinite(point.x()) && Double.isFinite(point.y()) && point.x() <= end * (1 + 1e-12)) {
                points.add(point);
            }
        }
        return points;
    }

    /** Leaves out points that lie on the straight line between their neighbours, within a share of the height. */
    private static List<Point> thinned(List<Point> points, double share) {
        double low = points.stream().mapToDouble(Point::y).min().orElseThrow();
        double high = points.stream().mapToDouble(Point::y).max().orElseThrow();
        List<Point> kept = new ArrayList<>(List.of(points.get(0)));
        keep(points, 0, points.size() - 1, Math.max(share * (high - low), Double.MIN_NORMAL), kept);
        kept.add(points.get(points.size() - 1));
        return kept;
    }

    private static void keep(List<Point> points, int from, int to, double most, List<Point> kept) {
        int farthest = -1;
        double off = most;
        Point a = points.get(from);
        Point b = points.get(to);
        for (int i = from + 1; i < to; i++) {
            Point p = points.get(i);
            double on = b.x() == a.x() ? a.y() : a.y() + (b.y() - a.y()) * (p.x() - a.x()) / (b.x() - a.x());
            if (Math.abs(p.y() - on) > off) {
                off = Math.abs(p.y() - on);
                farthest = i;
            }
        }
        if (farthest > 0) {
            keep(points, from, farthest, most, kept);
            kept.add(points.get(farthest));
            keep(points, farthest, to, most, kept);
        }
    }

    /** Two neighbouring samples with a corner between them become the corner. */
    private static List<Point> crossing(List<Point> corners) {
        if (corners.size() != 4) {
            return corners;
        }
        Point a = corners.get(0);
        Point b = corners.get(1);
        Point c = corners.get(2);
        Point d = corners.get(3);
        double first = (b.y() - a.y()) / (b.x() - a.x());
        double second = (d.y() - c.y()) / (d.x() - c.x());
        double at = (c.y() - second * c.x() - a.y() + first * a.x()) / (first - second);
        return at >= b.x() && at <= c.x() ? List.of(a, new Point(at, a.y() + first * (at - a.x()), ""), d) : corners;
    }
}
