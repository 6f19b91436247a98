package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.GasSolubility;
import tarewright.chemistry.Provenance;
import tarewright.chemistry.TableValue;
import tarewright.chemistry.Virial;
import tarewright.derivation.Accepted;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Step.Term;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.AmountRule.Measured;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.quantity.Dimension;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/**
 * A gas: by the ideal law p V = n R T, dry or over water; with the second virial coefficient where the author asks for it or where it matters; less what dissolves in
 * the liquids of its vessel and in the liquid that washes it.
 */
final class Gases {
    /** A gas of which a volume of water takes up more than so many volumes at room conditions is lost in washing (common practice, no source). */
    static final double TOO_SOLUBLE = 10;
    private static final Unit MOLE = Units.symbol("mol").orElseThrow();
    private static final Unit LITRE = Units.symbol("L").orElseThrow();
    private static final Unit HENRY = Constituents.unit("mol/(m³ Pa)").or(() -> Constituents.unit("mol/(L kPa)")).orElseThrow();
    private static final Unit VIRIAL = Constituents.unit("cm³/mol").orElseThrow();
    private static final Unit MOLAR_VOLUME = Constituents.unit("L/mol").orElseThrow();

    private final Bench bench;
    private final QuantityBlock gas;

    Gases(Bench bench, QuantityBlock gas) {
        this.bench = bench;
        this.gas = gas;
    }

    /** n = p V / (R T) of a volume as it stands in its vessel; n = V / (R T / p + B) where the gas is real. */
    private Optional<Figure> molesOf(Figure volume, boolean whereItMatters) {
        return bench.air.dryPressure(gas, gas.gas().overWater()).map(p -> {
            Figure ideal = Figure.of(symbol("n"), MOLE, new Step.Product(1, List.of(new Power(p, 1), new Power(volume, 1),
                    new Power(bench.constituents.gasConstant(), -1), new Power(bench.air.temperature(gas), -1))));
            Optional<Figure> coefficient = coefficient().filter(b -> asked().orElseGet(() -> whereItMatters
                    && matters(ideal, ideal.value() * b.value() / volume.value() * ideal.value())));
            return Reacting.usual(coefficient.map(b -> Figure.of(symbol("n"), MOLE, new Step.Product(1, List.of(new Power(volume, 1),
                    new Power(molarVolume(p, b), -1))))).orElse(ideal));
        });
    }

    private Figure idealMolarVolume(Figure pressure, Symbol name) {
        return Figure.of(name, MOLAR_VOLUME, new Step.Product(1, List.of(
                new Power(bench.constituents.gasConstant(), 1), new Power(bench.air.temperature(gas), 1), new Power(pressure, -1))));
    }

    private Figure molarVolume(Figure pressure, Figure coefficient) {
        Figure ideal = idealMolarVolume(pressure, Symbol.words("ideal molar volume"));
        return Figure.of(Symbol.alone("Vm"), MOLAR_VOLUME, new Step.Sum(List.of(new Term(1, ideal), new Term(1, coefficient))));
    }

    private Symbol symbol(String letter) {
        return new Amounts(bench, gas).symbol(letter);
    }

    /** The amount of a gas whose volume or mass is typed, or read off. */
    Optional<Figure> molesFromAmount() {
        if (gas.rule() instanceof AmountRule.Stated stated && stated.what() == Measured.MASS) {
            return Amounts.both(bench.figure(gas, Property.MASS), bench.figure(gas, Property.MOLAR_MASS)).map(p -> Reacting.usual(
                    Figure.of(symbol("n"), MOLE, new Step.Product(1, List.of(new Power(p.first(), 1), new Power(p.second(), -1))))));
        }
        if (gas.rule() instanceof AmountRule.For goal) {
            return new Reacting(bench).neededFor(gas, goal, symbol("n"));
        }
        if (gas.rule() instanceof AmountRule.ExcessOver over) {
            return new Reacting(bench).neededOver(gas, over, symbol("n"));
        }
        if (gas.rule() instanceof AmountRule.Unfixed) {
            bench.note(new ResolveFinding.MissingQuantity(gas.name(), "gas", List.of("wanted", "volume", "moles", "mass", "for", "made by"),
                    gas.block().nameSpan()));
            return Optional.empty();
        }
        boolean stated = gas.rule() instanceof AmountRule.Stated;
        return bench.figure(gas, Property.VOLUME).flatMap(v -> molesOf(stated ? v : withTaken(v), stated));
    }

    /** The amount of the gas that is wished for. */
    Optional<Figure> wantedMoles() {
        Typed wanted = ((AmountRule.Wanted) gas.rule()).typed();
        Figure volume = Kit.asTyped(Figure.given(Symbol.words("wanted volume"), wanted.unit(), wanted.si(), new Origin.Author()), wanted);
        return molesOf(withTaken(volume), false);
    }

    /** A volume that stands, or is to stand, in the vessel, with what liquids take of the gas beside it. */
    private Figure withTaken(Figure stands) {
        List<Term> parts = new ArrayList<>(List.of(new Term(1, stands)));
        new VesselLiquids(bench).beside(gas).flatMap(l -> held(l, Symbol.words("dissolved"))).ifPresent(d -> parts.add(new Term(1, d)));
        gas.gas().wash().map(w -> bench.constituents.typed(w.value(), Symbol.words("wash")))
                .flatMap(w -> held(w, Symbol.words("washed away")).filter(h -> !fullySoluble() && h.value() <= TOO_SOLUBLE * w.value()))
                .ifPresent(h -> parts.add(new Term(1, h)));
        return parts.size() == 1 ? stands : Figure.of(Symbol.ofName("V", "made"), stands.unit(), new Step.Sum(parts));
    }

    // --- volumes

    /** V = n R T / p with the pressure of the gas alone where it stands moist; nothing taken off. */
    Optional<Figure> free(boolean moist, Symbol name) {
        return bench.figure(gas, Property.MOLES).flatMap(n -> bench.air.dryPressure(gas, moist).map(p -> {
            Figure ideal = ideal(n, p, name);
            return virial(ideal, n, name).orElse(ideal);
        }));
    }

    private Figure ideal(Figure moles, Figure pressure, Symbol name) {
        Figure volume = Figure.of(name, LITRE, new Step.Product(1, List.of(new Power(moles, 1), new Power(bench.constituents.gasConstant(), 1),
                new Power(bench.air.temperature(gas), 1), new Power(pressure, -1))));
        return volume.in(unit(volume.value()));
    }

    /** What stands in the vessel: moist where collected over water, less what dissolved and what washing took. */
    Optional<Figure> inVessel() {
        if (gas.rule() instanceof AmountRule.Unfixed) {
            return Optional.empty();
        }
        Optional<Figure> lost = lost();
        return free(gas.gas().overWater(), symbol("V")).map(whole -> lost.map(l -> l.value() < whole.value()
                ? Figure.of(symbol("V"), whole.unit(), new Step.Sum(List.of(new Term(1, whole), new Term(-1, l)))) : nothing(whole, l)).orElse(whole));
    }

    private Figure nothing(Figure whole, Figure lost) {
        bench.note(new ResolveFinding.GasAllDissolves(gas.name(), Kit.shown(whole.value(), whole.unit()), gas.block().nameSpan()));
        return Figure.of(symbol("V"), whole.unit(), new Step.Product(0, List.of(new Power(whole, 1))));
    }

    /** The virial volume n R T / p + n B, where the author asks for it or it differs by more than half of the accepted range. */
    private Optional<Figure> virial(Figure ideal, Figure moles, Symbol name) {
        return coefficient().filter(b -> asked().orElseGet(() -> matters(ideal, moles.value() * b.value()))).map(b -> {
            Figure correction = Figure.of(Symbol.words("correction"), ideal.unit(), new Step.Product(1, List.of(new Power(moles, 1), new Power(b, 1))));
            return Figure.of(name, ideal.unit(), new Step.Sum(List.of(new Term(1, ideal), new Term(1, correction))));
        });
    }

    /** What the author says of this gas, or of all: real or ideal. */
    private Optional<Boolean> asked() {
        return gas.gas().real().or(() -> bench.procedure.front().realGases());
    }

    /** Whether a difference is more than half of the accepted range; temperature and pressure of the air are never known better than they are. */
    private boolean matters(Figure ideal, double difference) {
        Figure temperature = bench.air.temperature(gas);
        Figure pressure = bench.air.pressure(gas);
        double air = Math.hypot(temperature.standardUncertainty() / temperature.value(), pressure.standardUncertainty() / pressure.value());
        double uncertainty = Math.max(ideal.standardUncertainty(), air * Math.abs(ideal.value()));
        return Math.abs(difference) > Accepted.COVERAGE * uncertainty;
    }

    /** The second virial coefficient at the gas's temperature; a finding where it is asked for and not known. */
    private Optional<Figure> coefficient() {
        Optional<Virial> table = bench.matter(gas).flatMap(m -> bench.tables.virial(m.formula()));
        Figure temperature = bench.air.temperature(gas);
        if (table.isEmpty() || table.get().coefficient(temperature.value()).value().isEmpty()) {
            if (asked().orElse(false)) {
                bench.note(new ResolveFinding.NoVirial(gas.name(), bench.matter(gas).map(m -> m.formula().unicode()).orElse(""), gas.block().nameSpan()));
            }
            return Optional.empty();
        }
        Virial row = table.get();
        return Optional.of(Figure.of(Symbol.alone("B"), VIRIAL, new Step.Relation("second virial coefficient", row.provenance().source(), List.of(temperature),
                of -> row.coefficient(of[0]).value().orElse(Double.NaN))));
    }

    // --- what water takes

    /** The volume that dissolves, and that washing takes, if any. */
    Optional<Figure> lost() {
        List<Term> parts = new ArrayList<>();
        dissolved().ifPresent(d -> parts.add(new Term(1, d)));
        washed().ifPresent(w -> parts.add(new Term(1, w)));
        return parts.isEmpty() ? Optional.empty()
                : parts.size() == 1 ? Optional.of(parts.get(0).figure())
                : Optional.of(Figure.of(Symbol.words("lost to water"), parts.get(0).figure().unit(), new Step.Sum(parts)));
    }

    /**
     * The volume of gas that the liquids in its vessel hold once they are saturated: V = H R T × volume of liquid (Henry's law), at most all of it. Only liquids
     * that the author puts into the gas's vessel count.
     */
    Optional<Figure> dissolved() {
        return new VesselLiquids(bench).with(gas).flatMap(liquid -> taken(liquid, Symbol.words("dissolved")));
    }

    /** What the wash takes; a gas too soluble to be washed is a finding. */
    private Optional<Figure> washed() {
        return gas.gas().wash().flatMap(wash -> {
            Figure liquid = bench.constituents.typed(wash.value(), Symbol.words("wash"));
            Optional<Figure> taken = taken(liquid, Symbol.words("washed away"));
            boolean swallowed = fullySoluble() || taken.filter(t -> t.value() / liquid.value() > TOO_SOLUBLE
                    || free(gas.gas().overWater(), symbol("V")).filter(v -> t.value() >= v.value()).isPresent()).isPresent();
            if (swallowed) {
                bench.note(new ResolveFinding.TooSolubleToWash(bench.matter(gas).map(m -> m.formula().unicode()).orElse(gas.name()),
                        taken.map(t -> Kit.shown(t.value() / liquid.value(), Unit.ONE)), wash.at().text(), wash.at()));
                return Optional.empty();
            }
            return taken;
        });
    }

    /** Hydrogen chloride and its like give themselves up to water altogether; Henry's constant says nothing of them. */
    private boolean fullySoluble() {
        return bench.matter(gas).filter(m -> List.of("HCl", "HBr", "HI").contains(m.formula().plain())).isPresent();
    }

    /** What a liquid holds once it is saturated, at most all that there is. */
    private Optional<Figure> taken(Figure liquid, Symbol name) {
        return held(liquid, name).map(held -> free(gas.gas().overWater(), symbol("V")).filter(all -> all.value() < held.value())
                .map(all -> Figure.of(name, all.unit(), new Step.Extreme(true, List.of(held, all)))).orElse(held));
    }

    private Optional<Figure> held(Figure liquid, Symbol name) {
        Figure temperature = bench.air.temperature(gas);
        Optional<GasSolubility> row = bench.matter(gas).flatMap(m -> bench.tables.gasSolubility(m.formula()));
        if (row.isEmpty() || !(row.get().henry(temperature.value()) instanceof TableValue.Known)) {
            return Optional.empty();
        }
        Provenance from = row.get().provenance();
        Figure henry = Figure.of(symbol("H"), HENRY, new Step.Relation("Henry constant", from.source() + (from.confidence() == Confidence.MEMORY ? " (memory)" : ""),
                List.of(temperature), of -> row.get().henry(of[0]).value().orElse(Double.NaN)));
        Figure volume = Figure.of(name, LITRE, new Step.Product(1, List.of(new Power(henry, 1), new Power(bench.constituents.gasConstant(), 1),
                new Power(temperature, 1), new Power(liquid, 1))));
        return Optional.of(volume.in(unit(volume.value())));
    }

    /** What one mole of it fills in its vessel, moist where collected over water: R T / p of its own pressure, with the virial coefficient where its volume has it. */
    Optional<Figure> molarVolume() {
        return bench.air.dryPressure(gas, gas.gas().overWater()).map(p -> {
            Optional<Figure> counted = coefficient().filter(b -> asked().orElseGet(() -> bench.figure(gas, Property.MOLES)
                    .filter(n -> matters(ideal(n, p, symbol("V")), n.value() * b.value())).isPresent()));
            return counted.map(b -> molarVolume(p, b)).orElseGet(() -> idealMolarVolume(p, Symbol.alone("Vm")));
        });
    }

    /** The largest volume over the accepted range. */
    Optional<Figure> largest() {
        return bench.figure(gas, Property.VOLUME).map(v -> {
            Figure spread = Figure.given(Symbol.words("range"), v.unit(), Accepted.COVERAGE * v.standardUncertainty(), new Origin.Circumstance("accepted range"));
            return Figure.of(Symbol.words("largest volume"), v.unit(), new Step.Sum(List.of(new Term(1, v), new Term(1, spread))));
        });
    }

    private Unit unit(double si) {
        Optional<Unit> typed = gas.rule() instanceof AmountRule.Wanted w ? Optional.of(w.typed().unit())
                : gas.rule() instanceof AmountRule.Stated s && s.what() == Measured.VOLUME ? Optional.of(s.typed().unit()) : Optional.empty();
        Optional<Unit> vessel = Kit.unit(Kit.measuring(gas.vessel().flatMap(bench::apparatus), Dimension.VOLUME));
        return typed.or(() -> vessel).orElseGet(() -> Kit.usual(Dimension.VOLUME, si));
    }
}
