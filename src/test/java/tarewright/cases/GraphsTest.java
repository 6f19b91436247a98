package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.ResolvedGraph;
import tarewright.procedure.resolve.ResolvedGraph.Point;
import tarewright.procedure.resolve.ResolvedGraph.Scale;

/**
 * The axes that students plot on, and the points and the line that only the key shows. Ca 40.078 + C 12.011 + 3 × O 15.999 = 100.086 g/mol (IUPAC 2021): 0.50 mol/L of carbonate gives 0.050043 g
 * of chalk from a millilitre, up to 0.750645 g, where the 15.0 mL of calcium run out.
 */
class GraphsTest {
    private static final double SLOPE = 0.050043;

    private static Page chalk(String amount) {
        return new Page("Chalk").front("groups: 6").wasted()
                .block("apparatus", "cylinder: measuring cylinder, 25 mL; capacity 25 mL; graduation 0.5 mL", "balance: balance; capacity 200 g; reads to 0.01 g",
                        "thermometer: thermometer; range -10 to 110 °C; reads to 1 °C", "syringe: gas syringe; capacity 100 mL; graduation 1 mL")
                .block("reaction settling", "CaCl2(aq) + Na2CO3(aq) -> CaCO3(s) + NaCl(aq)", "limiting: varies")
                .block("solution calcium", "solute: CaCl2", "strength: 0.50 mol/L", "volume: 15.0 mL", "measure with: cylinder")
                .block("solution carbonate", "solute: Na2CO3", "strength: 0.50 mol/L", amount, "measure with: cylinder")
                .block("solid chalk", "substance: CaCO3", "made by: settling", "weigh with: balance");
    }

    private static Page dealt() {
        return chalk("vary: 10.0 mL; 20.0 mL; 25.0 mL");
    }

    private static ResolvedGraph graph(Page page, String x, String y, String... of) {
        Door.Outcome outcome = Door.open(page.block("graph g", "x: " + x, "y: " + y, of.length > 0 ? "of: " + of[0] : "").markdown());
        assertEquals(1, outcome.resolved().graphs().size(), outcome.findings().toString());
        return outcome.resolved().graphs().get(0);
    }

    private static void runs(double from, double to, Optional<Scale> scale) {
        assertEquals(from, scale.orElseThrow().from(), 1e-12);
        assertEquals(to, scale.orElseThrow().to(), 1e-12);
    }

    // --- points

    /** Each deal is a point, in the units of the axes: 10 mL give 0.500 g, 20 and 25 mL give 0.751 g. */
    @ParameterizedTest
    @CsvSource({"mass of chalk; 0 to 1 g,1", "mass of chalk; 0 to 1000 mg,1000", "chalk,1"})
    void eachDealIsAPointInTheUnitsOfTheAxes(String y, double scale) {
        List<Point> points = graph(dealt(), "volume of carbonate", y).expected();
        assertEquals(List.of(10.0, 20.0, 25.0), points.stream().map(p -> Math.rint(p.x() * 1e9) / 1e9).toList());
        assertEquals(List.of("1", "2", "3"), points.stream().map(Point::of).toList());
        assertEquals(10 * SLOPE * scale, points.get(0).y(), 1e-5 * scale);
        assertEquals(15 * SLOPE * scale, points.get(1).y(), 1e-5 * scale);
        assertEquals(15 * SLOPE * scale, points.get(2).y(), 1e-5 * scale);
    }

    /** Where nothing is dealt there is one point, and no line since nothing moves. */
    @Test
    void whereNothingIsDealtThereIsAPointAndNoLine() {
        ResolvedGraph graph = graph(chalk("volume: 10.0 mL"), "volume of carbonate", "mass of chalk");
        assertEquals(1, graph.expected().size());
        assertEquals(List.of(), graph.line());
    }

    // --- the line

    /** The line is the law: straight to the corner, then level; it ends where the axis ends, beyond the largest deal or before it. */
    @ParameterizedTest
    @CsvSource({"volume of carbonate,25", "volume of carbonate; 0 to 50 mL,50", "volume of carbonate; 0 to 20 mL,20", "volume of carbonate; 0 to 120 mL,120"})
    void theLineGoesToTheEndOfTheAxis(String x, double end) {
        List<Point> line = graph(dealt(), x, "mass of chalk; 0 to 1 g").line();
        assertEquals(3, line.size(), line.toString());
        assertEquals(0, line.get(0).x(), 0);
        assertEquals(0, line.get(0).y(), 1e-12);
        assertEquals(15, line.get(1).x(), 1e-6);
        assertEquals(15 * SLOPE, line.get(1).y(), 1e-5);
        assertTrue(line.get(2).x() <= end * (1 + 1e-9) && line.get(2).x() > 0.99 * end, line.toString());
        assertEquals(15 * SLOPE, line.get(2).y(), 1e-5);
    }

    /** 7.3 mL of calcium run out between two of the amounts that the line is worked for: the corner is where the two pieces meet, 7.3 mL and 0.36531 g, and not at the nearest of them. */
    @Test
    void theCornerIsWhereTheTwoPiecesMeet() {
        Door.Outcome outcome = Door.open(dealt().block("graph g", "x: volume of carbonate", "y: mass of chalk").markdown().replace("volume: 15.0 mL", "volume: 7.3 mL"));
        List<Point> line = outcome.resolved().graphs().get(0).line();
        assertEquals(3, line.size(), line.toString());
        assertEquals(7.3, line.get(1).x(), 1e-6);
        assertEquals(7.3 * SLOPE, line.get(1).y(), 1e-5);
        assertEquals(0, line.get(0).x(), 0);
        assertEquals(25, line.get(2).x(), 1e-9);
        assertEquals(7.3 * SLOPE, line.get(2).y(), 1e-5);
        assertEquals("g", outcome.resolved().graphs().get(0).name());
    }

    /** 10 mL at most never reach the turn: two points are a straight line. */
    @Test
    void aStraightLineHasTwoEnds() {
        List<Point> line = graph(chalk("vary: 5.0 mL; 10.0 mL"), "volume of carbonate", "mass of chalk").line();
        assertEquals(2, line.size(), line.toString());
        assertEquals(10, line.get(1).x(), 1e-9);
        assertEquals(10 * SLOPE, line.get(1).y(), 1e-5);
    }

    /** Mass over volume is not defined where nothing is poured; the line begins at the first volume and falls after the turn as 1/x. */
    @Test
    void whatIsNotDefinedIsLeftOut() {
        Page page = dealt().block("value gained", "is: mass of chalk / volume of carbonate", "unit: g/mL");
        List<Point> line = graph(page, "volume of carbonate", "gained").line();
        assertTrue(line.get(0).x() > 0 && line.get(0).x() < 1, line.toString());
        assertTrue(line.stream().allMatch(p -> Double.isFinite(p.y())));
        assertEquals(SLOPE, line.get(0).y(), 1e-5);
        assertEquals(15 * SLOPE / 25, line.get(line.size() - 1).y(), 1e-5);
    }

    /** V² is no straight line: as many corners as keep it within a thousandth of its height, 625, of the parabola. */
    @Test
    void aCurveIsAsManyPiecesAsTheEyeNeeds() {
        List<Point> line = graph(dealt().block("value square", "is: volume of carbonate ^ 2 / 1 mL", "unit: mL"), "volume of carbonate", "square").line();
        assertTrue(line.size() > 8 && line.size() < 60, "corners: " + line.size());
        assertEquals(625, line.get(line.size() - 1).y(), 1e-6);
        for (int i = 1; i < line.size(); i++) {
            Point a = line.get(i - 1);
            Point b = line.get(i);
            assertEquals(b.x() * b.x(), b.y(), 1e-6 * 625);
            double middle = (a.x() + b.x()) / 2;
            assertEquals(middle * middle, (a.y() + b.y()) / 2, 1.02e-3 * 625);
            assertTrue(b.x() > a.x());
        }
    }

    /** Along the mass of chalk, which does not grow beyond the turn, the strength of nothing changes: a figure that does not follow from the deal has no line. */
    @Test
    void whatDoesNotMoveHasNoLine() {
        assertEquals(List.of(), graph(dealt(), "volume of carbonate", "strength of calcium").line());
        assertEquals(3, graph(dealt(), "volume of carbonate", "strength of calcium").expected().size());
    }

    /** What students weigh is rounded to the balance, the law is not: the points stand on hundredths, the corner does not. */
    @Test
    void theLineIsNotRoundedByTheBalance() {
        Page page = dealt().block("reading weighed", "of: mass of chalk", "read with: balance");
        ResolvedGraph graph = graph(page, "volume of carbonate", "weighed; 0 to 1 g");
        assertEquals(0.50, graph.expected().get(0).y(), 1e-12);
        assertEquals(0.75, graph.expected().get(1).y(), 1e-12);
        assertEquals(15 * SLOPE, graph.line().get(1).y(), 1e-5);
    }

    // --- the numbers of the axes

    /** What is dealt, up to the most of it; what is typed likewise; what is read, as far as its instrument goes; a balance and an answer give no numbers. */
    @Test
    void theAxisIsNumberedByWhatIsKnownBeforehand() {
        runs(0, 25, graph(dealt(), "volume of carbonate", "mass of chalk").x().scale());
        runs(0, 16, graph(dealt(), "calcium", "mass of chalk").x().scale());
        assertTrue(graph(dealt(), "volume of carbonate", "mass of chalk").y().scale().isEmpty());
        assertTrue(graph(dealt(), "volume of carbonate", "moles of chalk").y().scale().isEmpty());
        assertEquals("mL", graph(dealt(), "volume of carbonate", "mass of chalk").x().unit().symbol());
        assertEquals("volume of carbonate", graph(dealt(), "volume of carbonate", "mass of chalk").x().words());
    }

    /** A thermometer of -10 to 110 °C, a cylinder up to 25 mL, a balance up to 200 g. */
    @ParameterizedTest
    @CsvSource({"expect: 31 °C,thermometer,-20,120", "expect: 12.0 mL,cylinder,0,25", "expect: 12.00 g,balance,none,none"})
    void aReadingGoesAsFarAsItsInstrument(String expected, String instrument, String from, String to) {
        ResolvedGraph graph = graph(dealt().block("reading r", expected, "read with: " + instrument), "volume of carbonate", "r");
        if (from.equals("none")) {
            assertTrue(graph.y().scale().isEmpty());
        } else {
            runs(Double.parseDouble(from), Double.parseDouble(to), graph.y().scale());
        }
    }

    /** A gas in a syringe of 100 mL goes as far as the syringe. */
    @Test
    void whatStandsInAVesselGoesAsFarAsTheVessel() {
        runs(0, 100, graph(fizz(), "mass of chalk", "volume of fizz").y().scale());
        runs(0, 0.2, graph(fizz(), "mass of chalk", "fizz").x().scale());
    }

    private static Page fizz() {
        return new Page("Fizz").wasted().block("apparatus", "syringe: gas syringe; capacity 100 mL; graduation 1 mL")
                .block("reaction fizzing", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)").block("solid chalk", "substance: CaCO3", "vary: 0.10 g; 0.20 g")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 10 mL").block("gas fizz", "substance: CO2", "made by: fizzing", "in: syringe");
    }

    /** What nobody computes has the author's words and range; a range of what is computed goes before all else. */
    @Test
    void theAuthorsRangeGoesFirst() {
        ResolvedGraph graph = graph(dealt(), "volume of carbonate; 0 to 30 mL", "absorbance; 0 to 1.2");
        runs(0, 30, graph.x().scale());
        runs(0, 1.2, graph.y().scale());
        assertEquals("absorbance", graph.y().words());
        assertEquals(List.of(), graph.expected());
        assertEquals(List.of(), graph.line());
    }

    /**
     * The shortest scale of at most ten steps of 1, 2 or 5 times a power of ten, from at most the lower to at least the upper end (120 seeded ranges): it holds the range, and no finer step would
     * do. Its numbers are the multiples of the step.
     */
    @Test
    void aScaleHoldsItsRangeInAtMostTenRoundSteps() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 120; i++) {
            double size = Math.pow(10, random.nextInt(-3, 4));
            double from = i % 3 == 0 ? 0 : Math.rint(random.nextDouble(-50, 50)) * size / 10;
            double to = from + Math.rint(random.nextDouble(1, 99)) * size / 10;
            Scale scale = graph(chalk("volume: 10.0 mL"), "volume of carbonate", String.format(Locale.ROOT, "shade; %.5f to %.5f", from, to)).y().scale().orElseThrow();
            double hair = 1e-6 * scale.step();
            assertTrue(scale.from() <= from + hair && scale.to() >= to - hair, scale + " for " + from + " to " + to);
            assertTrue(scale.from() > from - scale.step() + hair && scale.to() < to + scale.step() - hair, scale + " for " + from + " to " + to);
            double mantissa = scale.step() / Math.pow(10, Math.floor(Math.log10(scale.step() * (1 + 1e-9))));
            double finer = scale.step() / (Math.rint(mantissa) == 5 ? 2.5 : 2);
            assertTrue(List.of(1L, 2L, 5L).contains(Math.round(mantissa)), scale.toString());
            assertTrue((scale.to() - scale.from()) / scale.step() <= 10 + 1e-6, scale.toString());
            assertTrue(Math.ceil(to / finer - 1e-6) - Math.floor(from / finer + 1e-6) > 10, "a finer step would do: " + scale);
            List<Double> ticks = scale.ticks();
            assertEquals(scale.from(), ticks.get(0), 1e-12);
            assertEquals(scale.to(), ticks.get(ticks.size() - 1), hair);
            ticks.forEach(t -> assertEquals(Math.rint(t / scale.step()), t / scale.step(), 1e-6));
            double digits = scale.step() * Math.pow(10, scale.decimals());
            assertEquals(Math.rint(digits), digits, 1e-6, "so many decimals write the step");
            assertTrue(scale.decimals() == 0 || Math.abs(digits / 10 - Math.rint(digits / 10)) > 1e-6, "and no fewer");
        }
    }

    // --- a dilution series

    private static Page ladder() {
        return new Page("Ladder").wasted().block("apparatus", "pipette: graduated pipette; graduation 0.1 mL").block("solution stock", "solute: CuSO4", "strength: 0.40 mol/L")
                .block("solution ladder", "made from: stock", "series: 1.0 mL; 2.0 mL; 5.0 mL", "made up to: 10.0 mL", "measure with: pipette");
    }

    /** 0.04, 0.08, 0.20 mol/L; 1, 2, 5 mL. Strengths go as far as the bottle's, 0.40 mol/L, what is measured out as far as the most; amounts of substance are an answer. */
    @Test
    void theMembersOfASeriesAreItsPoints() {
        ResolvedGraph graph = graph(ladder(), "strength of ladder", "volume of ladder", "ladder");
        assertEquals(List.of("ladder 1", "ladder 2", "ladder 3"), graph.expected().stream().map(Point::of).toList());
        assertEquals(0.08, graph.expected().get(1).x(), 1e-12);
        assertEquals(2.0, graph.expected().get(1).y(), 1e-12);
        runs(0, 0.4, graph.x().scale());
        runs(0, 5, graph.y().scale());
        assertEquals("strength of ladder", graph.x().words());
        runs(0, 5, graph(ladder(), "ladder", "absorbance; 0 to 1", "ladder").x().scale());
        assertTrue(graph(ladder(), "moles of ladder", "absorbance; 0 to 1", "ladder").x().scale().isEmpty());
        runs(0, 1, graph(ladder(), "strength of ladder; 0 to 1 mol/L", "absorbance; 0 to 1", "ladder").x().scale());
    }

    /** An axis that no member has any figure for is told once for each of them. */
    @Test
    void aFigureThatMembersDoNotHaveIsTold() {
        Door.Outcome outcome = Door.open(ladder().block("graph g", "x: length of ladder", "y: absorbance; 0 to 1", "of: ladder").markdown());
        assertTrue(outcome.ids(Severity.ERROR).contains("no-such-figure"), outcome.findings().toString());
        assertEquals(List.of(), outcome.resolved().graphs());
    }

    /** The points may belong to a reaction; a series that is not there is told with those that are. */
    @Test
    void aSeriesThatIsNotThereIsToldWithThoseThatAre() {
        assertEquals(1, graph(dealt(), "volume of carbonate", "mass of chalk", "settling").x().scale().stream().count());
        Door.Outcome outcome = Door.open(ladder().block("graph g", "x: strength of ladder 1", "y: absorbance; 0 to 1", "of: laddr").markdown());
        Finding finding = outcome.errors().stream().filter(f -> f.id().equals("unknown-name")).findFirst().orElseThrow();
        assertEquals("series", finding.fields().get("wanted"));
        assertEquals(List.of("ladder"), finding.fields().get("suggestions"));
        assertEquals("laddr", finding.at().text());
    }

    /** Without a range an axis of a name that stands for nothing is a slip. */
    @Test
    void anAxisOfNothingIsTold() {
        Door.Outcome outcome = Door.open(dealt().block("graph g", "x: volume of carbonate", "y: absorbance").markdown());
        assertTrue(outcome.ids(Severity.ERROR).contains("unknown-name"), outcome.findings().toString());
        assertEquals(List.of(), outcome.resolved().graphs());
    }

    /** A range in grams for a volume: both kinds are named, at the range. */
    @Test
    void aRangeOfAnotherKindIsTold() {
        Door.Outcome outcome = Door.open(dealt().block("graph g", "x: volume of carbonate; 0 to 5 g", "y: mass of chalk").markdown());
        Finding finding = outcome.errors().stream().filter(f -> f.id().equals("axis-kind")).findFirst().orElseThrow();
        assertEquals("0 to 5 g", finding.at().text());
        assertEquals("volume", finding.fields().get("kind"));
        assertEquals("mass", finding.fields().get("otherKind"));
    }
}
