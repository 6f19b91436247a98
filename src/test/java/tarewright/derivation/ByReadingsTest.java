package tarewright.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Step.Term;
import tarewright.quantity.Rounding;

/** In the pot the true values, on paper the face values. */
class ByReadingsTest {
    private static final int DRAWS = 40_000;

    private static double rss(double... parts) {
        return Math.sqrt(Arrays.stream(parts).map(p -> p * p).sum());
    }

    private static void agrees(ByReadings result) {
        Spread spread = Spread.of(result.draws(DRAWS, new SplittableRandom(16_540_729L)));
        assertEquals(result.standardUncertainty(), spread.deviation(), 0.05 * spread.deviation());
        assertEquals(result.result().value(), spread.mean(), 0.1 * spread.deviation() + 1e-12);
    }

    /**
     * A titration: the titre is c(acid) V(pipette) / c(base), and the acid's strength is worked out as c(base) × titre / V(pipette). The pipette that delivers 0.3 %
     * too much makes a titre 0.3 % too large, which is divided by the nominal volume. So every relative uncertainty counts, once: √(0.4² + 0.3² + 1.2²) = 1.3 %. The
     * formula alone would let pipette and base cancel.
     */
    @Test
    void thePipetteShowsInTheTitre() {
        Figure acid = Nodes.exact(0.1);
        Figure base = Nodes.input(0.12, 0.12 * 0.004);
        Figure pipette = Nodes.input(25, 25 * 0.003);
        Figure titre = Nodes.read(Nodes.quotient(Nodes.product(acid, pipette), base), 0.012 * 0.1 * 25 / 0.12);
        Figure strength = Nodes.quotient(Nodes.product(base, titre), pipette);
        ByReadings result = new ByReadings(strength, List.of(titre));
        assertEquals(0.1 * 0.013, result.standardUncertainty(), 1e-12);
        assertEquals(0.1 * 0.012, strength.standardUncertainty(), 1e-12);
        assertEquals(List.of(titre, base), result.largest(2).stream().map(Gradient.Part::source).toList());
        // -0.1/0.12: a stronger base makes a smaller titre.
        assertEquals(-0.1 / 0.12, result.largest(2).get(1).derivative(), 1e-9);
        agrees(result);
    }

    /**
     * The end temperature follows from the start's in the pot, but on paper each is a number of its own: of their difference only the rise and the end's reading
     * are uncertain, √(0.03² + 0.04²) = 0.05, and the room's temperature is not.
     */
    @Test
    void aReadingThatFollowsFromAnotherStandsForItselfOnPaper() {
        Figure start = Nodes.read(Nodes.input(20, 0.3), 0.014);
        Figure rise = Nodes.input(2.6, 0.03);
        Figure end = Nodes.read(Figure.of(Symbol.words("end"), start.unit(), new Step.Sum(List.of(new Term(1, start), new Term(1, rise)))), 0.04);
        Figure warming = Figure.of(Symbol.words("warming"), start.unit(), new Step.Sum(List.of(new Term(1, end), new Term(-1, start))));
        ByReadings result = new ByReadings(warming, List.of(start, end));
        assertEquals(0.05, result.standardUncertainty(), 1e-12);
        agrees(result);
    }

    /** A strength that stands in the formula alone counts as usual: √(0.03² + 0.04²) = 0.05. */
    @Test
    void whatNoReadingKnowsOfCountsAsUsual() {
        Figure factor = Nodes.input(1, 0.04);
        Figure reading = Nodes.read(Nodes.exact(1), 0.03);
        ByReadings result = new ByReadings(Nodes.product(factor, reading), List.of(reading));
        assertEquals(0.05, result.standardUncertainty(), 1e-12);
        assertEquals(List.of(factor, reading), result.largest(2).stream().map(Gradient.Part::source).toList());
        agrees(result);
    }

    /** Three titres of one truth: their own errors shrink by √3, what they share does not. √(0.06²/3 + 0.05²). */
    @Test
    void aMeanShrinksOnlyWhatIsNotShared() {
        Figure truth = Nodes.input(20, 0.05);
        Figure[] titres = {Nodes.read(truth, 0.06), Nodes.read(truth, 0.06), Nodes.read(truth, 0.06)};
        Figure mean = Nodes.mean(titres);
        List<Figure> all = new ArrayList<>(List.of(titres));
        ByReadings alone = new ByReadings(mean, all);
        assertEquals(rss(0.06 / Math.sqrt(3), 0.05), alone.standardUncertainty(), 1e-12);
        agrees(alone);
        // The mean may be declared a reading itself: it is gone through all the same.
        all.add(mean);
        assertEquals(alone.standardUncertainty(), new ByReadings(mean, all).standardUncertainty(), 1e-12);
    }

    /** Weighing by difference: two readings, and what lies in the vessel both times cancels (Eurachem/CITAC CG 4, A2: two of 0.09 mg make 0.13 mg). */
    @Test
    void whatBothWeighingsHoldCancels() {
        Figure vessel = Nodes.input(60.1562, 0.5);
        Figure solid = Nodes.exact(0.3888);
        Figure tare = Nodes.read(vessel, 0.00009);
        Figure gross = Nodes.read(Nodes.of(new Step.Sum(List.of(new Term(1, vessel), new Term(1, solid)))), 0.00009);
        Figure mass = Nodes.difference(gross, tare);
        ByReadings result = new ByReadings(mass, List.of(tare, gross, mass));
        assertEquals(0.00013, result.standardUncertainty(), 0.000005);
        agrees(result);
    }

    /** The square of a reading: 2 x u, with x = 3. Used in two places it counts once. */
    @Test
    void aReadingUsedTwiceCountsOnce() {
        Figure reading = Nodes.read(Nodes.exact(3), 0.01);
        ByReadings result = new ByReadings(Nodes.product(reading, reading), List.of(reading));
        assertEquals(0.06, result.standardUncertainty(), 1e-12);
        assertEquals(1, result.largest(9).size());
        assertEquals(6, result.largest(9).get(0).derivative(), 1e-12);
        agrees(result);
    }

    @Test
    void aReadingAloneIsItsOwnResult() {
        Figure reading = Nodes.read(Nodes.input(3, 0.04), 0.03);
        ByReadings result = new ByReadings(reading, List.of(reading));
        assertEquals(0.05, result.standardUncertainty(), 1e-12);
        agrees(result);
    }

    /** What the result does not use does not count, and the formula's own derivation is used where there is no reading. */
    @Test
    void otherReadingsAreLeftAside() {
        Figure x = Nodes.input(2, 0.1);
        Figure other = Nodes.read(x, 5);
        ByReadings result = new ByReadings(Nodes.product(x, Nodes.exact(3)), List.of(other));
        assertEquals(0.3, result.standardUncertainty(), 1e-12);
        agrees(result);
    }

    /** A table value with an uncertainty of its own, looked up at a temperature that is uncertain too: both count, on paper as in the formula. √(0.3² + 0.4²) = 0.5. */
    @Test
    void onPaperAnErrorComesOnTopOfWhatPasses() {
        Figure temperature = Nodes.input(20, 0.1);
        Figure density = Nodes.of(new Step.Relation("density", "a straight line", List.of(temperature), of -> 3 * of[0])).uncertain(0.4);
        ByReadings result = new ByReadings(Nodes.product(density, Nodes.exact(1)), List.of());
        assertEquals(0.5, result.standardUncertainty(), 1e-6);
        agrees(result);
    }

    /** On paper too what was set keeps its target, and what a bystander reads passes as it is, not in steps of its divisions. */
    @Test
    void onPaperWhatIsSetKeepsItsTarget() {
        Figure x = Nodes.input(1, 0.1);
        ByReadings set = new ByReadings(Nodes.product(x, Nodes.set(x, 0.01, 0)), List.of());
        assertEquals(0.1, set.standardUncertainty(), 1e-12);
        agrees(set);
        Figure coarse = Nodes.of(new Step.Read(x, new Rounding(Rounding.Direction.NEAREST, 1)));
        agrees(new ByReadings(Nodes.product(coarse, Nodes.exact(2)), List.of()));
    }

    /** A reading of coarse divisions moves the result all the same: the slope is that of the formula. */
    @Test
    void aCoarseReadingStillMovesTheResult() {
        Figure truth = Nodes.input(10.3, 0.5);
        Figure coarse = Nodes.of(new Step.Read(truth, new Rounding(Rounding.Direction.NEAREST, 1))).uncertain(0.3);
        ByReadings result = new ByReadings(Nodes.quotient(Nodes.exact(100), coarse), List.of(coarse));
        // d(100/x)/dx = -100/x² = -1 at the reading's 10.
        assertEquals(rss(0.5, 0.3), result.standardUncertainty(), 1e-9);
    }

    /** One seed, one class; and drawing on goes on. */
    @Test
    void oneSeedGivesOneClass() {
        Figure reading = Nodes.read(Nodes.input(3, 0.04), 0.03);
        ByReadings result = new ByReadings(Nodes.product(reading, Nodes.input(1, 0.1)), List.of(reading));
        double[] once = result.draws(10, new SplittableRandom(7));
        assertEquals(Arrays.toString(once), Arrays.toString(result.draws(10, new SplittableRandom(7))));
        assertNotEquals(once[0], once[9]);
    }

    @Test
    void eachFigureIsLookedAtOnce() {
        Figure reading = Nodes.read(Nodes.input(3, 0.04), 0.03);
        ByReadings result = new ByReadings(Nodes.doubled(reading), List.of(reading));
        assertEquals(0.05, result.standardUncertainty(), 1e-12);
    }

    /** A law, over seeded random derivations: first order agrees with the draws within 5 %, whatever pot and paper share. */
    @Test
    void firstOrderAgreesWithTheDraws() {
        SplittableRandom random = new SplittableRandom(18_090_212L);
        for (int round = 0; round < 60; round++) {
            List<Figure> sources = new ArrayList<>();
            for (int k = 0; k < 4; k++) {
                sources.add(source(random, sources));
            }
            List<Figure> readings = new ArrayList<>();
            for (int k = 0; k < 3; k++) {
                Figure truth = step(random, pick(random, sources), pick(random, sources));
                readings.add(Nodes.read(truth, truth.value() * 0.01 * random.nextDouble()));
            }
            readings.add(Nodes.read(readings.get(0).from().get(0), 0.01));
            Figure mean = Nodes.mean(readings.get(0), readings.get(3));
            Figure difference = Nodes.of(new Step.Sum(List.of(new Term(3, readings.get(1)), new Term(-0.2, readings.get(2)))));
            Figure result = step(random, step(random, mean, pick(random, sources)), step(random, difference, pick(random, sources)));
            readings.add(mean);
            agrees(new ByReadings(result, readings));
        }
    }

    private static Figure pick(SplittableRandom random, List<Figure> figures) {
        return figures.get(random.nextInt(figures.size()));
    }

    /** A value between 1 and 3 known to between 0.2 and 1 %: given, set after another, or looked up at another. */
    private static Figure source(SplittableRandom random, List<Figure> before) {
        double value = 1 + 2 * random.nextDouble();
        double u = value * (0.002 + 0.008 * random.nextDouble());
        return switch (before.isEmpty() ? 0 : random.nextInt(3)) {
            case 0 -> Nodes.input(value, u);
            case 1 -> Nodes.set(pick(random, before), 0.05, u);
            default -> Nodes.of(new Step.Relation("root", "analysis", List.of(pick(random, before)), of -> Math.sqrt(of[0]))).uncertain(u);
        };
    }

    private static Figure step(SplittableRandom random, Figure a, Figure b) {
        return switch (random.nextInt(3)) {
            case 0 -> Nodes.quotient(a, b);
            case 1 -> Nodes.of(new Step.Product(0.5, List.of(new Power(a, 1), new Power(b, 2))));
            default -> Nodes.of(new Step.Sum(List.of(new Term(2, a), new Term(0.5, b))));
        };
    }
}
