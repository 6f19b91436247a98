package tarewright.procedure.resolve;

import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Reason;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.quantity.Rounding;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;

/** Rounds a block's derived amounts to what an instrument delivers. */
final class Instruments {
    private final Bench bench;
    private final QuantityBlock block;

    Instruments(Bench bench, QuantityBlock block) {
        this.bench = bench;
        this.block = block;
    }

    /** A wanted amount as it will be set on an instrument; as it is, where there is none with a division. */
    Figure set(Figure wanted, Optional<ApparatusItem> item, Symbol symbol) {
        if (item.isEmpty() || item.get().division().isEmpty()) {
            return wanted;
        }
        double division = item.get().division().getAsDouble();
        Unit unit = item.get().divisionTyped().orElseThrow().unit();
        double uncertainty = item.get().standardUncertainty().orElse(0);
        int decimals = Kit.decimals(division, unit);
        if (isEndPoint()) {
            return Figure.of(symbol, unit, new Step.Read(wanted.in(unit), new Rounding(Rounding.Direction.NEAREST, division))).uncertain(uncertainty).shownTo(decimals);
        }
        Reason reason = reason(wanted, division);
        Rounding rounding = new Rounding(direction(reason), division);
        return Figure.of(symbol, unit, new Step.Set(wanted.in(unit), rounding, reason)).uncertain(uncertainty).shownTo(decimals);
    }

    /** A length to cut. */
    Figure cut(Figure wanted, Typed step, Symbol symbol) {
        double division = step.value() * step.unit().factor();
        Reason reason = reason(wanted, division);
        return Figure.of(symbol, step.unit(), new Step.Set(wanted, new Rounding(direction(reason), division), reason))
                .uncertain(division / 2 / Math.sqrt(3)).shownTo(Kit.decimals(division, step.unit()));
    }

    /** What an instrument shows of an amount that is there already. */
    Figure read(Figure truth, ApparatusItem item, Symbol symbol) {
        if (item.division().isEmpty()) {
            return truth;
        }
        double division = item.division().getAsDouble();
        Unit unit = item.divisionTyped().orElseThrow().unit();
        return Figure.of(symbol, unit, new Step.Read(truth.in(unit), new Rounding(Rounding.Direction.NEAREST, division))).uncertain(item.standardUncertainty().orElse(0))
                .shownTo(Kit.decimals(division, unit));
    }

    /** An end point is found, not set: what is read off a burette follows what the sample holds. */
    private boolean isEndPoint() {
        return block.rule() instanceof AmountRule.For && bench.readingOf(block, Property.VOLUME).isPresent();
    }

    private static Rounding.Direction direction(Reason reason) {
        return switch (reason) {
            case EXCESS -> Rounding.Direction.UP;
            case VESSEL -> Rounding.Direction.DOWN;
            case ENOUGH -> Rounding.Direction.UP;
            case INSTRUMENT -> Rounding.Direction.NEAREST;
        };
    }

    private Reason reason(Figure wanted, double division) {
        if (block.rule() instanceof AmountRule.ExcessOver) {
            return Reason.EXCESS;
        }
        double nearest = new Rounding(Rounding.Direction.NEAREST, division).apply(wanted.value());
        return nearest > wanted.value() && overfills(nearest / wanted.value()) ? Reason.VESSEL : Reason.INSTRUMENT;
    }

    /** Whether the gas that this is for would pass the capacity of its vessel if so many times the wanted amount were taken. */
    private boolean overfills(double times) {
        if (!(block.rule() instanceof AmountRule.For goal)) {
            return false;
        }
        Optional<QuantityBlock> target = bench.procedure.quantity(goal.target());
        if (target.isEmpty() || !(target.get().rule() instanceof AmountRule.Wanted wanted)) {
            return false;
        }
        return target.get().vessel().flatMap(bench::apparatus).flatMap(ApparatusItem::capacity)
                .filter(c -> wanted.typed().si() <= c.value().si() && wanted.typed().si() * times > c.value().si()).isPresent();
    }
}
