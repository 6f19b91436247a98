package tarewright.fuzz;

import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.StrengthResult;
import tarewright.quantity.StrengthText;
import tarewright.quantity.UnitResult;
import tarewright.quantity.Units;

/** Any text as a unit, as an amount and as a strength. */
public final class QuantityTarget {
    private QuantityTarget() {
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        String text = Held.text(bytes);
        Held.soon(() -> {
            if (Units.parse(text) instanceof UnitResult.Bad bad) {
                Held.within(bad.trouble().from(), bad.trouble().to(), text);
            }
            if (QuantityText.parse(text) instanceof QuantityResult.Bad bad) {
                Held.within(bad.trouble().from(), bad.trouble().to(), text);
            }
            if (StrengthText.parse(text) instanceof StrengthResult.Bad bad) {
                Held.within(bad.trouble().from(), bad.trouble().to(), text);
            }
        });
    }
}
