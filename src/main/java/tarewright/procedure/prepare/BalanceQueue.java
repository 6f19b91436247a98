package tarewright.procedure.prepare;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.ReadingBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Dimension;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.tables.Practice;

/**
 * The time that the class takes at a balance which groups share, if they come one after another.
 *
 * @param balances how many there are
 * @param weighings of one group, over all its runs
 * @param oneWeighing the time that is assumed for one
 * @param time until the last group has weighed
 */
public record BalanceQueue(ApparatusItem item, int balances, int weighings, Figure oneWeighing, Figure time) {
    private static final Unit SECOND = Units.symbol("s").orElseThrow();
    private static final Unit MINUTE = Units.symbol("min").orElseThrow();

    static List<BalanceQueue> of(Resolved procedure, List<Equipment> equipment) {
        return equipment.stream().filter(e -> e.place() != Equipment.Place.TRAY && isBalance(e.item()))
                .flatMap(e -> of(procedure, e).stream()).toList();
    }

    private static boolean isBalance(ApparatusItem item) {
        return item.divisionTyped().map(Typed::dimension).filter(Dimension.MASS::equals).isPresent();
    }

    private static Optional<BalanceQueue> of(Resolved procedure, Equipment equipment) {
        int weighings = weighings(procedure, equipment.item()) * procedure.setting().runs();
        if (weighings == 0) {
            return Optional.empty();
        }
        Practice practice = procedure.tables().practice();
        boolean fine = equipment.item().division().getAsDouble() <= practice.fineDivision() * (1 + 1e-9);
        Figure one = counted("one weighing", SECOND, fine ? practice.secondsPerFineWeighing() : practice.secondsPerWeighing(),
                new Origin.Table("common practice, no source", false));
        int turns = Equipment.ceiling(procedure.setting().groups() * weighings, equipment.total());
        Figure time = Figure.of(Symbol.ofName("t", "queue"), MINUTE, new Step.Product(1, List.of(
                new Power(counted("turns at each balance", Unit.ONE, turns, new Origin.Counted()), 1), new Power(one, 1))));
        return Optional.of(new BalanceQueue(equipment.item(), equipment.total(), weighings, one, time));
    }

    private static Figure counted(String words, Unit unit, double value, Origin origin) {
        return Figure.given(Symbol.words(words), unit, value, origin);
    }

    /** What is set on it, and what is read off it besides; a difference is not weighed again, nor is the mass that was just set. */
    private static int weighings(Resolved procedure, ApparatusItem item) {
        int count = 0;
        for (ResolvedQuantity quantity : procedure.quantities()) {
            boolean set = quantity.taken() && quantity.instrument().filter(item::equals).isPresent();
            count += set ? quantity.block().portions() : 0;
        }
        for (ReadingBlock reading : procedure.procedure().readings()) {
            boolean here = reading.instrument().filter(i -> i.value().equals(item.name())).isPresent() && reading.difference().isEmpty();
            boolean asSet = reading.of().filter(o -> procedure.quantities().stream()
                    .anyMatch(q -> q.taken() && q.instrument().filter(item::equals).isPresent() && measures(o.value(), q))).isPresent();
            count += here && !asSet ? reading.times() : 0;
        }
        return count;
    }

    private static boolean measures(String of, ResolvedQuantity quantity) {
        return of.equals(quantity.name()) || of.equals(quantity.measuredOut().words() + " of " + quantity.name());
    }
}
