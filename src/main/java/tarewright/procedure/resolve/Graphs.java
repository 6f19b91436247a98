package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.GraphBlock;
import tarewright.procedure.declare.GraphBlock.AxisField;
import tarewright.procedure.declare.GraphBlock.Drift;
import tarewright.procedure.declare.Procedure;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.ResolvedGraph.Axis;
import tarewright.procedure.resolve.ResolvedGraph.Point;
import tarewright.procedure.resolve.ResolvedGraph.Scale;
import tarewright.quantity.Dimension;
import tarewright.quantity.Kinds;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.text.Spelling;

/**
 * Works out graphs. The range of an axis comes from what the students know before they begin: what the author typed, the amounts that are dealt, the strength of the
 * bottle that a series is made from, the range of the instrument. It never comes from an expected value.
 */
final class Graphs {
    /** One deal: what it is called, its figures by name. */
    record Dealer(String label, Lookups lookups, Names names, Bench bench, Worksheet worksheet) {
    }

    /** Of dilute solutions in water: common practice, no source. */
    private static final Typed USUAL_PH = ((QuantityResult.Ok) QuantityText.parse("0 to 14")).typed();

    /** Straight pieces that a line which drifts back is drawn with. */
    private static final int PIECES = 40;

    private final List<Dealer> dealers;
    private final Procedure procedure;
    private final Consumer<Finding> findings;

    /** @param dealers one for each distinct deal, at least one */
    Graphs(List<Dealer> dealers, Consumer<Finding> findings) {
        this.dealers = List.copyOf(dealers);
        this.procedure = dealers.get(0).bench().procedure;
        this.findings = findings;
    }

    List<ResolvedGraph> all() {
        return procedure.graphs().stream().flatMap(g -> graph(g).stream()).toList();
    }

    private Optional<ResolvedGraph> graph(GraphBlock block) {
        List<QuantityBlock> members = members(block);
        if (TitrationCurve.isAskedFor(block)) {
            return titration(block);
        }
        if (block.mixedAt().isPresent()) {
            return mixing(block);
        }
        Optional<Shown> x = block.x().flatMap(a -> shown(a, members));
        Optional<Shown> y = block.y().flatMap(a -> shown(a, members));
        if (x.isEmpty() || y.isEmpty()) {
            return Optional.empty();
        }
        List<Point> points = new ArrayList<>();
        for (Plotted along : x.get().figures()) {
            y.get().figures().stream().filter(up -> up.of().equals(along.of())).findFirst().ifPresent(up -> points.add(
                    new Point(x.get().axis().unit().fromSi(along.figure().value()), y.get().axis().unit().fromSi(up.figure().value()), along.of())));
        }
        return Optional.of(new ResolvedGraph(block, x.get().axis(), y.get().axis(), points, new GraphLine(dealers, x.get(), y.get()).corners(),
                Optional.empty()));
    }

    /** pH against a volume that runs in. Its axis goes over all of the usual scale, never by what is expected. */
    private Optional<ResolvedGraph> titration(GraphBlock block) {
        Optional<Shown> x = block.x().flatMap(a -> shown(a, List.of()));
        AxisField y = block.y().orElseThrow();
        Optional<Axis> up = axisOf(y, y.range().map(At::value).orElse(USUAL_PH));
        if (x.isEmpty() || up.isEmpty()) {
            return Optional.empty();
        }
        Dealer first = dealers.get(0);
        Optional<ResolvedGraph.Curve> curve = TitrationCurve.of(first.bench(), block, x.get().axis(), first.names().meaning(block.x().orElseThrow().what().value()));
        List<Point> expected = curve.stream().flatMap(c -> c.stages().subList(0, c.stages().size() - 1).stream()).map(s -> new Point(s.runIn(), s.pH(), "")).toList();
        return Optional.of(new ResolvedGraph(block, x.get().axis(), up.get(), expected, curve.map(ResolvedGraph.Curve::line).orElse(List.of()), curve));
    }

    private Optional<Axis> axisOf(AxisField field, Typed range) {
        if (!range.dimension().equals(Dimension.NONE)) {
            findings.accept(new ResolveFinding.AxisKind(field.what().value(), Kinds.name(Dimension.NONE), field.range().orElseThrow().at().text(),
                    Kinds.name(range.dimension()), field.range().orElseThrow().at()));
            return Optional.empty();
        }
        return Optional.of(new Axis(TitrationCurve.WORDS, range.unit(), Optional.of(Scale.over(range.value(), range.upTo().orElseThrow()))));
    }

    /**
     * What is read against time, with a jump where two things are mixed: as high as it would be without any loss, so level before, and level after unless the
     * author found on trial how fast it drifts back. The line through later readings, drawn back to that time, is to meet it there.
     */
    private Optional<ResolvedGraph> mixing(GraphBlock block) {
        Optional<Shown> x = block.x().flatMap(a -> shown(a, List.of()));
        Optional<Shown> y = block.y().flatMap(a -> shown(a, List.of()));
        At<Typed> mixed = block.mixedAt().orElseThrow();
        if (x.isEmpty() || y.isEmpty()) {
            return Optional.empty();
        }
        Axis along = x.get().axis();
        double at = along.unit().fromSi(mixed.value().si());
        if (!mixed.value().dimension().equals(along.unit().dimension()) || along.scale().filter(s -> at > s.from() && at < s.to()).isEmpty()) {
            findings.accept(new ResolveFinding.MixedOffAxis(mixed.at().text(), along.words(), mixed.at()));
            return Optional.empty();
        }
        Dealer first = dealers.get(0);
        Optional<Figure> before = block.before().flatMap(b -> first.lookups().figure(first.names().meaning(b.value()), b.value(), b.at()));
        Optional<Figure> after = y.get().figures().stream().map(Plotted::figure).findFirst();
        if (before.isEmpty() || after.isEmpty() || !before.get().dimension().equals(after.get().dimension())) {
            return Optional.of(new ResolvedGraph(block, along, y.get().axis(), List.of(), List.of(), Optional.empty()));
        }
        double low = y.get().axis().unit().fromSi(before.get().value());
        double high = y.get().axis().unit().fromSi(after.get().value());
        Scale scale = along.scale().orElseThrow();
        List<Point> line = new ArrayList<>(List.of(new Point(scale.from(), low, ""), new Point(at, low, "")));
        line.addAll(after(block, along, y.get().axis(), new Point(at, high, ""), high - low));
        return Optional.of(new ResolvedGraph(block, along, y.get().axis(), List.of(new Point(at, high, "")), line, Optional.empty()));
    }

    /**
     * From the mixing to the end of the axis. What drifts goes back in proportion to how far it stands from where it began (Newton's law of cooling, with the
     * surroundings as warm as the start), at first as fast as the author found.
     */
    private List<Point> after(GraphBlock block, Axis along, Axis up, Point top, double jump) {
        double end = along.scale().orElseThrow().to();
        double rate = block.drift().flatMap(d -> rate(d, along, up)).orElse(0.0);
        if (rate == 0 || jump == 0) {
            return List.of(top, new Point(end, top.y(), ""));
        }
        double lasts = Math.abs(jump) / rate;
        List<Point> falling = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            double x = top.x() + (end - top.x()) * i / PIECES;
            falling.add(new Point(x, top.y() - jump * -Math.expm1(-(x - top.x()) / lasts), ""));
        }
        return falling;
    }

    /** In the unit of the y axis in one unit of the x axis; none, and told, where the author typed other kinds of quantity. */
    private Optional<Double> rate(Drift drift, Axis along, Axis up) {
        Typed back = drift.back().value();
        Typed time = drift.in().value();
        boolean backFits = fits(drift.back(), up);
        boolean timeFits = fits(drift.in(), along);
        return backFits && timeFits ? Optional.of(back.value() * back.unit().factor() / up.unit().factor() * along.unit().factor() / time.si()) : Optional.empty();
    }

    private boolean fits(At<Typed> typed, Axis axis) {
        boolean fits = typed.value().dimension().equals(axis.unit().dimension());
        if (!fits) {
            findings.accept(new ResolveFinding.DriftKind(typed.at().text(), axis.words(), Kinds.name(axis.unit().dimension()), typed.at()));
        }
        return fits;
    }

    /** The members of the series that a graph is of. */
    private List<QuantityBlock> members(GraphBlock block) {
        if (block.of().isEmpty()) {
            return List.of();
        }
        At<String> of = block.of().get();
        List<QuantityBlock> members = procedure.series(of.value());
        if (members.isEmpty() && procedure.reaction(of.value()).isEmpty()) {
            findings.accept(new ResolveFinding.UnknownName(of.value(), "series", Spelling.near(of.value(), seriesNames()), of.at()));
        }
        return members;
    }

    private List<String> seriesNames() {
        return procedure.quantities().stream().flatMap(q -> q.member().stream()).map(QuantityBlock.Member::series).distinct().toList();
    }

    /** A figure to plot and whose it is. */
    record Plotted(String of, Figure figure) {
    }

    /** An axis with its figures, in the order of the deals or of the members; none where the axis shows what nothing computes. */
    record Shown(Axis axis, List<Plotted> figures) {
    }

    private Optional<Shown> shown(AxisField field, List<QuantityBlock> members) {
        String text = field.what().value();
        Meaning meaning = dealers.get(0).names().meaning(text);
        if (meaning instanceof Meaning.Unknown && field.range().isPresent()) {
            return Optional.of(new Shown(new Axis(text, field.range().get().value().unit(), range(field)), List.of()));
        }
        Optional<String> property = members.isEmpty() ? Optional.empty() : ofSeries(text, members.get(0).member().orElseThrow().series());
        if (property.isPresent()) {
            return series(field, property.get(), members);
        }
        List<Plotted> figures = new ArrayList<>();
        for (Dealer dealer : dealers) {
            dealer.lookups().figure(dealer.names().meaning(text), text, field.what().at()).ifPresent(f -> figures.add(new Plotted(dealer.label(), f)));
        }
        if (figures.isEmpty()) {
            return Optional.empty();
        }
        return axis(field, meaning, figures.get(0).figure()).map(a -> new Shown(a, figures));
    }

    /** {@code "strength of "} of {@code strength of ladder}, nothing of {@code ladder} itself. */
    private static Optional<String> ofSeries(String text, String series) {
        return text.equals(series) ? Optional.of("") : text.endsWith(" of " + series) ? Optional.of(text.substring(0, text.length() - series.length()))
                : Optional.empty();
    }

    /** A figure of every member of a series. Of strengths, the bottle that all are made from is known to be the strongest. */
    private Optional<Shown> series(AxisField field, String property, List<QuantityBlock> members) {
        Dealer first = dealers.get(0);
        List<Plotted> figures = new ArrayList<>();
        for (QuantityBlock member : members) {
            String text = property + member.name();
            first.lookups().figure(first.names().meaning(text), text, field.what().at()).ifPresent(f -> figures.add(new Plotted(member.name(), f)));
        }
        if (figures.isEmpty()) {
            return Optional.empty();
        }
        Meaning meaning = first.names().meaning(property + members.get(0).name());
        Figure figure = figures.get(0).figure();
        Optional<Figure> most = measured(meaning).isPresent() ? figures.stream().map(Plotted::figure).max(Comparator.comparingDouble(Figure::value))
                : meaning instanceof Meaning.Of of && of.property() == Property.STRENGTH
                ? first.bench().source(members.get(0)).flatMap(b -> first.bench().figure(b, Property.STRENGTH)) : Optional.empty();
        return axis(field, meaning, figure).map(a -> new Axis(a.words(), a.unit(), field.range().isPresent() ? a.scale()
                : most.map(m -> Scale.over(0, a.unit().fromSi(m.value()))))).map(a -> new Shown(a, figures));
    }

    private static Optional<Scale> range(AxisField field) {
        return field.range().map(r -> Scale.over(r.value().value(), r.value().upTo().orElseThrow()));
    }

    private Optional<Axis> axis(AxisField field, Meaning meaning, Figure figure) {
        String text = field.what().value();
        if (field.range().isPresent()) {
            Typed typed = field.range().get().value();
            if (!typed.dimension().equals(figure.dimension())) {
                findings.accept(new ResolveFinding.AxisKind(text, Kinds.name(figure.dimension()), field.range().get().at().text(), Kinds.name(typed.dimension()),
                        field.range().get().at()));
                return Optional.empty();
            }
            return Optional.of(new Axis(text, typed.unit(), range(field)));
        }
        Unit unit = figure.unit();
        Optional<Scale> dealt = largestDealt(meaning).stream().mapToObj(most -> Scale.over(0, unit.fromSi(most))).findFirst();
        return Optional.of(new Axis(text, unit, dealt.or(() -> instrument(meaning).flatMap(i -> ofInstrument(i, unit)))));
    }

    /** The largest amount that is dealt or typed, where that is what the axis shows. */
    private OptionalDouble largestDealt(Meaning meaning) {
        Optional<QuantityBlock> block = measured(meaning).filter(q -> q.rule() instanceof AmountRule.Stated);
        if (block.isEmpty()) {
            return OptionalDouble.empty();
        }
        return dealers.stream().flatMap(d -> d.bench().figure(d.bench().procedure.quantity(block.get().name()).orElseThrow(), Amounts.measuredOut(block.get())).stream())
                .mapToDouble(Figure::value).max();
    }

    /** The block whose measured amount something is. */
    private static Optional<QuantityBlock> measured(Meaning meaning) {
        if (meaning instanceof Meaning.Itself itself) {
            return Optional.of(itself.block());
        }
        return meaning instanceof Meaning.Of of && of.property() == Amounts.measuredOut(of.block()) ? Optional.of(of.block()) : Optional.empty();
    }

    private Optional<ApparatusItem> instrument(Meaning meaning) {
        Dealer first = dealers.get(0);
        if (meaning instanceof Meaning.ReadOff read) {
            return first.worksheet().reading(read.block()).flatMap(ResolvedReading::instrument);
        }
        return measured(meaning).flatMap(q -> first.bench().instrument(q).or(() -> q.vessel().flatMap(first.bench()::apparatus)));
    }

    /** From the least to the most that an instrument shows; a balance, which is made for much more than a group weighs, gives none. */
    private static Optional<Scale> ofInstrument(ApparatusItem item, Unit unit) {
        return item.capacity().map(At::value).filter(c -> c.dimension().equals(unit.dimension()) && !c.dimension().equals(Dimension.MASS))
                .map(c -> Scale.over(unit.fromSi(item.least().map(l -> l.value().si()).orElse(unit.toSi(0))), unit.fromSi(c.si())));
    }
}
