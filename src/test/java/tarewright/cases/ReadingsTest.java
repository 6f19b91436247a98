package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.ResolvedReading;

/** What the students are expected to read off, on which instrument and with how many digits, and what the author is told where readings do not fit together. */
class ReadingsTest {
    private static Page kit(String title) {
        return new Page(title).wasted().block("apparatus", "balance: balance; reads to 0.01 g", "cylinder: measuring cylinder, 25 mL; graduation 0.5 mL",
                "syringe: gas syringe; capacity 100 mL; graduation 1 mL", "thermometer: thermometer; reads to 0.1 °C", "burette: burette, 50 mL; graduation 0.1 mL; within 0.05 mL");
    }

    private static ResolvedReading reading(Door.Outcome outcome, String name) {
        return outcome.resolved().reading(name).orElseThrow(() -> new AssertionError("no reading " + name + ": " + outcome.findings()));
    }

    private static void shows(double value, String unit, int decimals, Figure figure) {
        assertEquals(unit, figure.unit().symbol());
        assertEquals(value, figure.shownValue(), 1e-9);
        assertEquals(decimals, figure.decimals().orElseThrow());
    }

    // --- the instrument and its digits

    /** 5.0 mmol at 0.31 mol/L are 16.129 mL. Read in halves of a millilitre 16.0 mL; in tenths, as the author asks for litres, 0.0160 L; without an instrument, the volume itself. */
    @Test
    void aReadingIsRoundedToItsInstrumentAndShownInTheUnitAskedFor() {
        Door.Outcome outcome = Door.open(kit("Volumes").block("solution acid", "solute: HCl", "strength: 0.31 mol/L", "moles: 5.0 mmol")
                .block("reading marks", "of: volume of acid", "read with: cylinder").block("value half", "is: volume of acid / 2", "unit: mL")
                .block("reading litres", "of: half", "unit: L", "read with: cylinder").block("reading poured", "of: strength of acid").block("reading free", "expect: 2 * volume of acid", "unit: L")
                .markdown()).sound();
        shows(16.0, "mL", 1, reading(outcome, "marks").value());
        assertEquals(16.129, reading(outcome, "marks").value().from().get(0).shownValue(), 5e-4);
        shows(0.008, "L", 4, reading(outcome, "litres").value());
        assertEquals(0.31, reading(outcome, "poured").value().shownValue(), 1e-12);
        assertEquals(0.0322581, reading(outcome, "free").value().shownValue(), 1e-6);
        assertEquals("L", reading(outcome, "free").value().unit().symbol());
        assertEquals(List.of("cylinder", "cylinder"), List.of("marks", "litres").stream().map(n -> reading(outcome, n).instrument().orElseThrow().name()).toList());
    }

    /** Half a division either way, rectangular: 0.25 mL / √3 for a cylinder of halves (JCGM 100:2008, 4.3.7), on top of what the true volume is uncertain by. */
    @Test
    void aReadingIsUncertainByHalfADivision() {
        Door.Outcome outcome = Door.open(kit("Halves").block("reading level", "expect: 16.13 mL", "read with: cylinder").markdown()).sound();
        Figure level = reading(outcome, "level").value();
        shows(16.0, "mL", 1, level);
        assertEquals(0.25e-6 / Math.sqrt(3), level.ownUncertainty(), 1e-15);
        assertInstanceOf(Origin.Expected.class, assertInstanceOf(Step.Given.class, level.from().get(0).step()).origin());
    }

    /** Where a reading names no instrument it is the one that the block is measured with, else the vessel that it is in. */
    @Test
    void theInstrumentOfTheBlockIsRead() {
        Door.Outcome outcome = Door.open(kit("Whose").front("gases: ideal").front("room: 20 °C; 101.3 kPa").block("reaction dissolving", "Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)")
                .block("solid ribbon", "substance: Mg", "mass: 0.08 g", "weigh with: balance").block("gas hydrogen", "substance: H2", "made by: dissolving", "in: syringe")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 20.0 mL", "measure with: cylinder")
                .block("reading metal", "of: ribbon").block("reading gas", "of: volume of hydrogen").block("reading dry", "of: dry of hydrogen")
                .block("reading acid read", "of: volume of acid").markdown()).sound();
        shows(0.08, "g", 2, reading(outcome, "metal").value());
        // 0.08 g / 24.305 g/mol × 8.3145 × 293.15 / 101.3 kPa = 79.196 mL
        shows(79, "mL", 0, reading(outcome, "gas").value());
        shows(79, "mL", 0, reading(outcome, "dry").value());
        shows(20.0, "mL", 1, reading(outcome, "acid read").value());
        assertEquals(List.of("balance", "syringe", "cylinder"),
                List.of("metal", "gas", "acid read").stream().map(n -> reading(outcome, n).instrument().orElseThrow().name()).toList());
    }

    /** What a balance shows of a property that it does not weigh is not rounded by it: the strength of the acid is no mass. */
    @Test
    void anInstrumentRoundsOnlyWhatItMeasures() {
        Door.Outcome outcome = Door.open(kit("Kinds").block("solution acid", "solute: HCl", "strength: 0.3333 mol/L", "volume: 20.0 mL", "measure with: cylinder")
                .block("reading strength read", "of: strength of acid").markdown()).sound();
        assertEquals(0.3333, reading(outcome, "strength read").value().shownValue(), 1e-12);
    }

    /** A thermometer in degrees reads a rise as a rise: 6.668 K of warming are 6.7 degrees, and not 266 degrees of frost. */
    @Test
    void aRiseReadOnAThermometerIsARise() {
        Door.Outcome outcome = Door.open(kit("Rise").block("reaction course", "HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)")
                .block("solution acid", "solute: HCl", "strength: 1.00 mol/L", "volume: 50.0 mL").block("solution alkali", "solute: NaOH", "strength: 1.00 mol/L", "volume: 50.0 mL")
                .block("reading rise", "of: temperature rise of course", "read with: thermometer").markdown()).sound();
        Figure rise = reading(outcome, "rise").value();
        assertEquals(6.7, rise.shownValue(), 1e-9);
        assertEquals(6.7, rise.value(), 1e-9);
        assertEquals(1, rise.decimals().orElseThrow());
    }

    /** Without an instrument a volume may be asked for in litres; in grams it cannot be given, with an instrument or without one, and the author is told so. */
    @ParameterizedTest
    @CsvSource({"unit: L,0.02,L,", "unit: L\\nread with: cylinder,0.02,L,", "unit: g,20.0,mL,reading-kind", "unit: g\\nread with: cylinder,20.0,mL,reading-kind", "expect: 3.0 g,3.0,g,reading-kind"})
    void aReadingIsGivenInAUnitOfItsKind(String fields, double value, String unit, String told) {
        Door.Outcome outcome = Door.open(kit("Units").block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 20.0 mL")
                .block("reading poured", "of: volume of acid", fields.replace("\\n", "\n")).markdown());
        assertEquals(told == null ? List.of() : List.of(told), outcome.ids(Severity.ERROR).stream().distinct().toList());
        assertEquals(value, reading(outcome, "poured").value().shownValue(), 1e-9);
        assertEquals(unit, reading(outcome, "poured").value().unit().symbol());
        if (told != null) {
            assertEquals("mass", outcome.errors().get(0).fields().get("otherKind"));
            assertEquals("volume", outcome.errors().get(0).fields().get("kind"));
        }
    }

    // --- repeated readings

    private static Page titration(String times) {
        return kit("Titration").block("reaction neutralising", "H2SO4(aq) + NaOH(aq) -> Na2SO4(aq) + H2O(l)")
                .block("solution sample", "solute: H2SO4", "strength: 0.0600 mol/L", "volume: 20.00 mL")
                .block("solution lye", "solute: NaOH", "strength: 0.100 mol/L", "for: sample", "measure with: burette")
                .block("reading titre", "of: volume of lye", "read with: burette", times);
    }

    /** 2 × 20.00 mL × 0.0600 / 0.100 = 24.00 mL. Read once, what is read is the volume itself: both have one error, and their difference has none. */
    @Test
    void anEndPointReadOnceIsTheVolumeItself() {
        Door.Outcome outcome = Door.open(titration("").ask("titre - volume of lye", "mL").markdown()).sound();
        shows(24.0, "mL", 1, reading(outcome, "titre").value());
        assertEquals(List.of(reading(outcome, "titre").value()), reading(outcome, "titre").each());
        assertEquals(0, outcome.answer().standardUncertainty(), 0);
        assertEquals("titre", reading(outcome, "titre").value().symbol().letter());
    }

    /**
     * Read three times, each run has an error of its own: u² = u(true volume)² + (0.05 mL/√3)²/3, with u(true)/24.00 mL = √((0.005/20)² + (0.00005/0.06)² + (0.0005/0.1)²)/√3
     * (JCGM 100:2008, 5.1.2).
     */
    @Test
    void theMeanOfSeveralRunsIsSurerThanOne() {
        Door.Outcome outcome = Door.open(titration("times: 3").markdown()).sound();
        ResolvedReading titre = reading(outcome, "titre");
        assertEquals(3, titre.each().size());
        assertEquals(List.of("titre 1", "titre 2", "titre 3"), titre.each().stream().map(f -> f.symbol().letter()).toList());
        titre.each().forEach(f -> shows(24.0, "mL", 1, f));
        shows(24.0, "mL", 1, titre.value());
        assertEquals("mean of titre", titre.value().symbol().letter());
        double trueVolume = 24.00e-6 * Math.sqrt(Math.pow(0.005 / 20, 2) + Math.pow(0.00005 / 0.06, 2) + Math.pow(0.0005 / 0.1, 2)) / Math.sqrt(3);
        double burette = 0.05e-6 / Math.sqrt(3);
        assertEquals(Math.hypot(trueVolume, burette / Math.sqrt(3)), titre.value().standardUncertainty(), 1e-12);
        assertEquals(Math.hypot(trueVolume, burette), titre.each().get(1).standardUncertainty(), 1e-12);
    }

    /** A formula may ask for the mean of all runs, or for one of them by the largest: the one has a third of the variance of a run on the burette, the other all of it. */
    @Test
    void aFormulaSeesAllTheRuns() {
        ResolvedReading titre = reading(Door.open(titration("times: 3").markdown()), "titre");
        Figure mean = Door.open(titration("times: 3").ask("mean of titre", "mL").markdown()).sound().answer();
        Figure largest = Door.open(titration("times: 3").ask("largest of titre", "mL").markdown()).sound().answer();
        assertEquals(24.0, mean.shownValue(), 1e-9);
        assertEquals(titre.value().standardUncertainty(), mean.standardUncertainty(), 1e-15);
        assertEquals(titre.each().get(0).standardUncertainty(), largest.standardUncertainty(), 1e-15);
    }

    // --- differences

    private static Page crucible(String full, String powder) {
        return kit("Crucible").block("solid salt", "substance: NaCl", "mass: 1.25 g", "weigh with: balance")
                .block("reading full", full.isEmpty() ? "read with: balance" : "expect: " + full + "\nread with: balance")
                .block("reading empty", "expect: 30.15 g", "read with: balance").block("reading powder", "by difference: full - empty", powder);
    }

    /** 30.15 g empty and 1.25 g of salt: 31.40 g full, though nobody says so. */
    @Test
    void theFirstOfADifferenceFollowsFromTheSecondAndWhatLiesBetween() {
        Door.Outcome outcome = Door.open(crucible("", "of: mass of salt").markdown()).sound();
        shows(31.40, "g", 2, reading(outcome, "full").value());
        shows(1.25, "g", 2, reading(outcome, "powder").value());
        assertEquals(List.of(), reading(outcome, "powder").each());
        assertEquals("balance", reading(outcome, "powder").instrument().orElseThrow().name());
        assertEquals("powder", reading(outcome, "powder").value().symbol().letter());
        // Two weighings, each half a hundredth either way, and the amount itself as well as the balance sets it (Eurachem/CITAC CG 4, A2: both weighings count).
        double one = 0.005e-3 / Math.sqrt(3);
        assertEquals(one * Math.sqrt(3), reading(outcome, "powder").value().standardUncertainty(), 1e-3 * one);
    }

    /** The crucible weighed empty twice: what lies in it has the error of the full weighing and half the variance of an empty one, besides its own. */
    @Test
    void theSecondOfADifferenceMayBeReadSeveralTimes() {
        String markdown = crucible("", "of: mass of salt").markdown().replace("expect: 30.15 g", "expect: 30.15 g\ntimes: 2");
        Door.Outcome outcome = Door.open(markdown).sound();
        shows(31.40, "g", 2, reading(outcome, "full").value());
        double one = 0.005e-3 / Math.sqrt(3);
        assertEquals(one * Math.sqrt(2.5), reading(outcome, "powder").value().standardUncertainty(), 1e-3 * one);
    }

    /** A difference made several times has a value for each time and their mean. */
    @Test
    void aDifferenceMayBeRepeated() {
        Door.Outcome outcome = Door.open(crucible("31.40 g", "times: 2").markdown()).sound();
        ResolvedReading powder = reading(outcome, "powder");
        assertEquals(List.of("powder 1", "powder 2"), powder.each().stream().map(f -> f.symbol().letter()).toList());
        powder.each().forEach(f -> shows(1.25, "g", 2, f));
        shows(1.25, "g", 2, powder.value());
        assertNotSame(powder.each().get(0), powder.each().get(1));
    }

    /**
     * Four standard uncertainties of both sides: the difference of two weighings 0.0041 g, the weighed salt 0.0029 g, together 0.0050 g, so that 0.02 g may lie between and 0.03 g may not. What is
     * contradicted, and by what, is told.
     */
    @ParameterizedTest
    @CsvSource({"31.39 g,1.24 g,false", "31.41 g,1.26 g,false", "31.43 g,1.28 g,true", "31.37 g,1.22 g,true", "32.40 g,2.25 g,true"})
    void weighingsThatContradictTheTypedMassAreTold(String full, String difference, boolean told) {
        Door.Outcome outcome = Door.open(crucible(full, "of: mass of salt").markdown()).sound();
        List<Finding> found = outcome.findings().stream().filter(f -> f.id().equals("reading-contradicts")).toList();
        assertEquals(told, !found.isEmpty(), outcome.findings().toString());
        if (told) {
            assertEquals(Severity.WARNING, found.get(0).severity());
            assertEquals("powder", found.get(0).at().text());
            assertEquals(difference, found.get(0).fields().get("read"));
            assertEquals("1.25 g", found.get(0).fields().get("computed"));
            assertEquals("mass of salt", found.get(0).fields().get("of"));
        }
    }

    /** A reading that says what it measures and what it will be is held against what is computed; one that only measures agrees with itself. */
    @Test
    void anExpectedReadingIsHeldAgainstWhatItMeasures() {
        Page page = kit("Expected").block("solid salt", "substance: NaCl", "mass: 1.25 g", "weigh with: balance");
        String off = page.block("reading weighed", "of: mass of salt", "expect: 1.52 g", "read with: balance").markdown();
        assertEquals(List.of("reading-contradicts"), Door.open(off).findings().stream().map(Finding::id).filter(id -> id.equals("reading-contradicts")).toList());
        assertEquals(1.52, reading(Door.open(off), "weighed").value().shownValue(), 1e-9);
        assertFalse(Door.open(off.replace("1.52 g", "1.25 g")).findings().stream().anyMatch(f -> f.id().equals("reading-contradicts")));
    }

    /** What a reaction really gives is for the author to say: 0.90 g of chalk out of a possible 1.00 g contradicts nothing. */
    @Test
    void aYieldThatWasReallyFoundContradictsNothing() {
        Door.Outcome outcome = Door.open(kit("Yield").block("reaction settling", "CaCl2(aq) + Na2CO3(aq) -> CaCO3(s) + NaCl(aq)")
                .block("solution calcium", "solute: CaCl2", "strength: 0.50 mol/L", "volume: 20.0 mL").block("solution soda", "solute: Na2CO3", "strength: 0.50 mol/L", "volume: 20.0 mL")
                .block("solid chalk", "substance: CaCO3", "made by: settling").block("reading weighed", "of: mass of chalk", "expect: 0.90 g", "read with: balance").markdown()).sound();
        assertFalse(outcome.findings().stream().anyMatch(f -> f.id().equals("reading-contradicts")));
        assertEquals(0.90, reading(outcome, "weighed").value().shownValue(), 1e-9);
        assertEquals(1.0009, outcome.shown("chalk", Property.MASS), 1e-3);
    }

    // --- what cannot be read

    /** Nothing is measured and nothing is expected: no key could be printed. */
    @Test
    void aReadingOfNothingIsRefused() {
        Door.Outcome outcome = Door.open(kit("Nothing").block("reading level", "read with: cylinder").markdown());
        assertEquals(List.of("nothing-expected"), outcome.ids(Severity.ERROR));
        assertEquals("level", outcome.errors().get(0).at().text());
        assertTrue(outcome.resolved().reading("level").isEmpty());
    }

    @Test
    void aDifferenceOfAReadingThatIsNotThereOffersTheNearest() {
        Door.Outcome outcome = Door.open(kit("Spelling").block("reading full", "expect: 31.40 g", "read with: balance").block("reading empty", "expect: 30.15 g", "read with: balance")
                .block("reading powder", "by difference: ful - empty").markdown());
        Finding finding = outcome.errors().get(0);
        assertEquals("unknown-name", finding.id());
        assertEquals("reading", finding.fields().get("wanted"));
        assertEquals(List.of("full"), finding.fields().get("suggestions"));
        assertEquals("ful", finding.at().text());
        assertTrue(outcome.resolved().reading("powder").isEmpty());
    }

    /** Two readings of one volume leave open from which an answer is worked. Both places are told. */
    @Test
    void oneFigureIsReadByOneReading() {
        Door.Outcome outcome = Door.open(titration("").block("reading again", "of: volume of lye", "read with: burette").block("reading other", "of: volume of sample").markdown());
        assertEquals(List.of("read-twice"), outcome.ids(Severity.ERROR));
        Finding finding = outcome.errors().get(0);
        assertEquals("titre", finding.fields().get("first"));
        assertEquals("again", finding.fields().get("second"));
        assertEquals("volume of lye", finding.at().text());
        assertTrue(finding.also().get(0).start() < finding.at().start());
    }

    /** Each of three readings waits for the next, and each value for the other: no number could ever come of it. */
    @Test
    void readingsAndValuesInACircleAreRefused() {
        Door.Outcome readings = Door.open(kit("Circle").block("reading one", "expect: two").block("reading two", "expect: one").markdown());
        assertEquals(List.of("circular"), readings.ids(Severity.ERROR));
        Door.Outcome values = Door.open(kit("Circle").block("value one", "is: 2 * two").block("value two", "is: one / 2").markdown());
        assertEquals(List.of("circular"), values.ids(Severity.ERROR));
        assertTrue(values.resolved().values().isEmpty());
    }

    /** A value that is used twice is one figure: it falls out of its own ratio, with its error. */
    @Test
    void aValueIsOneFigureHoweverOftenItIsUsed() {
        Door.Outcome outcome = Door.open(kit("Twice").block("value tare", "is: 12.3 g").ask("tare / tare", "").markdown()).sound();
        assertEquals(1, outcome.answer().value(), 1e-12);
        assertEquals(0, outcome.answer().standardUncertainty(), 1e-15);
    }

    /** Whatever is expected, what is read stands on a mark of the instrument, at most half a division away (seeded: 200 temperatures and volumes). */
    @Test
    void whatIsReadStandsOnAMark() {
        java.util.SplittableRandom random = new java.util.SplittableRandom(20);
        IntStream.range(0, 100).forEach(i -> {
            double degrees = Math.rint(random.nextDouble(-20, 110) * 1000) / 1000;
            double millilitres = Math.rint(random.nextDouble(1, 25) * 1000) / 1000;
            Door.Outcome outcome = Door.open(kit("Marks").block("reading degrees", "expect: " + degrees + " °C", "read with: thermometer")
                    .block("reading level", "expect: " + millilitres + " mL", "read with: cylinder").markdown()).sound();
            onMark(degrees, 0.1, reading(outcome, "degrees").value());
            onMark(millilitres, 0.5, reading(outcome, "level").value());
        });
    }

    private static void onMark(double expected, double division, Figure read) {
        double marks = read.shownValue() / division;
        assertEquals(Math.rint(marks), marks, 1e-6, read::toString);
        assertEquals(expected, read.shownValue(), division / 2 + 1e-9);
    }
}
