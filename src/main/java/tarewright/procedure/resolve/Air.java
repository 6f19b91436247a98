package tarewright.procedure.resolve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.chemistry.TableValue;
import tarewright.chemistry.Water;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/** Temperature and pressure that a gas stands at, and the water vapour in it. */
final class Air {
    private static final Unit KILOPASCAL = Units.symbol("kPa").orElseThrow();

    private final Bench bench;
    private final Map<Figure, Optional<Figure>> vapour = new HashMap<>();
    private final Map<At<Typed>, Figure> own = new HashMap<>();

    Air(Bench bench) {
        this.bench = bench;
    }

    /** Thermodynamic temperature. */
    Figure temperature(QuantityBlock gas) {
        return gas.gas().temperature().map(t -> own("T", t)).orElse(bench.setting.room().temperature());
    }

    /** Total pressure. */
    Figure pressure(QuantityBlock gas) {
        return gas.gas().pressure().map(p -> own("p", p)).orElse(bench.setting.room().pressure());
    }

    private Figure own(String letter, At<Typed> typed) {
        return own.computeIfAbsent(typed, t -> Kit.asTyped(Figure.given(Symbol.ofName(letter, ""), t.value().unit(), t.value().si(),
                new Origin.Author()).uncertain(Kit.standardUncertainty(t.value())), t.value()));
    }

    /** Vapour pressure of water at the gas's temperature; empty with a finding outside the range of the equation. */
    Optional<Figure> vapourPressure(QuantityBlock gas) {
        Figure temperature = temperature(gas);
        return vapour.computeIfAbsent(temperature, t -> {
            TableValue value = Water.vapourPressure(t.value());
            if (value instanceof TableValue.OutOfRange out) {
                bench.note(new ResolveFinding.OutOfTableRange("vapour pressure of water", out.limit().id(), number(out.asked()) + " " + out.unit(),
                        number(out.from()) + " " + out.unit(), number(out.to()) + " " + out.unit(),
                        gas.gas().temperature().map(At::at).orElse(gas.block().nameSpan())));
                return Optional.empty();
            }
            TableValue.Known known = (TableValue.Known) value;
            return Optional.of(Figure.of(Symbol.ofFormula("p", "H2O"), KILOPASCAL, new Step.Relation("vapour pressure of water", known.provenance().source(),
                    List.of(t), of -> Water.vapourPressure(of[0]).value().orElse(Double.NaN))));
        });
    }

    private static String number(double value) {
        return tarewright.quantity.Digits.significant(value, 4);
    }

    /** The pressure of the gas alone: the total, less water vapour where it was collected over water. */
    Optional<Figure> dryPressure(QuantityBlock gas, boolean moist) {
        Figure total = pressure(gas);
        if (!moist) {
            return Optional.of(total);
        }
        return vapourPressure(gas).flatMap(water -> {
            if (water.value() >= total.value()) {
                bench.note(new ResolveFinding.WaterBoils(Kit.shown(temperature(gas).value(), temperature(gas).unit()),
                        Kit.shown(total.value(), total.unit()), gas.block().nameSpan()));
                return Optional.empty();
            }
            String formula = bench.matter(gas).map(m -> m.formula().plain()).orElse("");
            return Optional.of(Figure.of(Symbol.ofFormula("p", formula), total.unit(),
                    new Step.Sum(List.of(new Step.Term(1, total), new Step.Term(-1, water)))));
        });
    }
}
