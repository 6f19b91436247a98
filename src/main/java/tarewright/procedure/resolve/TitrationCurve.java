package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import tarewright.chemistry.AcidConstant;
import tarewright.chemistry.Acidity;
import tarewright.chemistry.Formula;
import tarewright.chemistry.Protolyte;
import tarewright.chemistry.solution.Electrolytes;
import tarewright.chemistry.solution.InWater;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.GraphBlock;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.declare.QuantityBlock.Role;
import tarewright.procedure.resolve.ResolvedGraph.Axis;
import tarewright.procedure.resolve.ResolvedGraph.Curve;
import tarewright.procedure.resolve.ResolvedGraph.Point;

/**
 * How the pH in a pot goes while one of its solutions runs in: at each volume the one at which the charges of all that is in the pot sum to zero, volumes simply
 * added up, at 25 °C, activities as concentrations.
 */
final class TitrationCurve {
    /** What the y axis says that asks for one. */
    static final String WORDS = "pH";
    private static final int SAMPLES = 200;
    private static final double STEEP = 0.1;
    private static final int DEEPEST = 16;
    private static final double PER_LITRE = 1000;

    private final Bench bench;
    private final GraphBlock graph;
    private final Axis along;
    private final QuantityBlock titrant;
    private final Pot pot;
    /** What is dissolved of each formula: moles that stand in the flask, and moles for each cubic metre that runs in. */
    private final Map<String, Dissolved> dissolved = new LinkedHashMap<>();
    private double volume;

    private record Dissolved(Formula formula, InWater each, double standing, double running) {
    }

    private TitrationCurve(Bench bench, GraphBlock graph, Axis along, QuantityBlock titrant, Pot pot) {
        this.bench = bench;
        this.graph = graph;
        this.along = along;
        this.titrant = titrant;
        this.pot = pot;
    }

    static boolean isAskedFor(GraphBlock graph) {
        return graph.y().filter(y -> y.what().value().toLowerCase(Locale.ROOT).equals(WORDS.toLowerCase(Locale.ROOT))).isPresent();
    }

    /** Empty where the x axis has no numbers or shows no volume that runs into a pot, and where something has no known constant, which is told. */
    static Optional<Curve> of(Bench bench, GraphBlock graph, Axis along, Meaning x) {
        Optional<QuantityBlock> titrant = titrant(bench, x).filter(b -> b.is(Kind.SOLUTION));
        Optional<Pot> pot = titrant.flatMap(bench::potAsReactant);
        if (along.scale().isEmpty() || pot.isEmpty()) {
            return Optional.empty();
        }
        TitrationCurve curve = new TitrationCurve(bench, graph, along, titrant.get(), pot.get());
        return curve.gathered() ? Optional.of(curve.drawn()) : Optional.empty();
    }

    /** The block whose volume an axis shows, or what is read off of it. */
    private static Optional<QuantityBlock> titrant(Bench bench, Meaning x) {
        if (x instanceof Meaning.ReadOff read) {
            return read.block().of().flatMap(of -> titrant(bench, bench.names.meaning(of.value())));
        }
        return x instanceof Meaning.Itself itself ? Optional.of(itself.block())
                : x instanceof Meaning.Of of && of.property() == Property.VOLUME ? Optional.of(of.block()) : Optional.empty();
    }

    private boolean gathered() {
        List<String> unknown = new ArrayList<>();
        for (QuantityBlock block : pot.reactants().stream().map(Part::block).distinct().toList()) {
            add(block).ifPresent(unknown::add);
        }
        bench.procedure.quantities().stream().filter(this::isWaterOfThisPot).forEach(b -> volume += value(b, Property.VOLUME).orElse(0.0));
        if (!unknown.isEmpty()) {
            bench.note(new ResolveFinding.NoCurve(graph.name(), unknown, graph.y().orElseThrow().what().at()));
        }
        return unknown.isEmpty() && volume > 0;
    }

    private boolean isWaterOfThisPot(QuantityBlock block) {
        boolean named = block.reactsIn().filter(r -> r.value().equals(pot.reaction().name())).isPresent();
        Set<String> vessels = new TreeSet<>();
        pot.reactants().stream().map(Part::block).filter(b -> b != titrant).flatMap(b -> b.vessel().stream()).forEach(v -> vessels.add(v.value()));
        return block.role() == Role.SOLVENT && (named || block.vessel().filter(v -> vessels.contains(v.value())).isPresent());
    }

    /** What of a block stands in the way of a curve: its formula or its name. */
    private Optional<String> add(QuantityBlock block) {
        Optional<Matter> matter = bench.matter(block);
        Optional<Double> moles = value(block, Property.MOLES);
        Optional<Double> fills = block.is(Kind.SOLID) ? Optional.of(0.0) : value(block, Property.VOLUME);
        if (matter.isEmpty() || !block.also().isEmpty() || block.is(Kind.GAS)) {
            return Optional.of(block.name());
        }
        Formula formula = matter.get().formula();
        Optional<InWater> each = new Electrolytes(bench.tables.acidConstants()).of(formula);
        if (each.isEmpty()) {
            return Optional.of(formula.plain());
        }
        if (moles.isEmpty() || fills.isEmpty() || block == titrant && fills.get() <= 0) {
            // Why is a finding already.
            return Optional.of(block.name());
        }
        boolean runs = block == titrant;
        dissolved.merge(formula.plain(), new Dissolved(formula, each.get(), runs ? 0 : moles.get(), runs ? moles.get() / fills.get() : 0),
                (a, b) -> new Dissolved(formula, a.each(), a.standing() + b.standing(), a.running() + b.running()));
        volume += runs ? 0 : fills.get();
        return Optional.empty();
    }

    private Optional<Double> value(QuantityBlock block, Property property) {
        return bench.figure(block, property).map(Figure::value);
    }

    private Curve drawn() {
        double from = along.scale().orElseThrow().from();
        double to = along.scale().orElseThrow().to();
        List<Point> line = new ArrayList<>(List.of(at(from)));
        for (int i = 1; i <= SAMPLES; i++) {
            steep(line, at(from + (to - from) * i / SAMPLES), 0);
        }
        List<Curve.Stage> stages = new ArrayList<>(List.of(stage(from)));
        Optional<Double> end = value(titrant, Property.VOLUME).map(along.unit()::fromSi).filter(v -> v > from && v <= to);
        end.ifPresent(v -> stages.addAll(List.of(stage(v / 2), stage(v))));
        stages.add(stage(to));
        return new Curve(dissolved.values().stream().map(Dissolved::formula).toList(), stages, constants(), line);
    }

    /** Between two points that lie far apart in pH there are more. */
    private void steep(List<Point> line, Point next, int depth) {
        Point last = line.get(line.size() - 1);
        if (depth < DEEPEST && Math.abs(next.y() - last.y()) > STEEP) {
            steep(line, at((last.x() + next.x()) / 2), depth + 1);
            steep(line, next, depth + 1);
        } else {
            line.add(next);
        }
    }

    private Point at(double shown) {
        return new Point(shown, pH(along.unit().toSi(shown)), "");
    }

    private double pH(double runIn) {
        double litres = (volume + runIn) * PER_LITRE;
        return dissolved.values().stream().map(d -> d.each().times((d.standing() + d.running() * runIn) / litres)).reduce(InWater.NOTHING, InWater::and)
                .pH(Acidity.AT_25_C);
    }

    private Curve.Stage stage(double shown) {
        double runIn = along.unit().toSi(shown);
        double litres = (volume + runIn) * PER_LITRE;
        List<Double> strengths = dissolved.values().stream().map(d -> (d.standing() + d.running() * runIn) / litres).toList();
        return new Curve.Stage(shown, along.unit().fromSi(volume + runIn), strengths, pH(runIn));
    }

    /** The rows of the table that the weak ones of it stand on. */
    private List<AcidConstant> constants() {
        List<AcidConstant> used = new ArrayList<>();
        for (Dissolved each : dissolved.values()) {
            for (Protolyte weak : each.each().weak()) {
                bench.tables.acidConstants().all().stream().filter(row -> weak.pKa().contains(row.pKa()) && isOf(row, each.formula()) && !used.contains(row))
                        .forEach(used::add);
            }
        }
        return used;
    }

    /** Whether its base is made of nothing that the formula does not hold. */
    private static boolean isOf(AcidConstant row, Formula formula) {
        return row.base().filter(b -> formula.atoms().keySet().containsAll(b.atoms().keySet())
                && b.atoms().keySet().stream().filter(s -> !Set.of("H", "O").contains(s)).allMatch(s -> formula.atoms().get(s) >= 1)).isPresent();
    }
}
