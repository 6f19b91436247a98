package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Accepted;
import tarewright.procedure.resolve.Resolved;

/** Near the point where the limiting reactant changes the key says so and prints the range that invented groups would find. */
class LimitingTurnTest {
    private static final String SAID = "This range was drawn with invented groups, since the limiting reactant may turn.";
    private static final int DRAWS = 400_000;

    private static String procedure(String volume) {
        return """
                ---
                title: Close to even
                ---

                ```reaction dissolving
                Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)
                limiting: varies
                ```

                ```solid ribbon
                substance: magnesium
                mass: 0.100 ± 0.004 g
                ```

                ```solution acid
                solute: HCl
                strength: 1.00 mol/L
                volume: VOLUME ± 0.20 mL
                ```

                ```gas hydrogen
                substance: hydrogen
                made by: dissolving
                ```

                1. How much hydrogen comes off?

                   ```answer
                   value: moles of hydrogen
                   unit: mmol
                   shown to: 3 decimals
                   ```

                ```waste
                into: dilute acid waste
                ```
                """.replace("VOLUME", volume);
    }

    /**
     * 0.100 g / 24.305 g/mol = 4.114 mmol of magnesium (atomic weight: Prohaska et al. 2022) and 8.23 mL × 1.00 mol/L / 2 = 4.115 mmol by the acid. Worked out
     * here a second time, from the amounts alone: the middle 95 % of the lesser of the two (JCGM 101:2008, 7.7).
     */
    @Test
    void theDrawnRangeIsPrintedAndSaid() {
        Resolved resolved = Fixture.resolve(procedure("8.23"));
        String key = Fixture.text(Fixture.sheet(Sheet.Kind.KEY, resolved));
        assertTrue(key.contains(SAID), key);
        SplittableRandom random = new SplittableRandom(5);
        double[] lesser = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double metal = (0.100 + 0.004 * (2 * random.nextDouble() - 1)) / 24.305;
            double strength = 1.00 + 0.005 * (2 * random.nextDouble() - 1);
            double acid = (8.23 + 0.20 * (2 * random.nextDouble() - 1)) / 1000 * strength / 2;
            lesser[i] = 1000 * Math.min(metal, acid);
        }
        Arrays.sort(lesser);
        double from = lesser[DRAWS / 40];
        double to = lesser[DRAWS - DRAWS / 40];
        Accepted accepted = resolved.answers().get(0).accepted().orElseThrow();
        assertEquals(from, accepted.from() * 1000, 0.003);
        assertEquals(to, accepted.to() * 1000, 0.003);
        Matcher printed = Pattern.compile("([0-9.]+) mmol to ([0-9.]+) mmol|([0-9.]+) to ([0-9.]+) mmol").matcher(key.substring(0, key.indexOf(SAID)));
        boolean found = false;
        double low = 0;
        double high = 0;
        while (printed.find()) {
            found = true;
            low = Double.parseDouble(printed.group(1) == null ? printed.group(3) : printed.group(1));
            high = Double.parseDouble(printed.group(2) == null ? printed.group(4) : printed.group(2));
        }
        assertTrue(found, key);
        // Printed to two figures of the uncertainty.
        assertEquals(from, low, 0.01);
        assertEquals(to, high, 0.01);
        // The formula, twice the uncertainty of the one that is less by a hair, would have promised more than any group can find.
        double formula = resolved.answers().get(0).value().orElseThrow().value() * 1000 + 2000 * accepted.standardUncertainty();
        assertTrue(to < formula - 0.02, to + " " + formula);
    }

    /** With twice the acid nothing can turn: the formula holds and nothing is said of invented groups. */
    @Test
    void farFromItNothingIsSaid() {
        Resolved resolved = Fixture.resolve(procedure("16.46"));
        assertFalse(resolved.answers().get(0).accepted().orElseThrow().drawn());
        assertFalse(Fixture.text(Fixture.sheet(Sheet.Kind.KEY, resolved)).contains(SAID));
    }
}
