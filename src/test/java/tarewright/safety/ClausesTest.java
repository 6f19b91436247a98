package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a mixture is classified as, clause by clause of CLP Annex I, over invented substances of which one thing is known each. The limits are those of the tables named
 * in each test, just reached and just not.
 */
class ClausesTest {
    private static List<String> classes(Verdict verdict) {
        return verdict.assigned().stream().map(a -> a.hazard().toString()).toList();
    }

    private static Verdict mixture(Form form, double first, Rows one, double second, Rows other) {
        return new Classification(Rows.rules(one, other)).of(Matter.of("m", form,
                List.of(Part.of(one.row().id(), Content.percent(first)), Part.of(other.row().id(), Content.percent(second)))));
    }

    private static Assigned only(Verdict verdict) {
        assertEquals(1, verdict.assigned().size(), verdict.assigned().toString());
        return verdict.assigned().get(0);
    }

    // --- health and environment, Annex I parts 3 and 4

    /** Tables 3.2.3, 3.3.3, 3.4.5, 3.5.2, 3.6.2, 3.7.2, 3.8.3, 3.9.4, 3.10.3.3.1.1, 4.1.1, 4.1.2, 5.1. */
    @ParameterizedTest(name = "{0} {1} %")
    @CsvSource(delimiter = ';', value = {
        "Skin Corr.|1A|H314;5;Skin Corr. 1A H314,Eye Dam. 1 H318", "Skin Corr.|1A|H314;4.99;Skin Irrit. 2 H315,Eye Dam. 1 H318",
        "Skin Corr.|1B|H314;5;Skin Corr. 1B H314,Eye Dam. 1 H318", "Skin Corr.|1C|H314;5;Skin Corr. 1C H314,Eye Dam. 1 H318",
        "Skin Corr.|1B|H314;2.99;Skin Irrit. 2 H315,Eye Irrit. 2 H319", "Skin Corr.|1B|H314;0.99;",
        "Skin Irrit.|2|H315;10;Skin Irrit. 2 H315", "Skin Irrit.|2|H315;9.99;", "Eye Dam.|1|H318;3;Eye Dam. 1 H318", "Eye Dam.|1|H318;1;Eye Irrit. 2 H319",
        "Eye Irrit.|2|H319;10;Eye Irrit. 2 H319", "Eye Irrit.|2|H319;9.99;", "Skin Sens.|1|H317;1;Skin Sens. 1 H317", "Skin Sens.|1A|H317;0.1;Skin Sens. 1 H317",
        "Resp. Sens.|1B|H334;0.99;", "Muta.|1A|H340;0.1;Muta. 1A H340", "Muta.|2|H341;0.99;", "Carc.|1B|H350i;0.1;Carc. 1B H350i", "Carc.|2|H351;1;Carc. 2 H351",
        "Repr.|1A|H360D;0.3;Repr. 1A H360D", "Repr.|2|H361f;2.99;", "Lact.||H362;0.3;Lact. H362", "STOT SE|1|H370;10;STOT SE 1 H370", "STOT SE|1|H370;9.99;STOT SE 2 H371",
        "STOT SE|2|H371;9.99;", "STOT SE|3|H335;20;STOT SE 3 H335", "STOT SE|3|H336;20;STOT SE 3 H336", "STOT SE|3|H336;19.9;", "STOT RE|1|H372;9.99;STOT RE 2 H373",
        "STOT RE|2|H373;10;STOT RE 2 H373", "Asp. Tox.|1|H304;10;Asp. Tox. 1 H304", "Aquatic Acute|1|H400;25;Aquatic Acute 1 H400", "Aquatic Acute|1|H400;24.9;",
        "Aquatic Chronic|1|H410;2.5;Aquatic Chronic 2 H411", "Aquatic Chronic|2|H411;2.5;Aquatic Chronic 3 H412", "Aquatic Chronic|4|H413;25;Aquatic Chronic 4 H413",
        "Ozone|1|H420;0.1;Ozone 1 H420"})
    void aMixtureIsInATierFromItsLimitOn(String hazard, double percent, String expected) {
        List<String> wanted = expected == null ? List.of() : List.of(expected.split(","));
        List<String> found = classes(Rows.verdict(Form.SOLUTION, percent, Rows.of("thing").is(hazard)));
        assertEquals(wanted.stream().sorted().toList(), found.stream().sorted().toList());
    }

    /** Table 3.2.3: shares of corrosives add up, each of its limit; 2.5 % of 1A and 2.5 % of 1B are 1B, and both are named. */
    @Test
    void sharesAddUpAndBothAreNamed() {
        Verdict both = mixture(Form.SOLUTION, 2.5, Rows.of("one").is("Skin Corr.|1A|H314"), 2.5, Rows.of("other").is("Skin Corr.|1B|H314"));
        Assigned skin = both.assigned().stream().filter(a -> a.hazard().code().equals("H314")).findFirst().orElseThrow();
        assertEquals("Skin Corr. 1B H314", skin.hazard().toString());
        assertEquals(List.of("one", "other"), skin.due());
        assertEquals(OptionalDouble.of(5), skin.limitPercent());
        assertEquals(Assigned.Ground.GENERIC_LIMIT, skin.ground());
        Verdict less = mixture(Form.SOLUTION, 2.4, Rows.of("one").is("Skin Corr.|1A|H314"), 2.5, Rows.of("other").is("Skin Corr.|1B|H314"));
        assertTrue(!less.has("H314") && less.has("H315"));
    }

    /** Table 3.9.4: effects on organs do not add up; what is not there at all brings nothing in and is not named. */
    @Test
    void whatDoesNotAddUpStandsAlone() {
        assertEquals(List.of("STOT RE 2 H373"), classes(mixture(Form.SOLUTION, 6, Rows.of("one").is("STOT RE|1|H372"), 6, Rows.of("other").is("STOT RE|1|H372"))));
        Verdict none = mixture(Form.SOLUTION, 0, Rows.of("one").is("Skin Corr.|1A|H314"), 6, Rows.of("other").is("Skin Corr.|1A|H314"));
        assertEquals(List.of("other"), none.assigned().get(0).due());
        assertEquals(List.of(), classes(Rows.verdict(Form.SOLUTION, 0, Rows.of("thing").is("Flam. Liq.|2|H225"))));
    }

    /** Tables 4.1.1 and 4.1.2: the limit is divided by the multiplying factor, M = 10: 2.5 % for acute, M = 100: 0.25 % for chronic. */
    @Test
    void multiplyingFactorsDivideTheLimit() {
        assertTrue(Rows.verdict(Form.SOLUTION, 2.5, Rows.of("thing").is("Aquatic Acute|1|H400").mFactors(10, 1)).has("H400"));
        assertTrue(Rows.verdict(Form.SOLUTION, 2.4, Rows.of("thing").is("Aquatic Acute|1|H400").mFactors(10, 1)).assigned().isEmpty());
        assertEquals("H410", only(Rows.verdict(Form.SOLUTION, 0.25, Rows.of("thing").is("Aquatic Chronic|1|H410").mFactors(1, 100))).hazard().code());
        assertEquals("H411", only(Rows.verdict(Form.SOLUTION, 0.24, Rows.of("thing").is("Aquatic Chronic|1|H410").mFactors(1, 100))).hazard().code());
    }

    /** CLP Article 10: a substance's own limit stands before the generic one, be it higher or lower; without one of its own for a class the generic limit stays. */
    @Test
    void aLimitOfItsOwnStandsBeforeTheGenericOne() {
        Rows higher = Rows.of("thing").is("Skin Corr.|1B|H314").limit("Skin Corr.|1B|H314", 25).limit("Skin Irrit.|2|H315", 10);
        assertEquals(List.of("Skin Corr. 1B H314"), classes(Rows.verdict(Form.SOLUTION, 25, higher)).stream().filter(c -> c.startsWith("Skin")).toList());
        Verdict middle = Rows.verdict(Form.SOLUTION, 24, higher);
        assertEquals(List.of("Skin Irrit. 2 H315"), classes(middle).stream().filter(c -> c.startsWith("Skin")).toList());
        Assigned irritant = middle.assigned().stream().filter(a -> a.hazard().code().equals("H315")).findFirst().orElseThrow();
        assertEquals(Assigned.Ground.SPECIFIC_LIMIT, irritant.ground());
        assertEquals(OptionalDouble.of(10), irritant.limitPercent());
        Rows lower = Rows.of("thing").is("STOT RE|2|H373").limit("STOT RE|2|H373", 0.5);
        assertEquals(List.of("STOT RE 2 H373"), classes(Rows.verdict(Form.SOLUTION, 0.5, lower)));
        assertEquals(List.of(), classes(Rows.verdict(Form.SOLUTION, 0.49, lower)));
    }

    /**
     * Annex VI, lead powder (082-013-00-1) in its pattern: a limit of its own for the unborn child alone, while the published statement names fertility too. From the generic
     * limit on, 0.3 %, both are said.
     */
    @Test
    void whereBothLimitsAreReachedThePublishedStatementIsSaid() {
        Rows lead = Rows.of("thing").is("Repr.|1A|H360FD").limit("Repr.|1A|H360D", 0.03);
        assertEquals(List.of("Repr. 1A H360D"), classes(Rows.verdict(Form.SOLID, 0.03, lead)));
        assertEquals(List.of("Repr. 1A H360D"), classes(Rows.verdict(Form.SOLID, 0.29, lead)));
        assertEquals(List.of("Repr. 1A H360FD"), classes(Rows.verdict(Form.SOLID, 0.3, lead)));
        // Lead compounds (082-001-00-6): the limit for suspected harm to fertility says nothing of the proven harm to the unborn child.
        Rows compound = Rows.of("thing").is("Repr.|1A|H360Df").limit("Repr.|2|H361f", 2.5);
        assertEquals(List.of("Repr. 1A H360Df"), classes(Rows.verdict(Form.SOLID, 0.3, compound)));
    }

    /** 3.3.3.3.4: with limits of its own for eyes, corrosion of the skin counts for eyes by its own limit too, and the generic limits are silent. */
    @Test
    void ownLimitsForEyesLeaveNoRoomForGenericOnes() {
        Rows lye = Rows.of("thing").is("Skin Corr.|1A|H314").limit("Skin Corr.|1A|H314", 20).limit("Eye Irrit.|2|H319", 15);
        assertEquals(List.of(), classes(Rows.verdict(Form.SOLUTION, 14.9, lye)).stream().filter(c -> c.startsWith("Eye")).toList());
        assertTrue(classes(Rows.verdict(Form.SOLUTION, 15, lye)).contains("Eye Irrit. 2 H319"));
        assertTrue(classes(Rows.verdict(Form.SOLUTION, 20, lye)).contains("Eye Dam. 1 H318"));
    }

    // --- acute toxicity, 3.1.3.6

    /** 100 / ATE = Σ share / ATE, point estimates of Table 3.1.2, categories of Table 3.1.1: 500 mg/kg at 25 % is 2000, the end of category 4. */
    @ParameterizedTest(name = "{0} {1} {2} %")
    @CsvSource({"SOLID, Acute Tox.|4|H302, 25, H302", "SOLID, Acute Tox.|4|H302, 24.9, ''", "SOLID, Acute Tox.|3|H301, 33.4, H301", "SOLID, Acute Tox.|3|H301, 33.3, H302",
        "SOLID, Acute Tox.|2|H300, 10, H300", "SOLID, Acute Tox.|1|H300, 0.025, H302", "SOLID, Acute Tox.|4|H312, 55, H312", "SOLID, Acute Tox.|4|H312, 54.9, ''",
        "SOLID, Acute Tox.|4|H332, 30, H332", "SOLID, Acute Tox.|4|H332, 29.9, ''", "LIQUID, Acute Tox.|4|H332, 55, H332", "LIQUID, Acute Tox.|4|H332, 54.9, ''",
        "GAS, Acute Tox.|3|H331, 28, H331", "GAS, Acute Tox.|3|H331, 27.9, H332"})
    void aMixtureIsAsToxicAsItsEstimateSays(SubstanceHazards.State state, String hazard, double percent, String expected) {
        Form form = Form.valueOf(state.name());
        assertEquals(expected, String.join(",", Bench.codes(Rows.verdict(form, percent, Rows.of("thing").state(state).is(hazard)))));
    }

    /** 5 % of 100 mg/kg (category 3) and 20 % of a printed 400 mg/kg: 100 / ATE = 0.05 + 0.05, so 1000 mg/kg, category 4. Alone the first would reach it at 5 %. */
    @Test
    void estimatesAreSummed() {
        Assigned sum = only(mixture(Form.SOLID, 5, Rows.of("one").is("Acute Tox.|3|H301"), 20, Rows.of("other").is("Acute Tox.|4|H302").estimate(Route.ORAL, 400)));
        assertEquals("Acute Tox. 4 H302", sum.hazard().toString());
        assertEquals(List.of("one", "other"), sum.due());
        assertEquals(5, sum.limitPercent().orElseThrow(), 1e-9);
        assertEquals(Assigned.Ground.ACUTE_ESTIMATE, sum.ground());
        // Where the first alone would never reach it there is no limit to name: 500 mg/kg is over 5 mg/kg, however much there is of it.
        Assigned fatal = only(mixture(Form.SOLID, 50, Rows.of("one").is("Acute Tox.|4|H302"), 50, Rows.of("other").is("Acute Tox.|1|H300")));
        assertEquals(OptionalDouble.empty(), fatal.limitPercent());
        assertEquals("Acute Tox. 1 H300", fatal.hazard().toString());
    }

    /** Table 3.1.2 puts 0.5 mg/L for dust of category 3 on the very edge of category 2 (Table 3.1.1): undiluted it is what Annex VI publishes, toxic and not fatal. */
    @ParameterizedTest
    @CsvSource({"SOLID, Acute Tox.|3|H331", "SOLID, Acute Tox.|2|H300", "SOLID, Acute Tox.|2|H310", "LIQUID, Acute Tox.|2|H330", "GAS, Acute Tox.|2|H330"})
    void undilutedASubstanceIsAsToxicAsPublished(SubstanceHazards.State state, String hazard) {
        Form form = Form.valueOf(state.name());
        Assigned pure = only(Rows.verdict(form, 100, Rows.of("thing").state(state).is(hazard)));
        assertEquals(Rows.hazard(hazard), pure.hazard());
        assertEquals(Assigned.Ground.UNDILUTED, pure.ground());
        assertEquals(Assigned.Ground.ACUTE_ESTIMATE, only(Rows.verdict(form, 99, Rows.of("thing").state(state).is(hazard))).ground());
    }

    /** A printed estimate says by which way it is meant, whatever the substance is: 2 mg/L as dust is category 4 from 40 % on. */
    @Test
    void aPrintedEstimateGoesFirst() {
        Rows dusty = Rows.of("thing").state(SubstanceHazards.State.LIQUID).is("Acute Tox.|4|H332").estimate(Route.DUST, 2);
        assertTrue(Rows.verdict(Form.LIQUID, 40, dusty).has("H332"));
        assertTrue(Rows.verdict(Form.LIQUID, 39.9, dusty).assigned().isEmpty());
        Rows vapour = Rows.of("thing").is("Acute Tox.|4|H332").estimate(Route.VAPOUR, 12);
        assertTrue(Rows.verdict(Form.SOLID, 60, vapour).has("H332") && Rows.verdict(Form.SOLID, 59.9, vapour).assigned().isEmpty());
        Rows swallowed = Rows.of("thing").is("Acute Tox.|4|H302").estimate(Route.ORAL, 1000);
        assertTrue(Rows.verdict(Form.SOLID, 50, swallowed).has("H302") && Rows.verdict(Form.SOLID, 49.9, swallowed).assigned().isEmpty());
    }

    /** Table 1.1: a gas in water keeps its class from 0.1 % on, harmful ones from 1 % on, and that it is a judgement is said. */
    @ParameterizedTest
    @CsvSource({"3, H331, 0.1, true", "3, H331, 0.09, false", "4, H332, 1, true", "4, H332, 0.9, false", "4, H332, 0, false"})
    void aGasInWaterKeepsItsClass(String category, String code, double percent, boolean kept) {
        Verdict verdict = Rows.verdict(Form.SOLUTION, percent, Rows.of("thing").state(SubstanceHazards.State.GAS).is("Acute Tox.|" + category + "|" + code));
        assertEquals(kept, verdict.has(code));
        assertEquals(kept, verdict.remarks().contains(new Remark(Remark.About.DISSOLVED_GAS, List.of("thing", code))));
        if (kept) {
            assertEquals(Assigned.Ground.JUDGEMENT, only(verdict).ground());
            assertEquals(category.equals("4") ? 1 : 0.1, only(verdict).limitPercent().orElseThrow());
        }
    }

    // --- physical hazards: no rule of the regulation, our own judgement as the tables say

    @ParameterizedTest(name = "{0} {1} {2} %")
    @CsvSource({
        "LIQUID, Flam. Liq.|2|H225, 100, UNDILUTED, ", "LIQUID, Flam. Liq.|2|H225, 99, JUDGEMENT, FLASH_POINT_UNKNOWN", "SOLUTION, Flam. Liq.|2|H225, 1, JUDGEMENT, FLASH_POINT_UNKNOWN",
        "SOLUTION, Flam. Liq.|2|H225, 0.9, , ", "SOLUTION, Met. Corr.|1|H290, 1, JUDGEMENT, ", "SOLUTION, Met. Corr.|1|H290, 0.9, , ", "SOLUTION, Ox. Liq.|2|H272, 1, JUDGEMENT, ",
        "SOLUTION, Ox. Liq.|2|H272, 0.9, , ", "SOLUTION, Ox. Sol.|2|H272, 50, JUDGEMENT, ", "SOLUTION, Ox. Sol.|2|H272, 49, , NOT_CARRIED_INTO_WATER",
        "SOLUTION, Flam. Sol.|1|H228, 90, , NOT_CARRIED_INTO_WATER", "LIQUID, Flam. Sol.|1|H228, 50, JUDGEMENT, ", "SOLID, Flam. Sol.|1|H228, 50, UNDILUTED, ",
        "SLURRY, Flam. Sol.|1|H228, 50, UNDILUTED, ", "GAS, Flam. Gas|1|H220, 50, UNDILUTED, "})
    void aPhysicalHazardIsKeptUnlessWaterPlainlyTakesItAway(Form form, String hazard, double percent, Assigned.Ground ground, Remark.About about) {
        Verdict verdict = Rows.verdict(form, percent, Rows.of("thing").is(hazard));
        assertEquals(ground == null ? List.of() : List.of(ground), verdict.assigned().stream().map(Assigned::ground).toList());
        List<Remark> told = verdict.remarks().stream().filter(r -> r.about() == Remark.About.FLASH_POINT_UNKNOWN || r.about() == Remark.About.NOT_CARRIED_INTO_WATER).toList();
        assertEquals(about == null ? List.of() : List.of(new Remark(about, List.of("thing", Rows.hazard(hazard).code()))), told);
    }

    /** Annex VI, hydrogen peroxide (008-003-00-9) in its pattern: its own limits decide, and nothing is said beside them. */
    @Test
    void ownLimitsOfAPhysicalHazardDecide() {
        Rows peroxide = Rows.of("thing").is("Ox. Liq.|1|H271").limit("Ox. Liq.|1|H271", 70).limit("Ox. Liq.|2|H272", 50);
        assertEquals(List.of("Ox. Liq. 1 H271"), classes(Rows.verdict(Form.SOLUTION, 70, peroxide)));
        Assigned weaker = only(Rows.verdict(Form.SOLUTION, 69, peroxide));
        assertEquals("Ox. Liq. 2 H272", weaker.hazard().toString());
        assertEquals(Assigned.Ground.SPECIFIC_LIMIT, weaker.ground());
        assertEquals(List.of(), classes(Rows.verdict(Form.SOLUTION, 49, peroxide)));
    }

    /** Flash points of ethanol and water: 60 °C at some 5.8 % v/v, 23 °C at some 55 % v/v (the table's source); acetic acid over 80 % (UN 2789). */
    @ParameterizedTest
    @CsvSource({"ethanol, 47, H225", "ethanol, 46, H226", "ethanol, 4.6, H226", "ethanol, 4.5, ''", "acetic acid, 80, H226", "acetic acid, 79, ''"})
    void flashPointsDecideWhereTheyAreKnown(String substance, double percent, String code) {
        Verdict verdict = Bench.solution(substance, percent);
        List<Assigned> flammable = verdict.assigned().stream().filter(a -> a.hazard().endpoint() == Endpoint.FLAMMABLE_LIQUID).toList();
        assertEquals(code, String.join(",", flammable.stream().map(a -> a.hazard().code()).toList()));
        assertTrue(flammable.stream().allMatch(a -> a.ground() == Assigned.Ground.FLASH_POINT));
        assertTrue(verdict.remarks().stream().noneMatch(r -> r.about() == Remark.About.FLASH_POINT_UNKNOWN));
    }

    // --- supplemental statements, Annex II

    @ParameterizedTest(name = "{0} {1} {2} %")
    @CsvSource({"SOLID, EUH014, 1, true", "SOLUTION, EUH014, 1, false", "SOLUTION, EUH031, 0.1, true", "SOLUTION, EUH031, 0.09, false", "SOLUTION, EUH066, 1, true",
        "SOLUTION, EUH066, 0.9, false", "SOLUTION, EUH071, 50, false", "SOLUTION, EUH018, 0.01, true", "SOLUTION, EUH018, 0, false", "SOLID, EUH014, 0, false"})
    void aSupplementalStatementGoesOverToTheWhole(Form form, String code, double percent, boolean there) {
        assertEquals(there ? List.of(code) : List.of(), Rows.verdict(form, percent, Rows.of("thing").says(code)).supplemental().stream().map(Statement::code).toList());
    }

    /** Annex VI, sodium hypochlorite (017-011-00-1): contact with acid liberates toxic gas from 5 % on, whatever the table of all others says. */
    @Test
    void aLimitOfItsOwnForASupplementalStatement() {
        assertEquals(1, Rows.verdict(Form.SOLUTION, 5, Rows.of("thing").saysFrom("EUH031", 5)).supplemental().size());
        assertEquals(0, Rows.verdict(Form.SOLUTION, 4.9, Rows.of("thing").saysFrom("EUH031", 5)).supplemental().size());
    }

    /** Annex II 1.2.6: corrosive to the airways is said beside a class by inhalation. A limit of its own stands before that of the table. */
    @Test
    void corrosionOfTheAirwaysIsSaidBesideToxicity() {
        assertEquals("EUH071", Rows.verdict(Form.SOLID, 50, Rows.of("thing").is("Acute Tox.|4|H332").says("EUH071")).supplemental().get(0).code());
    }

    /** Annex II 2.8: a sensitiser under the limit of its class is named from a tenth of the limit on; from the limit on its class says it. */
    @ParameterizedTest(name = "{0} {1} %")
    @CsvSource({"Skin Sens.|1|H317, 0.1, true", "Skin Sens.|1|H317, 0.09, false", "Skin Sens.|1|H317, 1, false", "Skin Sens.|1A|H317, 0.01, true", "Skin Sens.|1A|H317, 0.009, false",
        "Resp. Sens.|1B|H334, 0.1, true", "Resp. Sens.|1B|H334, 0.09, false", "Skin Irrit.|2|H315, 0.5, false"})
    void aSensitiserIsNamedFromATenthOfItsLimitOn(String hazard, double percent, boolean named) {
        List<String> said = Rows.verdict(Form.SOLUTION, percent, Rows.of("thing").is(hazard)).supplemental().stream().map(Statement::printed).toList();
        assertEquals(named ? List.of("Contains thing. May produce an allergic reaction") : List.of(), said);
    }

    @Test
    void aTenthOfALimitOfItsOwn() {
        Rows own = Rows.of("thing").is("Skin Sens.|1|H317").limit("Skin Sens.|1|H317", 0.5);
        assertEquals(1, Rows.verdict(Form.SOLUTION, 0.05, own).supplemental().size());
        assertEquals(0, Rows.verdict(Form.SOLUTION, 0.049, own).supplemental().size());
        assertEquals(0, Rows.verdict(Form.SOLUTION, 0, Rows.of("thing").is("Skin Sens.|1|H317").limit("Skin Sens.|1|H317", 0)).supplemental().size());
    }
}
