package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.Procedure;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.ReadingBlock;
import tarewright.setting.Setting;
import tarewright.tables.ReferenceTables;

/**
 * What every figure of one procedure is worked out from, and where those already worked out are kept. Figures are asked for by block and property; each is
 * worked out once, on demand, so the order of blocks in the file does not matter.
 *
 * <p>There are two benches for a procedure. On the first every figure is as expected. On the second, figures that the students read
 * off are those readings, and all that follows from them follows from the readings: answers are worked there.
 */
final class Bench {
    final Procedure procedure;
    final Setting setting;
    final ReferenceTables tables;
    final Names names;
    final List<Pot> pots;
    final boolean byReadings;
    final Constituents constituents;
    final Air air;
    private final Consumer<Finding> findings;
    private final Map<Key, Optional<Figure>> known = new HashMap<>();
    private final Map<Key, QuantityBlock> underWay = new LinkedHashMap<>();
    /** What the students find out, which is worked otherwise than what is expected though nothing of it may be read. */
    private final Set<Figure> foundOut = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Map<Pot.Key, Optional<Figure>> extents = new HashMap<>();
    private final Optional<Bench> expected;
    private final Map<String, ResolvedReading> readings = new LinkedHashMap<>();
    private List<Share> shares = List.of();
    /** Volumes of liquid beside gases that are wished for, by the gas's name: as this bench tries them, or once they are settled. */
    private Optional<Map<String, Double>> beside = Optional.empty();

    /** What one deal of the class has, and how often it is done. */
    record Share(Bench bench, int times) {
    }

    private record Key(String block, Property property) {
    }

    private Bench(Procedure procedure, Setting setting, ReferenceTables tables, Names names, List<Pot> pots, Consumer<Finding> findings,
            Constituents constituents, Optional<Bench> expected) {
        this.procedure = procedure;
        this.setting = setting;
        this.tables = tables;
        this.names = names;
        this.pots = pots;
        this.findings = findings;
        this.expected = expected;
        this.byReadings = expected.isPresent();
        this.constituents = constituents;
        this.air = new Air(this);
    }

    /** The bench on which all is as expected. */
    static Bench asExpected(Procedure procedure, Setting setting, ReferenceTables tables, Names names, List<Pot> pots, Consumer<Finding> findings) {
        return new Bench(procedure, setting, tables, names, pots, findings, new Constituents(tables), Optional.empty());
    }

    /** The bench on which what is read off goes before what is expected. */
    Bench byReadings(Map<String, ResolvedReading> all) {
        Bench bench = new Bench(procedure, setting, tables, names, pots, findings, constituents, Optional.of(this));
        bench.readings.putAll(all);
        return bench;
    }

    /** The same bench anew, with volumes of liquid beside the gases that are wished for to try. What it finds is not told. */
    Bench trying(Map<String, Double> volumes) {
        Bench bench = new Bench(procedure, setting, tables, names, pots, f -> { }, constituents, Optional.empty());
        bench.beside = Optional.of(Map.copyOf(volumes));
        return bench;
    }

    /** On the bench of what is expected: the volume of liquid beside a gas that is wished for, in cubic metres; none where it does not depend on the gas or never settles. */
    Optional<Double> besideWished(QuantityBlock gas) {
        if (beside.isEmpty()) {
            beside = Optional.of(new VesselLiquids(this).settled());
        }
        return Optional.ofNullable(beside.get().get(gas.name()));
    }

    /** The deals of the whole class, this one among them. */
    void sharedBy(List<Share> all) {
        shares = List.copyOf(all);
    }

    List<Share> shares() {
        return expected.map(Bench::shares).orElse(shares);
    }

    void note(Finding finding) {
        findings.accept(finding);
    }

    /** A figure of a block; empty if it has none or could not be worked out, which was a finding where it was the author's doing. */
    Optional<Figure> figure(QuantityBlock block, Property property) {
        if (block.unreadable() && !(property == Property.STRENGTH && block.matter().isPresent())) {
            return Optional.empty();
        }
        Key key = new Key(block.name(), property);
        if (known.containsKey(key)) {
            return known.get(key);
        }
        if (underWay.containsKey(key)) {
            List<String> circle = new ArrayList<>();
            boolean inside = false;
            for (Key each : underWay.keySet()) {
                inside |= each.equals(key);
                if (inside && !circle.contains(each.block())) {
                    circle.add(each.block());
                }
            }
            note(new ResolveFinding.Circular(circle, block.rule().at()));
            known.put(key, Optional.empty());
            return Optional.empty();
        }
        underWay.put(key, block);
        Optional<Figure> figure = reading(block, property).or(() -> new Amounts(this, block).figure(property));
        underWay.remove(key);
        if (byReadings && Unknowns.finds(this, block, property)) {
            figure.ifPresent(foundOut::add);
        } else if (byReadings && figure.filter(f -> !followsFromReadings(f)).isPresent()) {
            // The same figure on both benches, so that its error is known to be one error.
            figure = expected.get().figure(block, property);
        }
        // A circle that was found on the way has already put the answer "nothing" here.
        return known.merge(key, figure, (old, now) -> old);
    }

    private boolean followsFromReadings(Figure figure) {
        return foundOut.contains(figure) || readings.values().stream().anyMatch(r -> r.value() == figure || r.each().contains(figure))
                || figure.from().stream().anyMatch(this::followsFromReadings);
    }

    /** The block's figure as read off, on the second bench. */
    private Optional<Figure> reading(QuantityBlock block, Property property) {
        return reads(block, property).flatMap(r -> Optional.ofNullable(readings.get(r.name()))).map(ResolvedReading::value);
    }

    /** The reading that measures a figure of a block, on the second bench. */
    Optional<ReadingBlock> reads(QuantityBlock block, Property property) {
        return byReadings ? readingOf(block, property) : Optional.empty();
    }

    /** The reading that the procedure has for a figure of a block. */
    Optional<ReadingBlock> readingOf(QuantityBlock block, Property property) {
        return procedure.readings().stream().filter(r -> r.of().isPresent()).filter(r -> {
            Meaning meaning = names.meaning(r.of().get().value());
            return meaning instanceof Meaning.Of of && of.block() == block && same(of.property(), property)
                    || meaning instanceof Meaning.Itself itself && itself.block() == block && Amounts.measuredOut(block) == property;
        }).findFirst();
    }

    /** The mass of a product is its yield. */
    private static boolean same(Property a, Property b) {
        return a == b || a == Property.YIELD && b == Property.MASS || a == Property.MASS && b == Property.YIELD;
    }

    /** The extent of a pot's reaction, one figure for all that follows from it. */
    Optional<Figure> extent(Pot pot) {
        Optional<Figure> known = extents.get(pot.key());
        if (known == null) {
            known = new Reacting(this).extent(pot);
            extents.put(pot.key(), known);
        }
        return known;
    }

    Optional<Bench> expected() {
        return expected;
    }

    Optional<Matter> matter(QuantityBlock block) {
        return Pots.matter(procedure, block);
    }

    Optional<ApparatusItem> instrument(QuantityBlock block) {
        return block.instrument().flatMap(this::apparatus);
    }

    Optional<ApparatusItem> apparatus(At<String> name) {
        return procedure.apparatus(name.value());
    }

    /** The pots in which a block takes part. */
    List<Pot> potsOf(QuantityBlock block) {
        return pots.stream().filter(p -> p.of(block).isPresent()).toList();
    }

    /** The pot in which a block is used up, and its part there. */
    Optional<Pot> potAsReactant(QuantityBlock block) {
        return pots.stream().filter(p -> p.of(block).filter(Part::reactant).isPresent()).findFirst();
    }

    Optional<Pot> potAsProduct(QuantityBlock block) {
        return pots.stream().filter(p -> p.of(block).filter(q -> !q.reactant()).isPresent()).findFirst();
    }

    /** The block that a block is taken or made from, where it is one of this procedure. */
    Optional<QuantityBlock> source(QuantityBlock block) {
        return block.portionOf().or(block::madeFrom).flatMap(n -> procedure.quantity(n.value())).filter(s -> s != block);
    }
}
