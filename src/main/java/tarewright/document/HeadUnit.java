package tarewright.document;

import java.util.Optional;
import tarewright.quantity.Unit;
import tarewright.quantity.UnitResult;
import tarewright.quantity.Units;

/** The unit that the head of a column gives behind a stroke, as in {@code mass of ribbon / g}, or in brackets. */
final class HeadUnit {
    private HeadUnit() {
    }

    static Optional<Unit> of(String head) {
        String text = head.strip();
        int stroke = text.indexOf(" / ");
        String unit = stroke >= 0 ? text.substring(stroke + 3) : text.endsWith(")") && text.contains("(")
                ? text.substring(text.lastIndexOf('(') + 1, text.length() - 1) : "";
        if (unit.isBlank()) {
            return Optional.empty();
        }
        return Units.symbol(unit.strip()).or(() -> Units.parse(unit.strip()) instanceof UnitResult.Ok ok ? Optional.of(ok.unit())
                : Optional.empty());
    }
}
