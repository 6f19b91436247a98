package tarewright.procedure.resolve;

import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.quantity.Dimension;
import tarewright.quantity.Digits;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.UsualUnits;

/** What an instrument does to a figure: the unit it is read in, the decimals its division shows, its uncertainty. */
final class Kit {
    private Kit() {
    }

    /** The instrument if it measures this dimension. */
    static Optional<ApparatusItem> measuring(Optional<ApparatusItem> item, Dimension dimension) {
        return item.filter(i -> measures(i).filter(dimension::equals).isPresent());
    }

    /** What an instrument measures: by its marks, else by its capacity. */
    static Optional<Dimension> measures(ApparatusItem item) {
        return item.divisionTyped().map(Typed::dimension).or(() -> item.capacity().map(c -> c.value().dimension()));
    }

    /** The unit of an instrument's division. */
    static Optional<Unit> unit(Optional<ApparatusItem> item) {
        return item.flatMap(ApparatusItem::divisionTyped).map(Typed::unit);
    }

    /** Decimals that a division calls for in a unit: a 0.5 mL cylinder is read as 12.5 mL. */
    static int decimals(double divisionSi, Unit unit) {
        double division = divisionSi / unit.factor();
        int decimals = 0;
        double scaled = division;
        while (decimals < 9 && Math.abs(scaled - Math.rint(scaled)) > 1e-6 * Math.max(1, scaled)) {
            decimals++;
            scaled = division * Math.pow(10, decimals);
        }
        return decimals;
    }

    /** A unit that a person in a laboratory would use for a value of this size. */
    static Unit usual(Dimension dimension, double si) {
        return UsualUnits.of(dimension, si);
    }

    /** A typed value as it is shown: its own unit and decimals. */
    static Figure asTyped(Figure figure, Typed typed) {
        return figure.in(typed.unit()).shownTo(typed.decimals());
    }

    /** The standard uncertainty of a typed value in the coherent SI unit: rectangular over the stated limits, else over half of its last digit. */
    static double standardUncertainty(Typed typed) {
        double halfWidth = typed.plusMinusSi().orElse(typed.lastDigit() * typed.unit().factor() / 2);
        return halfWidth / Math.sqrt(3);
    }

    static String shown(Typed typed) {
        return typed.number() + (typed.unit().symbol().isEmpty() ? "" : " " + typed.unit().symbol());
    }

    /** A figure as a short text for a finding. */
    static String shown(double si, Unit unit) {
        return Digits.significant(unit.fromSi(si), 3) + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
    }
}
