package tarewright.fuzz;

import tarewright.chemistry.Equation;
import tarewright.chemistry.EquationResult;

/** Any text as an equation, balanced where it can be read. */
public final class EquationTarget {
    private EquationTarget() {
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        String text = Held.text(bytes);
        Held.soon(() -> {
            if (Equation.parse(text) instanceof EquationResult.Bad bad) {
                bad.troubles().forEach(t -> Held.within(t.from(), t.to(), text));
            }
        });
    }
}
