package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.safety.Bench.CLASSIFICATION;
import static tarewright.safety.Bench.RULES;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ProtectionTest {
    private static final Protection PROTECTION = new Protection(RULES);
    /** Standing rules: NSTA eye protection FAQ, CLP P264 and P270, common practice. */
    private static final Set<String> STANDING = Set.of("shoes-and-hair", "wash-hands", "no-food", "contact-lenses", "adult");

    private static List<String> measures(Matter... matters) {
        return measures(Set.of(), matters);
    }

    private static List<String> measures(Set<Circumstance> circumstances, Matter... matters) {
        List<Verdict> bench = List.of(matters).stream().map(CLASSIFICATION::of).toList();
        return PROTECTION.of(bench, circumstances).stream().map(m -> m.rule().measure()).toList();
    }

    @Test
    void everyLessonHasTheStandingRules() {
        List<String> measures = measures(Matter.pure("salt", Form.SOLID, "NaCl"));

        assertTrue(measures.containsAll(STANDING));
        assertTrue(measures.contains("eye-protection"));
        assertFalse(measures.contains("splash-goggles"));
        assertFalse(measures.contains("gloves"));
    }

    /** ANSI/ISEA Z87.1 D3 goggles, gloves without latex, eyewash in ten seconds (29 CFR 1910.151(c)). */
    @Test
    void corrosiveSolutionsAskForGogglesGlovesCoatAndEyewash() {
        List<String> measures = measures(Matter.solution("lye", "NaOH", Content.percent(8)).litres(0.05));

        assertTrue(measures.containsAll(List.of("splash-goggles", "gloves", "no-latex", "laboratory-coat", "eyewash")));
        assertFalse(measures.contains("eye-protection"), "goggles stand in for it");
        assertFalse(measures.contains("face-shield"));
        assertFalse(measures.contains("shower"));
        assertTrue(measures(Matter.solution("lye", "NaOH", Content.percent(8)).litres(0.6)).containsAll(List.of("face-shield",
                "shower")));
    }

    @Test
    void dilutedBelowItsLimitsItAsksForNoMoreThanSalt() {
        assertEquals(measures(Matter.solution("salt", "NaCl", Content.percent(5))),
                measures(Matter.solution("lye", "NaOH", Content.molar(0.1))));
    }

    /** H335 alone is no reason for a hood where no dust flies and nothing fumes. */
    @Test
    void citricAcidNeedsNoHood() {
        assertFalse(measures(Matter.pure("crystals", Form.SOLID, "citric acid").grams(100)).contains("hood"));
        assertTrue(measures(Matter.pure("crystals", Form.SOLID, "citric acid")).contains("no-dust"));
        assertFalse(measures(Matter.pure("powder", Form.POWDER, "citric acid").grams(5)).contains("hood"));
        assertTrue(measures(Matter.pure("powder", Form.POWDER, "citric acid").grams(100)).contains("hood"));
        assertFalse(measures(Matter.solution("juice", "citric acid", Content.percent(30)).litres(1)).contains("hood"));
    }

    @Test
    void whatFumesNeedsAHoodByTheAmount() {
        assertTrue(measures(Matter.solution("acid", "HCl", Content.percent(37)).litres(0.1)).contains("hood"));
        assertFalse(measures(Matter.solution("acid", "HCl", Content.percent(12)).litres(0.01)).contains("hood"));
        assertTrue(measures(Matter.solution("acid", "HCl", Content.percent(12)).litres(0.01)).contains("ventilation"));
        assertTrue(measures(Matter.pure("gas", Form.GAS, "NH3")).contains("hood"));
        assertFalse(measures(Matter.pure("gas", Form.GAS, "CO2")).contains("hood"));
    }

    @Test
    void whatIsNotKnownIsTreatedAsHazardous() {
        assertTrue(measures(Matter.solution("?", "fennick salt", Content.percent(1)))
                .containsAll(List.of("splash-goggles", "gloves", "laboratory-coat", "eyewash")));
        assertTrue(measures(Matter.pure("?", Form.GAS, "fennick gas")).contains("hood"));
        assertFalse(measures(Matter.pure("?", Form.SOLID, "fennick salt")).contains("hood"));
    }

    @Test
    void fireAndMetalsAndCancer() {
        assertTrue(measures(Matter.pure("ribbon", Form.MASSIVE, "magnesium ribbon"))
                .containsAll(List.of("no-flames", "fire-blanket", "no-water-on-fire")));
        assertTrue(measures(Matter.pure("oxidant", Form.SOLID, "KMnO4")).containsAll(List.of("no-combustibles", "pregnancy",
                "gloves")));
        assertTrue(measures(Matter.solution("pink", "CoCl2", Content.percent(1))).contains("no-students"));
        assertTrue(measures(Matter.pure("metal", Form.MASSIVE, "sodium")).containsAll(List.of("no-students", "face-shield")));
    }

    @Test
    void gasSyringesHaveRulesOfTheirOwn() {
        assertTrue(measures(Set.of(Circumstance.GAS_SYRINGE), Matter.pure("gas", Form.GAS, "O2"))
                .containsAll(List.of("splash-goggles", "syringe-1", "syringe-2")));
        assertTrue(measures(Set.of(Circumstance.GAS_SYRINGE), Matter.pure("gas", Form.GAS, "SO2")).contains("syringe-scrub"));
        assertFalse(measures(Matter.pure("gas", Form.GAS, "O2")).contains("syringe-1"));
    }

    @Test
    void measuresNameWhatAskedForThem() {
        Measure gloves = PROTECTION.of(List.of(CLASSIFICATION.of(Matter.solution("lye", "NaOH", Content.percent(8)))),
                Set.of()).stream()
                .filter(m -> m.rule().measure().equals("gloves")).findFirst().orElseThrow();

        assertEquals("lye", gloves.reasons().get(0).matter());
        assertEquals(List.of("H314", "H318"), gloves.reasons().get(0).codes());
        assertEquals("M009", gloves.rule().sign());
    }

    @Test
    void anotherMatterNeverTakesAMeasureAway() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 150; i++) {
            Matter one = Bench.random(random);
            Matter other = Bench.random(random);
            Set<String> both = new HashSet<>(measures(one, other));
            both.add(both.contains("splash-goggles") || both.contains("dust-goggles") ? "eye-protection" : "");
            assertTrue(both.containsAll(measures(one)), () -> one + " " + other);
        }
    }
}
