package tarewright.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Step.Power;

/** The accepted range: the formula where it holds, a class on paper near a turn of the limiting reactant. */
class AcceptedTest {
    private static Accepted around(Figure figure) {
        return Accepted.around(new ByReadings(figure, List.of()));
    }

    /** Eurachem/CITAC Guide CG 4, example A1: 1002.7 mg/L, expanded uncertainty 1.8 mg/L with a coverage factor of 2; volume and mass matter most. */
    @Test
    void theCadmiumStandard() {
        Figure mass = Nodes.input(100.28, 0.05);
        Figure purity = Nodes.input(0.9999, 0.000058);
        Figure volume = Nodes.input(100.0, 0.07);
        Accepted accepted = around(Nodes.of(new Step.Product(1000, List.of(new Power(mass, 1), new Power(purity, 1), new Power(volume, -1)))));
        assertEquals(1002.7 - 1.8, accepted.from(), 0.1);
        assertEquals(1002.7 + 1.8, accepted.to(), 0.1);
        assertEquals(0.9, accepted.standardUncertainty(), 0.05);
        assertEquals(List.of(volume, mass), accepted.mostImportant().stream().map(Gradient.Part::source).toList());
        assertFalse(accepted.drawn());
    }

    /** The author's own range: 5 ± 0.3, whatever the instruments say, and what they say stays known. */
    @Test
    void whatTheAuthorAllows() {
        Figure x = Nodes.input(5, 0.01);
        Accepted accepted = Accepted.within(new ByReadings(x, List.of()), 0.3);
        assertEquals(4.7, accepted.from());
        assertEquals(5.3, accepted.to());
        assertEquals(0.01, accepted.standardUncertainty());
        assertEquals(x, accepted.mostImportant().get(0).source());
        assertFalse(accepted.drawn());
    }

    @Test
    void theEndsAreAccepted() {
        Accepted accepted = Accepted.within(new ByReadings(Nodes.exact(5), List.of()), 0.25);
        assertTrue(accepted.holds(4.75));
        assertTrue(accepted.holds(5));
        assertTrue(accepted.holds(5.25));
        assertFalse(accepted.holds(Math.nextDown(4.75)));
        assertFalse(accepted.holds(Math.nextUp(5.25)));
    }

    /**
     * The lesser of two alike, each rectangular over 1 ± a: P(least < x) = 1 - (1 - (x - 1 + a)/2a)². Its middle 95 % runs from the share 1 - √0.975 of the
     * width to 1 - √0.025. The formula would have given 1 ± 2u, which runs beyond both.
     */
    @Test
    void atATurnTheRangeIsDrawn() {
        double u = 0.01;
        double a = u * Math.sqrt(3);
        Accepted accepted = around(Nodes.least(Nodes.input(1, u), Nodes.input(1, u)));
        assertTrue(accepted.drawn());
        assertEquals(1 - a + 2 * a * (1 - Math.sqrt(0.975)), accepted.from(), 0.01 * a);
        assertEquals(1 - a + 2 * a * (1 - Math.sqrt(0.025)), accepted.to(), 0.02 * a);
        assertEquals(u, accepted.standardUncertainty(), 1e-15);
    }

    /** The same class each time: two prints of one key agree. */
    @Test
    void theSameRangeEachTime() {
        Figure least = Nodes.least(Nodes.input(1, 0.01), Nodes.input(1.01, 0.02));
        assertEquals(around(least), around(least));
    }

    /** The difference of two of u = 0.01 has √2 × 0.01; three of those are 0.0424. On either side of it, whichever is chosen, whichever way. */
    @Test
    void farFromATurnTheFormulaHolds() {
        for (boolean least : List.of(true, false)) {
            for (boolean chosenFirst : List.of(true, false)) {
                assertTrue(turns(least, chosenFirst, 0.041));
                assertFalse(turns(least, chosenFirst, 0.044));
            }
        }
    }

    private static boolean turns(boolean least, boolean chosenFirst, double apart) {
        Figure chosen = Nodes.input(1, 0.01);
        Figure other = Nodes.input(least ? 1 + apart : 1 - apart, 0.01);
        return around(Nodes.of(new Step.Extreme(least, chosenFirst ? List.of(chosen, other) : List.of(other, chosen)))).drawn();
    }

    /** An error that both share cannot make one pass the other: 1 x and 1.1 x, with x known to a tenth. */
    @Test
    void aSharedErrorTurnsNothing() {
        Figure x = Nodes.input(1, 0.1);
        assertFalse(around(Nodes.least(Nodes.product(x, Nodes.exact(1)), Nodes.product(x, Nodes.exact(1.1)))).drawn());
        assertTrue(around(Nodes.least(Nodes.product(x, Nodes.exact(1)), Nodes.product(Nodes.input(1, 0.1), Nodes.exact(1.1)))).drawn());
    }

    /** Two exact amounts in the very proportion of the equation do not turn: nothing can move them. */
    @Test
    void exactAmountsDoNotTurn() {
        assertFalse(around(Nodes.least(Nodes.exact(1), Nodes.exact(1))).drawn());
        assertFalse(around(Nodes.least(Nodes.input(1, 0.1))).drawn());
    }

    /** A turn anywhere behind the answer counts, save behind what was set: the students have that amount in hand. */
    @Test
    void aTurnBehindTheAnswer() {
        Figure least = Nodes.least(Nodes.input(1, 0.01), Nodes.input(1, 0.01));
        assertTrue(around(Nodes.product(Nodes.exact(3), Nodes.difference(Nodes.exact(5), least))).drawn());
        assertFalse(around(Nodes.product(Nodes.exact(3), Nodes.set(least, 0.1, 0.01))).drawn());
    }

    @Test
    void aTurnIsLookedForOnceAFigure() {
        assertFalse(around(Nodes.doubled(Nodes.input(1, 0.1))).drawn());
        assertTrue(around(Nodes.doubled(Nodes.least(Nodes.input(1, 0.1), Nodes.input(1, 0.1)))).drawn());
    }
}
