package tarewright.procedure.check;

import tarewright.derivation.Figure;
import tarewright.quantity.Digits;
import tarewright.quantity.Unit;

/** Amounts as short plain text for the fields of findings. */
final class Amount {
    private Amount() {
    }

    static String of(Figure figure) {
        return figure.decimals().isPresent() ? withUnit(Digits.decimals(figure.shownValue(), Math.max(0, figure.decimals().getAsInt())), figure.unit())
                : of(figure.value(), figure.unit());
    }

    /** Three significant figures. */
    static String of(double si, Unit unit) {
        return withUnit(Digits.significant(unit.fromSi(si), 3), unit);
    }

    private static String withUnit(String number, Unit unit) {
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }
}
