package tarewright.fuzz;

import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;

/** Any text as a formula. */
public final class FormulaTarget {
    private FormulaTarget() {
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        String text = Held.text(bytes);
        Held.soon(() -> {
            if (Formula.parse(text) instanceof FormulaResult.Bad bad) {
                Held.within(bad.trouble().from(), bad.trouble().to(), text);
            }
        });
    }
}
