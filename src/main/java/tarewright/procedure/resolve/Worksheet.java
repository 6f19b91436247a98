package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.ReadingBlock;
import tarewright.procedure.declare.ValueBlock;
import tarewright.procedure.expression.Evaluator;
import tarewright.quantity.Kinds;
import tarewright.quantity.Rounding;
import tarewright.quantity.Unit;
import tarewright.text.Spelling;

/** Readings and values of a procedure, each worked out once for each bench. */
final class Worksheet {
    /** In kelvins: no temperature in a teaching laboratory is so low, and no rise of one so large. */
    private static final double COLDEST = 150;

    private final Bench expected;
    private final Map<String, Optional<ResolvedReading>> readings = new LinkedHashMap<>();
    private final Map<Bench, Map<String, Optional<Figure>>> values = new HashMap<>();
    private final Set<String> underWay = new HashSet<>();
    /** By reading, what a student is told to have read, in coherent SI units, one for each time. */
    private final Map<String, List<Double>> supplied;

    Worksheet(Bench expected, Map<String, List<Double>> supplied) {
        this.expected = expected;
        this.supplied = supplied;
    }

    /** A value block's figure on a bench. */
    Optional<Figure> value(ValueBlock block, Bench bench) {
        Map<String, Optional<Figure>> known = values.computeIfAbsent(bench, b -> new HashMap<>());
        if (known.containsKey(block.name())) {
            return known.get(block.name());
        }
        if (!underWay.add(block.name())) {
            bench.note(new ResolveFinding.Circular(List.of(block.name()), block.block().nameSpan()));
            return Optional.empty();
        }
        Optional<Figure> figure = new Lookups(bench, this).work(block);
        underWay.remove(block.name());
        known.put(block.name(), figure);
        return figure;
    }

    /** Every reading that could be worked out. */
    Map<String, ResolvedReading> readings() {
        Map<String, ResolvedReading> all = new LinkedHashMap<>();
        expected.procedure.readings().forEach(r -> reading(r).ifPresent(found -> all.put(r.name(), found)));
        return all;
    }

    Optional<ResolvedReading> reading(ReadingBlock block) {
        if (readings.containsKey(block.name())) {
            return readings.get(block.name());
        }
        if (!underWay.add(block.name())) {
            expected.note(new ResolveFinding.Circular(List.of(block.name()), block.block().nameSpan()));
            return Optional.empty();
        }
        Optional<ResolvedReading> found = block.difference().isPresent() ? byDifference(block) : single(block);
        underWay.remove(block.name());
        readings.put(block.name(), found);
        agree(block, found);
        return found;
    }

    private Optional<ResolvedReading> single(ReadingBlock block) {
        Optional<ApparatusItem> item = instrument(block);
        Optional<Figure> truth = truth(block);
        truth.ifPresent(t -> fits(block, t));
        return truth.map(t -> {
            List<Figure> each = new ArrayList<>();
            for (int i = 1; i <= block.times(); i++) {
                Figure read = read(t, block, block.times() == 1 ? block.name() : block.name() + " " + i, item);
                each.add(supplied.containsKey(block.name()) ? supplied(read, supplied.get(block.name()).get(i - 1)) : read);
            }
            return new ResolvedReading(block, each, mean(block, each), item);
        });
    }

    /** The same reading with another value: what was really there was so much more, and the instrument is no better and no worse. */
    private static Figure supplied(Figure read, double value) {
        Figure made = asRead(read);
        if (!(made.step() instanceof Step.Read step)) {
            return read;
        }
        Figure more = Figure.given(Symbol.words("supplied"), read.unit(), value - step.truth().value(), new Origin.Expected());
        Figure there = Figure.of(read.symbol(), read.unit(), new Step.Sum(List.of(new Step.Term(1, step.truth()), new Step.Term(1, more))));
        Figure other = Figure.of(read.symbol(), read.unit(), new Step.Read(there, step.rounding())).uncertain(made.ownUncertainty());
        return read.decimals().isPresent() ? other.shownTo(read.decimals().getAsInt()) : other;
    }

    /** The figure whose step is the reading itself, under whatever name. */
    private static Figure asRead(Figure read) {
        return read.step() instanceof Step.Same same ? asRead(same.other()) : read;
    }

    /** What was really there when it was read: the error of that reading is in no other. */
    private static Figure there(ResolvedReading reading) {
        Figure read = reading.each().isEmpty() ? reading.value() : reading.each().get(0);
        return asRead(read).step() instanceof Step.Read step ? step.truth() : read;
    }

    private static Figure mean(ReadingBlock block, List<Figure> each) {
        if (each.size() == 1) {
            return each.get(0);
        }
        double share = 1.0 / each.size();
        Figure mean = Figure.of(Symbol.words("mean of " + block.name()), each.get(0).unit(),
                new Step.Sum(each.stream().map(e -> new Step.Term(share, e)).toList()));
        return each.get(0).decimals().isPresent() ? mean.shownTo(each.get(0).decimals().getAsInt()) : mean;
    }

    /** An instrument that the author names and that measures something else. */
    private void fits(ReadingBlock block, Figure truth) {
        block.instrument().ifPresent(i -> expected.procedure.apparatus(i.value()).flatMap(Kit::measures)
                .filter(d -> !d.equals(truth.dimension())).ifPresent(d -> expected.note(new ResolveFinding.WrongInstrument(i.value(),
                        Kinds.name(d), Kinds.name(truth.dimension()), i.at()))));
    }

    /** What is really there: the figure that the reading measures, or what the author expects. */
    private Optional<Figure> truth(ReadingBlock block) {
        Lookups lookups = new Lookups(expected, this);
        if (block.expect().isPresent()) {
            var found = Evaluator.evaluate(block.expect().get().value(), Symbol.words(block.name()), block.unit(), lookups);
            found.findings().forEach(expected::note);
            return found.value().map(f -> f.from().isEmpty() ? Figure.given(f.symbol(), f.unit(), f.value(), new Origin.Expected()) : f);
        }
        Optional<ReadingBlock> between = block.of().isPresent() ? Optional.empty() : betweenThisAndAnother(block);
        if (between.isPresent()) {
            return asFirstOfDifference(block, between.get());
        }
        if (block.of().isEmpty()) {
            expected.note(new ResolveFinding.NothingExpected(block.name(), block.block().nameSpan()));
            return Optional.empty();
        }
        At<String> of = block.of().get();
        return lookups.figure(expected.names.meaning(of.value()), of.value(), of.at());
    }

    /** The reading that measures something by the difference of this one and another. */
    private Optional<ReadingBlock> betweenThisAndAnother(ReadingBlock block) {
        return expected.procedure.readings().stream()
                .filter(r -> r.difference().filter(d -> d.first().value().equals(block.name())).isPresent() && r.of().isPresent()).findFirst();
    }

    /** The first of two readings whose difference is measured shows what the second did and what lies between them. */
    private Optional<Figure> asFirstOfDifference(ReadingBlock block, ReadingBlock difference) {
        At<String> of = difference.of().orElseThrow();
        return expected.procedure.reading(difference.difference().orElseThrow().second().value()).flatMap(this::reading)
                .flatMap(second -> new Lookups(expected, this).figure(expected.names.meaning(of.value()), of.value(), of.at()).map(between -> Figure.of(
                        Symbol.words(block.name()), second.value().unit(), new Step.Sum(List.of(new Step.Term(1, there(second)), new Step.Term(1, between))))));
    }

    private Optional<ResolvedReading> byDifference(ReadingBlock block) {
        ReadingBlock.Difference difference = block.difference().get();
        Optional<ResolvedReading> first = part(difference.first());
        Optional<ResolvedReading> second = part(difference.second());
        return first.flatMap(a -> second.map(b -> {
            if (block.times() == 1) {
                return new ResolvedReading(block, List.of(), difference(block.name(), a, b), a.instrument());
            }
            List<Figure> each = new ArrayList<>();
            for (int i = 1; i <= block.times(); i++) {
                each.add(difference(block.name() + " " + i, a, b));
            }
            return new ResolvedReading(block, each, mean(block, each), a.instrument());
        }));
    }

    private static Figure difference(String name, ResolvedReading first, ResolvedReading second) {
        Figure value = Figure.of(Symbol.words(name), ofDifference(first.value().unit()),
                new Step.Sum(List.of(new Step.Term(1, first.value()), new Step.Term(-1, second.value()))));
        return first.value().decimals().isPresent() ? value.shownTo(first.value().decimals().getAsInt()) : value;
    }

    /**
     * What is read must agree with what is computed: where {@code of} says what a difference measures and both its readings are expected by the author, the two
     * may differ by what the instruments allow.
     */
    private void agree(ReadingBlock block, Optional<ResolvedReading> found) {
        if (block.of().isEmpty() || found.isEmpty() || block.difference().isEmpty() && block.expect().isEmpty()) {
            return;
        }
        At<String> of = block.of().get();
        Meaning meaning = expected.names.meaning(of.value());
        Optional<Figure> computed = new Lookups(expected, this).figure(meaning, of.value(), of.at());
        if (computed.isEmpty()) {
            return;
        }
        Figure read = found.get().value();
        Figure truth = computed.get();
        if (!truth.dimension().equals(read.dimension())) {
            expected.note(new ResolveFinding.ReadingKind(block.name(), Kit.shown(read.value(), read.unit()), Kinds.name(read.dimension()),
                    Kinds.name(truth.dimension()), of.at()));
            return;
        }
        // What a reaction really gives is for the author to say: a yield is rarely the whole.
        boolean made = meaning instanceof Meaning.Of product && expected.potAsProduct(product.block()).isPresent();
        double allowed = Math.max(4 * Math.hypot(read.standardUncertainty(), truth.standardUncertainty()), 1e-6 * Math.abs(truth.value()));
        if (!made && Math.abs(read.value() - truth.value()) > allowed) {
            expected.note(new ResolveFinding.ReadingContradicts(block.name(), Kit.shown(read.value(), read.unit()), of.value(),
                    Kit.shown(truth.value(), read.unit()), block.block().nameSpan()));
        }
    }

    private Optional<ResolvedReading> part(At<String> name) {
        Optional<ReadingBlock> block = expected.procedure.reading(name.value());
        if (block.isEmpty()) {
            List<String> names = expected.procedure.readings().stream().map(ReadingBlock::name).toList();
            expected.note(new ResolveFinding.UnknownName(name.value(), "reading", Spelling.near(name.value(), names), name.at()));
        }
        return block.flatMap(this::reading);
    }

    private Figure read(Figure truth, ReadingBlock block, String name, Optional<ApparatusItem> item) {
        Optional<ApparatusItem> fitting = Kit.measuring(item, truth.dimension());
        Symbol symbol = Symbol.words(name);
        if (fitting.isEmpty() || fitting.get().division().isEmpty()) {
            return unit(block, truth).map(u -> truth.in(fit(u, truth))).orElse(truth).as(symbol);
        }
        double division = fitting.get().division().getAsDouble();
        Unit marks = fitting.get().divisionTyped().orElseThrow().unit();
        Unit unit = fit(unit(block, truth).orElse(marks), truth);
        if (truth.step() instanceof Step.Read already && already.rounding().divisionSi() == division) {
            // The one weighing of a cut ribbon is the reading itself; several runs to an end point each have an error of their own.
            return block.times() == 1 ? truth.as(symbol).in(unit).shownTo(Kit.decimals(division, unit))
                    : read(already.truth(), block, name, item);
        }
        return Figure.of(symbol, unit, new Step.Read(truth, new Rounding(Rounding.Direction.NEAREST, division, fit(marks, truth).zero()))).uncertain(fitting.get().standardUncertainty().orElse(0))
                .shownTo(Kit.decimals(division, unit));
    }

    /** The unit that the author asks for; a finding where what is read cannot be given in it. */
    private Optional<Unit> unit(ReadingBlock block, Figure truth) {
        Optional<Unit> asked = block.unit();
        asked.filter(u -> !u.dimension().equals(truth.dimension())).ifPresent(u -> expected.note(new ResolveFinding.ReadingKind(block.name(), u.symbol(),
                Kinds.name(u.dimension()), Kinds.name(truth.dimension()), block.block().nameSpan())));
        return asked.filter(u -> u.dimension().equals(truth.dimension()));
    }

    /** A unit for a figure: of a difference of temperatures in degrees the zero plays no part. */
    private static Unit fit(Unit unit, Figure figure) {
        boolean difference = figure.unit().fromZero() && figure.value() < COLDEST;
        return difference ? ofDifference(unit) : unit;
    }

    private static Unit ofDifference(Unit unit) {
        return unit.fromZero() ? unit : new Unit(unit.symbol(), unit.dimension(), unit.factor());
    }

    /** The instrument that a reading names, else the one that measures its block, else the vessel that the block is in. */
    private Optional<ApparatusItem> instrument(ReadingBlock block) {
        if (block.instrument().isPresent()) {
            return expected.procedure.apparatus(block.instrument().get().value());
        }
        return block.of().flatMap(of -> {
            Meaning meaning = expected.names.meaning(of.value());
            Optional<QuantityBlock> measured = meaning instanceof Meaning.Of m ? Optional.of(m.block())
                    : meaning instanceof Meaning.Itself i ? Optional.of(i.block()) : Optional.empty();
            return measured.flatMap(q -> expected.instrument(q).or(() -> q.vessel().flatMap(expected::apparatus)));
        });
    }
}
