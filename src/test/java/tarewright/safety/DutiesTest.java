package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;

/** What follows from a classification: what to wear, where waste goes, what is told after an accident, what the air of the room holds. */
class DutiesTest {
    // --- protection: the amounts are those of the table, ours where no source is named

    private static Set<String> measures(Matter... matters) {
        return measures(Set.of(), matters);
    }

    private static Set<String> measures(Set<Circumstance> circumstances, Matter... matters) {
        return new Protection(Bench.RULES).of(List.of(matters).stream().map(Bench.CLASSIFICATION::of).toList(), circumstances).stream()
                .map(m -> m.rule().measure()).collect(Collectors.toSet());
    }

    /** A face shield from 100 mL of something corrosive on, a shower from 500 mL on; what is not known of the amount does not count as so much. */
    @ParameterizedTest
    @CsvSource({"99, false, false", "100, true, false", "499, true, false", "500, true, true"})
    void largerAmountsAskForMore(double millilitres, boolean face, boolean shower) {
        Set<String> found = measures(Matter.solution("lye", "NaOH", Content.percent(8)).litres(millilitres / 1000));
        assertEquals(face, found.contains("face-shield"));
        assertEquals(shower, found.contains("shower"));
        Set<String> unknown = measures(Matter.solution("lye", "NaOH", Content.percent(8)));
        assertFalse(unknown.contains("face-shield") || unknown.contains("shower"));
    }

    /** A coat over 50 mL of something irritant, and where nobody knows how much; a hood from 25 g of a dusty powder on. */
    @Test
    void theAmountOfDustAndSplashCounts() {
        assertTrue(measures(Matter.solution("acid", "HCl", Content.percent(12)).litres(0.05)).contains("laboratory-coat"));
        assertFalse(measures(Matter.solution("acid", "HCl", Content.percent(12)).litres(0.049)).contains("laboratory-coat"));
        assertTrue(measures(Matter.solution("acid", "HCl", Content.percent(12))).contains("laboratory-coat"));
        assertTrue(measures(Matter.pure("powder", Form.POWDER, "citric acid").grams(25)).contains("hood"));
        assertFalse(measures(Matter.pure("powder", Form.POWDER, "citric acid").grams(24.9)).contains("hood"));
        assertFalse(measures(Matter.pure("powder", Form.POWDER, "citric acid")).contains("hood"));
    }

    @Test
    void circumstancesAskForTheirOwn() {
        Matter salt = Matter.pure("salt", Form.SOLID, "NaCl");
        assertTrue(measures(Set.of(Circumstance.GLASS_TUBING), salt).contains("glass"));
        assertFalse(measures(Set.of(Circumstance.GAS_SYRINGE), salt).contains("glass"));
        assertTrue(measures(Set.of(Circumstance.GAS_SYRINGE), salt).contains("syringe-5"));
        assertFalse(measures(Set.of(Circumstance.GLASS_TUBING), salt).contains("syringe-5"));
        assertFalse(measures(salt).contains("no-latex"));
        assertFalse(measures(salt).contains("no-students"));
        assertFalse(measures(Matter.pure("gas", Form.GAS, "H2S")).contains("syringe-scrub"));
    }

    /** Every reason is named once: two matters are two reasons, one matter twice is one; what nobody knows is a reason without statements. */
    @Test
    void everyReasonIsNamed() {
        List<Verdict> bench = List.of(Bench.CLASSIFICATION.of(Matter.solution("lye", "NaOH", Content.percent(8))),
                Bench.CLASSIFICATION.of(Matter.solution("lye", "NaOH", Content.percent(8))), Bench.CLASSIFICATION.of(Matter.solution("?", "fennick salt", Content.percent(1))));
        Map<String, Measure> by = new Protection(Bench.RULES).of(bench, Set.of()).stream().collect(Collectors.toMap(m -> m.rule().measure(), m -> m));
        assertEquals(List.of(new Measure.Reason("lye", List.of("H314", "H318"), true), new Measure.Reason("?", List.of(), false)), by.get("gloves").reasons());
        assertEquals(List.of(), by.get("wash-hands").reasons());
        assertEquals(List.of(), by.get("no-latex").reasons());
    }

    // --- waste

    private static Optional<Figure> moles(double value) {
        return Optional.of(Figure.given(Symbol.alone("n"), new Unit("mol", Dimension.AMOUNT, 1), value, new Origin.Author()));
    }

    private static WasteAdvice waste(Matter matter, Optional<Figure> acid, Optional<Figure> alkali) {
        return new Waste(Bench.RULES).of(new Leftover(matter, acid, alkali), Optional.empty());
    }

    private static List<String> rules(WasteAdvice advice) {
        return advice.reasons().stream().map(r -> r.rule().id()).toList();
    }

    /** 40 CFR 403.5(b): below pH 5; 40 CFR 261.22: corrosive at 2 and under, 12.5 and over; drain guides: 6 to 9. At the limit itself the rule is silent. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"5.0 | simple", "4.99 | acid", "2.0 | acid", "1.99 | acid,corrosive-acid", "9.0 | simple", "9.01 | alkali", "12.5 | alkali", "12.51 | alkali,corrosive-alkali"})
    void thePHDecidesTheRule(double pH, String expected) {
        assertEquals(expected, String.join(",", rules(waste(Matter.solution("left", "NaCl", Content.percent(1)).atPH(pH), Optional.empty(), Optional.empty()))));
    }

    /** With the pH unknown acid and alkali are told by their group; with it known they are not. */
    @Test
    void withoutAPHTheGroupDecides() {
        assertEquals(List.of("acid-without-ph"), rules(waste(Matter.solution("left", "HCl", Content.percent(1)), Optional.empty(), Optional.empty())));
        assertEquals(List.of("simple"), rules(waste(Matter.solution("left", "HCl", Content.percent(1)).atPH(6), Optional.empty(), Optional.empty())));
        assertEquals(List.of("alkali-without-ph"), rules(waste(Matter.solution("left", "NaOH", Content.percent(0.1)), Optional.empty(), Optional.empty())));
        assertTrue(rules(waste(Matter.solution("left", "HCl", Content.percent(1)), Optional.empty(), Optional.empty())).stream()
                .allMatch(id -> Bench.RULES.waste().rules().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow().mendedByNeutralising()));
    }

    /** Where one rule closes the sink, only the containers of those that close it are named; a rule that leaves it open adds none. */
    @Test
    void containersAreThoseOfTheRulesThatCloseTheSink() {
        WasteAdvice thiosulfate = waste(Matter.solution("left", "Na2S2O3", Content.percent(1)).atPH(7), Optional.empty(), Optional.empty());
        assertEquals(WasteRule.Sink.LOCAL, thiosulfate.sink());
        assertEquals(List.of("sulfites"), rules(thiosulfate));
        assertTrue(thiosulfate.keepAlkaline() && thiosulfate.containers().isEmpty());
        WasteAdvice lead = waste(Matter.pure("yellow", Form.SLURRY, "PbI2"), Optional.empty(), Optional.empty());
        assertTrue(lead.containers().containsAll(List.of("metals", "solids")));
        assertFalse(lead.keepAlkaline());
        WasteAdvice gas = waste(Matter.pure("gas", Form.GAS, "O2"), Optional.empty(), Optional.empty());
        assertTrue(rules(gas).contains("gas"));
    }

    /** Elements are read off a formula letter by letter: Co is cobalt, CO is not; one letter at the end is an element too. */
    @Test
    void elementsAreReadOffTheFormula() {
        assertEquals(List.of("Co"), found("unknown salt", "CoX2", "regulated-metals"));
        assertEquals(List.of(), found("unknown gas", "CO2X", "regulated-metals"));
        assertEquals(List.of("Ag"), found("unknown salt", "XAg", "regulated-metals"));
        assertEquals(List.of("Zn"), found("ZnXO4", "ZnXO4", "ecotoxic-metals"));
    }

    private static List<String> found(String name, String formula, String rule) {
        return waste(Matter.of("left", Form.SOLUTION, List.of(Part.of(name, formula, Content.percent(1)))), Optional.empty(), Optional.empty()).reasons().stream()
                .filter(r -> r.rule().id().equals(rule)).flatMap(r -> r.found().stream()).toList();
    }

    /** Nothing is neutralised with both acid and alkali left, with neither, or with none of the one that is named. */
    @Test
    void aRecipeIsForOneOfTheTwo() {
        Matter left = Matter.solution("left", "NaCl", Content.percent(1)).atPH(2.5);
        assertTrue(waste(left, moles(0.01), moles(0.01)).neutralising().isEmpty());
        assertTrue(waste(left, Optional.empty(), Optional.empty()).neutralising().isEmpty());
        assertTrue(waste(left, moles(0), Optional.empty()).neutralising().isEmpty());
        assertEquals("sodium-hydrogencarbonate", waste(left, moles(0.01), moles(0)).neutralising().orElseThrow().with().substance());
        // What keeps alkaline may still have its acid taken up.
        assertTrue(waste(Matter.solution("left", "Na2S2O3", Content.percent(1)), moles(0.01), Optional.empty()).neutralising().isPresent());
        assertTrue(waste(Matter.solution("left", "Na2S2O3", Content.percent(1)), Optional.empty(), moles(0.01)).neutralising().isEmpty());
    }

    /** 0.001 mol take 0.084 g of sodium hydrogencarbonate (84.006 g/mol): a pinch is less than 0.1 g, common practice. Of sodium carbonate one frees one CO₂ for two acids. */
    @Test
    void aPinchIsLessThanATenthOfAGram() {
        WasteAdvice.Recipe recipe = waste(Matter.solution("left", "NaCl", Content.percent(1)), moles(0.001), Optional.empty()).neutralising().orElseThrow();
        assertTrue(recipe.isPinch(1) && !recipe.isPinch(2));
        WasteAdvice.Recipe soda = new Waste(Bench.RULES).of(new Leftover(Matter.solution("left", "NaCl", Content.percent(1)), moles(0.01), Optional.empty()), Optional.of("Na2CO3"))
                .neutralising().orElseThrow();
        assertEquals(0.005, soda.gas().orElseThrow().value(), 1e-12);
    }

    // --- after an accident: CLP Annex I, label elements; Article 28 lets the stricter of two stand alone

    private static List<Response> responses(String... substances) {
        return Response.of(List.of(substances).stream().map(s -> Bench.CLASSIFICATION.of(Matter.pure(s, Form.SOLID, s))).toList(), Bench.RULES);
    }

    @Test
    void responsesAreInTheOrderOfTheirTopicsEachOnceWithItsReasons() {
        List<Response> both = responses("BaCl2", "KMnO4");
        assertEquals(both.stream().map(Response::topic).sorted().toList(), both.stream().map(Response::topic).toList());
        assertEquals(both.size(), both.stream().map(r -> r.topic() + r.statement().code() + r.text()).distinct().count());
        Response call = both.stream().filter(r -> r.statement().code().equals("P301+P310")).findFirst().orElseThrow();
        assertEquals(List.of("H301"), call.codes());
        assertEquals(List.of(), responses("NaCl"));
        assertTrue(both.stream().noneMatch(r -> r.statement().code().equals("P301+P312")), "the stricter call stands alone");
        assertTrue(responses("KMnO4").stream().anyMatch(r -> r.statement().code().equals("P301+P312")), "alone it is told");
    }

    // --- small bottles: CLP Annex I 1.5.2.1.1 (b)

    @Test
    void theReducedLabelLeavesOutOnlyWhatTheClauseLetsGo() {
        Verdict oxidiser = Bench.CLASSIFICATION.of(Matter.of("m", Form.SOLID, List.of(Part.of("KNO3", Content.pure()))));
        assertEquals(List.of("H272", "H319"), Bench.codes(oxidiser));
        assertEquals(List.of(), SmallLabel.of(oxidiser, 0.125, Bench.RULES).statements());
        assertEquals(2, SmallLabel.of(oxidiser, 0.1251, Bench.RULES).statements().size());
        assertEquals("CLP Annex I 1.5.2.1.1 (b) 9", SmallLabel.of(oxidiser, 0.125, Bench.RULES).omitted().get(0).by().clause());
        SmallPackRule lactation = new SmallPackRule("Lact.", List.of(), SmallPackRule.Omits.HAZARD_AND_PRECAUTIONARY, Optional.empty(), "c", Rows.READ);
        assertTrue(lactation.covers(Rows.hazard("Lact.||H362")) && !lactation.covers(Rows.hazard("Muta.|2|H341")));
        SmallPackRule irritation = new SmallPackRule("Skin Irrit.", List.of("2"), SmallPackRule.Omits.PRECAUTIONARY, Optional.empty(), "c", Rows.READ);
        assertFalse(irritation.covers(Rows.hazard("Skin Irrit.|2|H315")), "precautions only");
        SmallPackRule acute = new SmallPackRule("Flam. Liq.", List.of("2", "3"), SmallPackRule.Omits.HAZARD_AND_PRECAUTIONARY, Optional.empty(), "c", Rows.READ);
        assertTrue(acute.covers(Rows.hazard("Flam. Liq.|3|H226")) && !acute.covers(Rows.hazard("Flam. Liq.|1|H224")) && !acute.covers(Rows.hazard("Lact.||H362")));
    }

    // --- the air of the room

    private static Figure figure(String symbol, String unit, Dimension dimension, double value) {
        return Figure.given(Symbol.alone(symbol), new Unit(unit, dimension, 1), value, new Origin.Author());
    }

    /** So many millilitres by the ideal gas law at 22 °C and 101.325 kPa, R = 8.314462618 J/(mol K) (SI Brochure, 9th edition). */
    private static AirEstimate air(String gas, double millilitres, int vessels, double room) {
        double moles = 101_325 * millilitres * 1e-6 / (8.314462618 * 295.15);
        return new Air(Bench.RULES).of(new Release(gas, Optional.empty(), figure("n", "mol", Dimension.AMOUNT, moles), figure("N", "", Dimension.NONE, vessels),
                figure("T", "K", Dimension.TEMPERATURE, 295.15), figure("p", "Pa", Dimension.PRESSURE, 101_325),
                room > 0 ? Optional.of(figure("V", "m3", Dimension.VOLUME, room)) : Optional.empty()));
    }

    private static List<String> checks(AirEstimate air) {
        return air.checks().stream().map(c -> c.scene() + " " + c.kind() + " " + Math.round(c.limit())).toList();
    }

    /** NIOSH: ammonia 25 ppm over a day, 35 ppm short-term, IDLH 300; OSHA 50. A tenth of the lower flammable limit of 15 % is 15 000 ppm. 19.5 % of oxygen (29 CFR 1910.146) is left at 66 986 ppm. */
    @Test
    void everyLimitIsHeldAgainstTheAir() {
        assertEquals(List.of("AROUND_FACE SHORT_TERM 35", "AROUND_FACE DANGEROUS 300", "AROUND_FACE TENTH_OF_FLAMMABLE 15000",
                "ONE_VESSEL AVERAGE 25", "ONE_VESSEL SHORT_TERM 35", "ONE_VESSEL DANGEROUS 300", "ONE_VESSEL TENTH_OF_FLAMMABLE 15000",
                "ALL_VESSELS AVERAGE 25", "ALL_VESSELS SHORT_TERM 35", "ALL_VESSELS DANGEROUS 300", "ALL_VESSELS TENTH_OF_FLAMMABLE 15000",
                "ALL_VESSELS TOO_LITTLE_OXYGEN 66986"), checks(air("NH3", 5, 1, 180)));
        assertEquals(List.of("AROUND_FACE TENTH_OF_FLAMMABLE 4000"), checks(air("H2", 5, 1, 0)));
        // Without a short-term limit the average stands in for it around a face: dinitrogen oxide, 25 ppm (NIOSH).
        assertEquals("AROUND_FACE AVERAGE_AS_SHORT_TERM 25", checks(air("N2O", 5, 1, 180)).get(0));
        assertTrue(checks(air("N2O", 5, 1, 180)).stream().noneMatch(c -> c.contains("SHORT_TERM") && !c.startsWith("AROUND_FACE")));
    }

    /** 29 CFR 1910.146(b): over 23.5 % of oxygen is too much, which 32 870 ppm more of it are (20.9 % in air). */
    @Test
    void tooMuchOxygenIsADangerToo() {
        assertTrue(checks(air("O2", 5, 1, 180)).contains("ALL_VESSELS TOO_MUCH_OXYGEN 32870"));
        assertFalse(air("O2", 5_900, 1, 0.18).hoodNeeded());
        assertTrue(air("O2", 5_920, 1, 0.18).hoodNeeded());
        assertEquals(HoodReason.Why.OVER_LIMIT_IN_ROOM, air("O2", 5_920, 1, 0.18).hood().get(0).why());
    }

    @Test
    void whyAHoodIsDemandedIsNamed() {
        assertEquals(List.of(HoodReason.Why.NOT_KNOWN), air("fennick gas", 1, 1, 180).hood().stream().map(HoodReason::why).toList());
        assertEquals(List.of("H331"), air("NH3", 0.001, 1, 180).hood().get(0).codes());
        assertEquals(Optional.empty(), air("NH3", 0.001, 1, 180).hood().get(0).check());
        assertFalse(air("fennick gas", 1, 1, 180).asphyxiant() || air("NH3", 1, 1, 180).asphyxiant() || air("O2", 1, 1, 180).asphyxiant());
        assertTrue(air("N2", 1, 1, 180).asphyxiant() && !air("N2", 1, 1, 180).flammable() && air("NH3", 1, 1, 180).flammable());
        assertTrue(air("fennick gas", 1, 1, 180).relativeDensity().isEmpty() && air("fennick gas", 1, 1, 180).limits().isEmpty());
    }

    /** A limit is passed, not met, and rounding does not pass it. */
    @Test
    void aLimitIsPassedNotMet() {
        assertFalse(new LimitCheck(LimitCheck.Scene.ONE_VESSEL, LimitCheck.Kind.AVERAGE, 10, 10, Rows.READ).over());
        assertFalse(new LimitCheck(LimitCheck.Scene.ONE_VESSEL, LimitCheck.Kind.AVERAGE, 10, 10 * (1 + 5e-10), Rows.READ).over());
        assertTrue(new LimitCheck(LimitCheck.Scene.ONE_VESSEL, LimitCheck.Kind.AVERAGE, 10, 10.001, Rows.READ).over());
    }

    /** Nothing is added to the air of the room and nothing is heated: just the pressure of the room, which is not over once it. */
    @Test
    void aClosedVesselWithNothingInItHoldsThePressureOfTheRoom() {
        Overpressure closed = Overpressure.of(figure("n", "mol", Dimension.AMOUNT, 0), figure("V", "m3", Dimension.VOLUME, 1e-4), figure("T", "K", Dimension.TEMPERATURE, 300),
                figure("T0", "K", Dimension.TEMPERATURE, 300), figure("p0", "Pa", Dimension.PRESSURE, 100_000));
        assertEquals(100_000, closed.pressure().value(), 1e-9);
        assertFalse(closed.over(1));
        assertTrue(closed.over(0.999));
    }

    /** What is handled and toxic if inhaled: not as a lump, not under water, not where it is harmless. */
    @Test
    void handlingDemandsAHoodWhereItGetsIntoTheAir() {
        Rows toxic = Rows.of("thing").is("Acute Tox.|3|H331");
        assertEquals(List.of("H331"), Air.handling(Rows.verdict(Form.POWDER, 100, toxic)).get(0).codes());
        assertEquals(HoodReason.Why.TOXIC_IF_INHALED, Air.handling(Rows.verdict(Form.POWDER, 100, toxic)).get(0).why());
        assertEquals(List.of(), Air.handling(Rows.verdict(Form.MASSIVE, 100, toxic)));
        assertEquals(List.of(), Air.handling(Rows.verdict(Form.SLURRY, 100, toxic)));
        assertEquals(List.of(), Air.handling(Rows.verdict(Form.POWDER, 100, Rows.of("thing"))));
    }
}
