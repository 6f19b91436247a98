package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Figure;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Missed;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedReading;

/** The key for a student who was not there: other readings, and all that is worked from them. */
class MissedReadingsTest {
    private static Page titration(String more) {
        return new Page("Titration").front("groups: 4").wasted().block("apparatus", "burette: burette, 50 mL; graduation 0.1 mL; within 0.05 mL", "thermometer: thermometer; reads to 0.5 °C",
                "balance: balance; reads to 0.01 g").block("reaction neutralising", "H2SO4(aq) + NaOH(aq) -> Na2SO4(aq) + H2O(l)")
                .block("solution sample", "solute: H2SO4", "strength: 0.0600 mol/L", "volume: 20.00 mL", "found by students: yes", "label as: Sample")
                .block("solution lye", "solute: NaOH", "strength: 0.100 mol/L", "for: sample", "measure with: burette")
                .block("reading titre", "of: volume of lye", "read with: burette", "times: 3", more).ask("strength of sample", "mol/L");
    }

    private static Resolved resolved(Page page) {
        return Door.open(page.markdown()).sound().resolved();
    }

    private static double value(Resolved resolved, String reading, int run) {
        return resolved.reading(reading).orElseThrow().each().get(run).shownValue();
    }

    /** c = 0.100 mol/L × titre / (2 × 20.00 mL), of whatever titres were supplied: their mean, each on a mark of the burette. The volume that is expected stays at 24.0 mL. */
    @Test
    void theAnswerFollowsFromTheSuppliedReadings() {
        Resolved procedure = resolved(titration(""));
        for (long seed = 0; seed < 12; seed++) {
            Resolved missed = Missed.of(procedure, seed).orElseThrow();
            ResolvedReading titre = missed.reading("titre").orElseThrow();
            double mean = titre.each().stream().mapToDouble(Figure::shownValue).average().orElseThrow();
            titre.each().forEach(f -> assertEquals(Math.rint(f.shownValue() * 10), f.shownValue() * 10, 1e-6));
            titre.each().forEach(f -> assertEquals(1, f.decimals().orElseThrow()));
            titre.each().forEach(f -> assertEquals("mL", f.unit().symbol()));
            assertEquals(mean, titre.value().shownValue(), 1e-9);
            assertEquals(0.100 * mean / 40.00, missed.answers().get(0).value().orElseThrow().shownValue(), 1e-9);
            assertTrue(titre.each().stream().anyMatch(f -> Math.abs(f.shownValue() - 24.0) > 0.05), "not the expected readings");
            assertEquals(24.0, missed.quantity("lye").orElseThrow().figure(Property.VOLUME).orElseThrow().shownValue(), 1e-9);
            assertEquals(procedure.answers().get(0).value().orElseThrow().decimals(), missed.answers().get(0).value().orElseThrow().decimals());
        }
    }

    /** Titres of one student agree as well as the author asks: within 0.1 mL of each other, on a burette that is read to 0.3 mL, where they would not agree by themselves. */
    @Test
    void suppliedTitresAreConcordant() {
        String markdown = titration("CONCORDANT").markdown().replace("within 0.05 mL", "within 0.3 mL");
        assertTrue(widest(markdown.replace("CONCORDANT", "concordant within: 0.1 mL")) <= 0.1 + 1e-9);
        assertTrue(widest(markdown.replace("CONCORDANT\n", "")) > 0.15);
    }

    private static double widest(String markdown) {
        Resolved procedure = Door.open(markdown).resolved();
        return LongStream.range(0, 12).mapToDouble(seed -> {
            var range = Missed.of(procedure, seed).orElseThrow().reading("titre").orElseThrow().each().stream().mapToDouble(Figure::shownValue).summaryStatistics();
            return range.getMax() - range.getMin();
        }).max().orElseThrow();
    }

    /** The instrument is no better and no worse for another reading: the accepted range is as wide as that of the expected one, to a hundredth. */
    @Test
    void theAcceptedRangeIsAsWideAsEver() {
        Resolved procedure = resolved(titration(""));
        Resolved missed = Missed.of(procedure, 3).orElseThrow();
        double before = procedure.answers().get(0).accepted().orElseThrow().standardUncertainty();
        assertEquals(before, missed.answers().get(0).accepted().orElseThrow().standardUncertainty(), 0.01 * before);
        assertEquals(procedure.reading("titre").orElseThrow().value().standardUncertainty(), missed.reading("titre").orElseThrow().value().standardUncertainty(), 1e-12);
    }

    /** A weighing by difference of supplied weighings is their difference, and as uncertain as it was. */
    @Test
    void differencesAreThoseOfTheSuppliedReadings() {
        Page page = new Page("Crucible").wasted().block("apparatus", "balance: balance; reads to 0.01 g").block("solid salt", "substance: NaCl", "mass: 1.25 g")
                .block("reading empty", "expect: 30.153 g", "read with: balance").block("reading full", "read with: balance").block("reading powder", "of: mass of salt", "by difference: full - empty")
                .ask("moles of salt", "mmol");
        Resolved procedure = resolved(page);
        Resolved missed = Missed.of(procedure, 5).orElseThrow();
        double full = value(missed, "full", 0);
        double empty = value(missed, "empty", 0);
        assertEquals(full - empty, missed.reading("powder").orElseThrow().value().shownValue(), 1e-9);
        assertEquals((full - empty) / 58.44 * 1000, missed.answers().get(0).value().orElseThrow().shownValue(), 1e-3);
        double before = procedure.answers().get(0).accepted().orElseThrow().standardUncertainty();
        assertEquals(before, missed.answers().get(0).accepted().orElseThrow().standardUncertainty(), 0.01 * before);
    }

    /** A thermometer of half degrees is supplied in half degrees, counted from 0 °C and not from absolute zero. */
    @Test
    void aSuppliedTemperatureStandsOnAMark() {
        Resolved procedure = resolved(titration("").block("reading warm", "expect: 31.3 °C", "read with: thermometer"));
        for (long seed = 0; seed < 6; seed++) {
            double degrees = value(Missed.of(procedure, seed).orElseThrow(), "warm", 0);
            assertEquals(Math.rint(degrees * 2), degrees * 2, 1e-6);
            assertEquals(31.3, degrees, 2);
        }
    }

    /** What is not read off an instrument is what it was. */
    @Test
    void whatNoInstrumentShowsStays() {
        Resolved procedure = resolved(titration("").block("reading shade", "expect: 0.37"));
        assertEquals(0.37, value(Missed.of(procedure, 2).orElseThrow(), "shade", 0), 1e-12);
    }

    /** The same seed gives the same sheet again, so that a lost one can be printed anew; others give others. */
    @Test
    void aSeedIsAStudent() {
        Resolved procedure = resolved(titration(""));
        assertEquals(titres(procedure, 7), titres(procedure, 7));
        assertTrue(LongStream.range(0, 8).mapToObj(s -> titres(procedure, s)).distinct().count() > 2);
    }

    private static List<Double> titres(Resolved procedure, long seed) {
        return Missed.of(procedure, seed).orElseThrow().reading("titre").orElseThrow().each().stream().map(Figure::value).toList();
    }

    /** Where nothing is read there is nothing to supply. */
    @Test
    void withoutReadingsThereIsNothingToSupply() {
        assertEquals(Optional.empty(), Missed.of(resolved(new Page("None").wasted().block("solid salt", "substance: NaCl", "mass: 1.25 g").ask("moles of salt", "mmol")), 1));
    }

    /** Each hand of dealt amounts has readings of its own, worked from its own amounts: 10.0 and 20.0 mL of sample, 12 and 24 mL of lye; the hands keep their groups, graphs and totals. */
    @Test
    void eachHandOfDealtAmountsHasItsOwn() {
        String markdown = titration("").block("graph g", "x: volume of sample", "y: titre").markdown().replace("volume: 20.00 mL", "vary: 10.00 mL; 20.00 mL");
        Resolved procedure = Door.open(markdown).sound().resolved();
        Resolved missed = Missed.of(procedure, 4).orElseThrow();
        assertEquals(procedure.hands().stream().map(Hand::groups).toList(), missed.hands().stream().map(Hand::groups).toList());
        assertEquals(procedure.hands().stream().map(Hand::label).toList(), missed.hands().stream().map(Hand::label).toList());
        assertEquals(procedure.graphs(), missed.graphs());
        for (int i = 0; i < 2; i++) {
            Resolved hand = missed.hands().get(i).resolved();
            ResolvedReading titre = hand.reading("titre").orElseThrow();
            assertEquals(new double[] {12, 24}[i], titre.value().shownValue(), 0.3);
            assertEquals(0.100 * titre.value().shownValue() / (2 * new double[] {10, 20}[i]), hand.answers().get(0).value().orElseThrow().shownValue(), 1e-9);
            // Four groups, two of each deal, a tenth to spare: 2 × 1.1 × (10 + 20) mL.
            assertEquals(66.0, hand.quantity("sample").orElseThrow().figure(Property.CLASS_TOTAL).orElseThrow().shownValue(), 1e-9);
            assertEquals(procedure.hands().get(i).resolved().quantity("lye").orElseThrow().amount().orElseThrow().value(), hand.quantity("lye").orElseThrow().amount().orElseThrow().value(), 1e-15);
        }
        assertNotEquals(List.of(), missed.dealt());
        assertEquals("case", missed.name());
        assertEquals(List.of("titre"), missed.readings().stream().map(r -> r.block().name()).collect(Collectors.toList()));
    }
}
