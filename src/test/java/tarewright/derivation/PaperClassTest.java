package tarewright.derivation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tarewright.quantity.Rounding;

/** Invented groups, each with errors of its own. */
class PaperClassTest {
    private static final int DRAWS = 40_000;

    private static double[][] draws(Figure... figures) {
        PaperClass paper = new PaperClass(List.of(figures));
        SplittableRandom random = new SplittableRandom(16_270_121L);
        return IntStream.range(0, DRAWS).mapToObj(i -> paper.draw(random)).toArray(double[][]::new);
    }

    private static double[] column(double[][] draws, int at) {
        return Arrays.stream(draws).mapToDouble(d -> d[at]).toArray();
    }

    /** JCGM 100:2008, 4.3.7: a rectangular distribution of half-width a has the standard deviation a/√3, and every quarter of it as many draws. */
    @Test
    void errorsAreRectangular() {
        double[] drawn = column(draws(Nodes.input(10, 0.1)), 0);
        double a = 0.1 * Math.sqrt(3);
        Spread spread = Spread.of(drawn);
        assertEquals(10, spread.mean(), 0.003);
        assertEquals(0.1, spread.deviation(), 0.001);
        assertTrue(Arrays.stream(drawn).allMatch(d -> d >= 10 - a && d <= 10 + a));
        for (int quarter = 0; quarter < 4; quarter++) {
            double from = 10 - a + quarter * a / 2;
            assertEquals(0.25, Arrays.stream(drawn).filter(d -> d >= from && d < from + a / 2).count() / (double) DRAWS, 0.01);
        }
    }

    /** One flask serves the whole group: what two figures share is the same in each draw, and results come in the order asked for. */
    @Test
    void whatIsSharedIsSharedInEachDraw() {
        Figure flask = Nodes.input(10, 0.1);
        Figure aliquot = Nodes.product(flask, Nodes.exact(2));
        for (double[] draw : draws(aliquot, flask, aliquot)) {
            assertEquals(2 * draw[1], draw[0]);
            assertEquals(draw[0], draw[2]);
        }
    }

    /** Two readings of one truth differ by their own errors: the spread of the difference is √2 of each. */
    @Test
    void readingsOfOneTruthHaveErrorsOfTheirOwn() {
        Figure truth = Nodes.input(10, 1);
        double[][] draws = draws(Nodes.difference(Nodes.read(truth, 0.03), Nodes.read(truth, 0.03)));
        assertEquals(0.03 * Math.sqrt(2), Spread.of(column(draws, 0)).deviation(), 0.001);
    }

    /** What was set keeps its target, 12 of divisions of 4, whatever the target stands on; its own error shows. */
    @Test
    void whatIsSetKeepsItsTarget() {
        Spread set = Spread.of(column(draws(Nodes.set(Nodes.input(11, 2), 4, 0.05)), 0));
        assertEquals(12, set.mean(), 0.002);
        assertEquals(0.05, set.deviation(), 0.001);
        assertEquals(0, Spread.of(column(draws(Nodes.set(Nodes.input(11, 2), 4, 0)), 0)).deviation());
    }

    /** The stated error of a reading already holds the rounding: no second one comes on top. */
    @Test
    void whatIsReadIsTheTruthWithTheErrorOfTheReading() {
        Figure read = Nodes.of(new Step.Read(Nodes.exact(10.3), new Rounding(Rounding.Direction.NEAREST, 1)));
        assertEquals(10, read.value());
        assertEquals(10.3, draws(read)[0][0]);
        Spread spread = Spread.of(column(draws(read.uncertain(0.2)), 0));
        assertEquals(10.3, spread.mean(), 0.005);
        assertEquals(0.2, spread.deviation(), 0.002);
    }

    @Test
    void oneSeedGivesOneClass() {
        Figure x = Nodes.input(10, 0.1);
        assertArrayEquals(column(draws(x), 0), column(draws(x), 0));
        assertNotEquals(draws(x)[0][0], draws(x)[1][0]);
    }

    @Test
    void eachFigureIsDrawnOnce() {
        Figure x = Nodes.input(10, 0.1);
        double[] draw = draws(x, Nodes.doubled(x))[7];
        assertEquals(draw[0], draw[1], 1e-12);
    }
}
