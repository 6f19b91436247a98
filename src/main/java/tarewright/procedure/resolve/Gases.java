package tarewright.procedure.resolve;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.AmountRule.Measured;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.quantity.Dimension;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/** A gas by the ideal law p V = n R T, dry or over water. */
final class Gases {
    private static final Unit MOLE = Units.symbol("mol").orElseThrow();
    private static final Unit LITRE = Units.symbol("L").orElseThrow();

    private final Bench bench;
    private final QuantityBlock gas;

    Gases(Bench bench, QuantityBlock gas) {
        this.bench = bench;
        this.gas = gas;
    }

    /** n = p V / (R T) of a volume as it stands in its vessel. */
    private Optional<Figure> molesOf(Figure volume) {
        return bench.air.dryPressure(gas, gas.gas().overWater()).map(p -> Reacting.usual(Figure.of(symbol("n"), MOLE, new Step.Product(1, List.of(
                new Power(p, 1), new Power(volume, 1), new Power(bench.constituents.gasConstant(), -1), new Power(bench.air.temperature(gas), -1))))));
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
        return bench.figure(gas, Property.VOLUME).flatMap(this::molesOf);
    }

    /** The amount of the gas that is wished for. */
    Optional<Figure> wantedMoles() {
        Typed wanted = ((AmountRule.Wanted) gas.rule()).typed();
        Figure volume = Kit.asTyped(Figure.given(Symbol.words("wanted volume"), wanted.unit(), wanted.si(), new Origin.Author()), wanted);
        return molesOf(volume);
    }

    /** V = n R T / p, with the pressure of the gas alone where it stands moist. */
    Optional<Figure> volume(boolean moist, Property property) {
        if (property == Property.VOLUME && gas.rule() instanceof AmountRule.Unfixed) {
            return Optional.empty();
        }
        return bench.figure(gas, Property.MOLES).flatMap(n -> bench.air.dryPressure(gas, moist).map(p -> {
            Symbol name = property == Property.DRY && gas.gas().overWater() ? Symbol.ofName("V", "dry") : symbol("V");
            Figure volume = Figure.of(name, LITRE, new Step.Product(1, List.of(new Power(n, 1), new Power(bench.constituents.gasConstant(), 1),
                    new Power(bench.air.temperature(gas), 1), new Power(p, -1))));
            return volume.in(unit(volume.value()));
        }));
    }

    private Unit unit(double si) {
        Optional<Unit> typed = gas.rule() instanceof AmountRule.Wanted w ? Optional.of(w.typed().unit())
                : gas.rule() instanceof AmountRule.Stated s && s.what() == Measured.VOLUME ? Optional.of(s.typed().unit()) : Optional.empty();
        Optional<Unit> vessel = Kit.unit(Kit.measuring(gas.vessel().flatMap(bench::apparatus), Dimension.VOLUME));
        return typed.or(() -> vessel).orElseGet(() -> Kit.usual(Dimension.VOLUME, si));
    }
}
