package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.safety.Bench.CLASSIFICATION;
import static tarewright.safety.Bench.RULES;
import static tarewright.safety.Bench.codes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ClassificationTest {
    private static final Map<String, String> CODES = new TreeMap<>(Map.of("Skin Irrit. 2", "H315", "Eye Irrit. 2", "H319",
            "Eye Dam. 1",
            "H318", "STOT SE 3", "H335", "Skin Corr. 1A", "H314", "Skin Corr. 1B", "H314", "Ox. Liq. 3", "H272", "Ox. Liq. 2",
                    "H272"));

    /** Limits of Annex VI Table 3 turned to mol/L with handbook densities; the file names the source of each. */
    @ParameterizedTest(name = "{0} {3} mol/L")
    @CsvFileSource(resources = "/tarewright/safety/limits-in-moles.csv", numLinesToSkip = 1)
    void limitsInMolesPerLitre(String substance, double limit, double density, double molar, String effect, String source) {
        Verdict below = CLASSIFICATION.of(Matter.solution("below", substance,
                new Content.Molar(molar * 0.985, 0, OptionalDouble.of(density))));
        Verdict above = CLASSIFICATION.of(Matter.solution("above", substance,
                new Content.Molar(molar * 1.015, 0, OptionalDouble.of(density))));

        List<String> expected = new ArrayList<>();
        CODES.forEach((name, code) -> {
            if (effect.contains(name)) {
                expected.add(name);
            }
        });
        assertFalse(expected.isEmpty(), effect);
        for (String name : expected) {
            assertTrue(classes(above).contains(name), name + " missing above");
            assertFalse(classes(below).contains(name), name + " already below");
        }
    }

    private static List<String> classes(Verdict verdict) {
        return verdict.assigned().stream().map(a -> (a.hazard().name() + " " + a.hazard().category()).strip()).toList();
    }

    /** Annex VI Table 3, index 017-002-01-X and 011-002-00-6: below every limit. */
    @ParameterizedTest
    @CsvSource({"HCl, 0.1", "NaOH, 0.1", "CH3COOH, 0.1", "H2SO4, 0.05", "HNO3, 0.1", "KMnO4, 0.002"})
    void diluteSolutionsOfStrongThingsAreNotLabelled(String solute, double molar) {
        Verdict verdict = CLASSIFICATION.of(Matter.solution("dilute", solute, Content.molar(molar)).atPH(molar < 0.05 ? 7 : 1));

        assertTrue(verdict.harmless(), () -> codes(verdict).toString());
        assertEquals(Optional.empty(), verdict.signalWord());
    }

    @Test
    void withoutDensityTheMassShareIsOverstatedAndThatIsSaid() {
        Verdict verdict = CLASSIFICATION.of(Matter.solution("acid", "HCl", Content.molar(2.8)));

        assertTrue(codes(verdict).contains("H315"));
        assertTrue(verdict.remarks().stream().anyMatch(r -> r.about() == Remark.About.STRENGTH_ESTIMATED));
    }

    @Test
    void uncertaintyGoesToTheStricterSideAndThatIsSaid() {
        Verdict near = CLASSIFICATION.of(Matter.solution("acid", "HCl", Content.percent(9.9, 0.06)));
        Verdict far = CLASSIFICATION.of(Matter.solution("acid", "HCl", Content.percent(9.9, 0.04)));
        Verdict over = CLASSIFICATION.of(Matter.solution("acid", "HCl", Content.percent(10.05, 0.06)));

        assertEquals(List.of("H315", "H319", "H335"), codes(near));
        assertEquals(3, near.nearLimits().size());
        assertTrue(near.nearLimits().stream().allMatch(n -> n.stricterTaken() && n.limitPercent() == 10));
        assertEquals(List.of(), codes(far));
        assertEquals(List.of(), far.nearLimits());
        assertTrue(over.nearLimits().stream().noneMatch(NearLimit::stricterTaken));
        assertEquals(3, over.nearLimits().size());
    }

    /** CuSO4 counted without its water weighs 159.6 g/mol against 249.7 g/mol with it (IUPAC atomic weights 2021). */
    @Test
    void waterOfCrystallisationIsCountedAsTheTableDoes() {
        Verdict counted = CLASSIFICATION.of(Matter.solution("blue", "CuSO4",
                new Content.MassShare(0.0195, 0, Optional.of("CuSO4"))));

        assertEquals("copper-sulfate-5h2o", counted.rows().get(0).id());
        assertTrue(codes(counted).contains("H318"), "1.95 % as CuSO4 is 3.05 % as the pentahydrate");
        assertTrue(codes(CLASSIFICATION.of(Matter.solution("blue", "CuSO4.5H2O",
                new Content.MassShare(0.0195, 0, Optional.of("CuSO4.5H2O"))))).contains("H319"));
    }

    @Test
    void formDecidesWhichRowSpeaks() {
        assertEquals(List.of("H228"), codes(CLASSIFICATION.of(Matter.pure("ribbon", Form.MASSIVE, "magnesium"))));
        assertEquals(List.of("H228", "H252", "H261"), codes(CLASSIFICATION.of(Matter.pure("Mg", Form.SOLID, "Mg"))));
        assertEquals(List.of("H314", "H331"), codes(CLASSIFICATION.of(Matter.pure("gas", Form.GAS, "HCl"))));
        assertEquals(List.of("H314", "H335"), codes(CLASSIFICATION.of(Matter.solution("acid", "HCl", Content.percent(30)))));
        assertTrue(CLASSIFICATION.of(Matter.solution("acid", "nitric acid", Content.percent(90))).has("H330"));
        assertTrue(CLASSIFICATION.of(Matter.solution("acid", "HNO3", new Content.Molar(21, 0,
                OptionalDouble.of(1.48)))).has("H330"));
        assertEquals(List.of("H228"), codes(CLASSIFICATION.of(Matter.pure("x", Form.SOLID, "magnesium ribbon"))));
    }

    @Test
    void whatIsNotInTheTablesIsUnknown() {
        Verdict verdict = CLASSIFICATION.of(Matter.solution("dye", "fennick blue", Content.percent(0.1)));

        assertEquals(List.of("fennick blue"), assertInstanceOf(Unknown.class, verdict).parts());
        assertFalse(verdict.known());
        assertFalse(verdict.harmless());
    }

    @Test
    void anUnknownPartMakesTheWholeUnknownAndTheRestStands() {
        Verdict verdict = CLASSIFICATION.of(Matter.of("indicator", Form.SOLUTION,
                List.of(Part.of("fennick blue", Content.percent(0.1)), Part.of("ethanol", Content.percent(60)))));

        assertInstanceOf(Unknown.class, verdict);
        assertEquals(List.of("H225"), codes(verdict));
    }

    @Test
    void aFormulaThatIsomersShareNamesNothing() {
        assertFalse(CLASSIFICATION.of(Matter.pure("x", Form.LIQUID, "C4H8O2")).known());
    }

    @Test
    void aRowWithoutDataIsUnknown() {
        assertFalse(CLASSIFICATION.of(Matter.pure("gas", Form.GAS, "chloramine")).known());
    }

    /** CLP Annex I 3.2.3.1.2 speaks only in the absence of other information. */
    @Test
    void extremePHCountsOnlyWhereNothingElseIsKnown() {
        Matter unknown = Matter.solution("left over", "fennick salt", Content.percent(1)).atPH(12);
        Matter harmless = Matter.solution("left over", "NaCl", Content.percent(1)).atPH(1.5);
        Matter limited = Matter.solution("acid", "HCl", Content.percent(0.4)).atPH(1);

        assertTrue(CLASSIFICATION.of(unknown).has("H314"));
        assertTrue(CLASSIFICATION.of(harmless).has("H314"));
        assertFalse(CLASSIFICATION.of(limited).has("H314"));
    }

    /** What is thrown together is no mixture that anybody tested: its extreme pH stands, whatever the limits of its parts (CLP Annex I 3.2.3.1.2). */
    @Test
    void ofWasteAnExtremePHCountsBesideTheLimitsOfItsParts() {
        Matter acid = Matter.solution("left over", "HCl", Content.percent(0.4));

        assertTrue(CLASSIFICATION.ofWaste(acid.atPH(2.0)).has("H314"));
        assertTrue(CLASSIFICATION.ofWaste(acid.atPH(2.1)).has("H314"));
        assertFalse(CLASSIFICATION.ofWaste(acid.atPH(2.3)).has("H314"));
        assertTrue(CLASSIFICATION.ofWaste(acid.atPH(11.4)).has("H314"));
        assertFalse(CLASSIFICATION.ofWaste(acid.atPH(11.2)).has("H314"));
        assertFalse(CLASSIFICATION.ofWaste(acid).has("H314"));
    }

    /** CLP Annex I Table 3.2.3: shares of corrosive substances add up, here 3/5 + 3/5 of the generic limit. */
    @Test
    void sharesOfOneEffectAddUp() {
        Verdict both = CLASSIFICATION.of(Matter.of("mixture", Form.SOLUTION,
                List.of(Part.of("silver nitrate", Content.percent(3)), Part.of("zinc chloride", Content.percent(3)))));

        assertTrue(codes(both).contains("H314"));
    }

    /** Annex VI: cobalt(II) chloride from 0.01 % on is Carc. 1B; a sensitiser from 0.1 % on needs EUH208 (CLP Annex II 2.8). */
    @Test
    void tracesOfCarcinogensAndSensitisersAreNotLost() {
        Verdict cobalt = CLASSIFICATION.of(Matter.solution("pink", "CoCl2", Content.percent(0.1)));

        assertTrue(codes(cobalt).contains("H350i"));
        assertEquals(List.of("EUH208"), cobalt.supplemental().stream().map(Statement::code).toList());
        assertEquals("Contains cobalt(II) chloride. May produce an allergic reaction", cobalt.supplemental().get(0).printed());
    }

    @Test
    void aSaltStandsForAnIonAndThatIsSaid() {
        Verdict zinc = CLASSIFICATION.of(Matter.solution("left", "Zn^2+", Content.molar(0.5)));

        assertEquals("zinc-chloride", zinc.rows().get(0).id());
        assertTrue(zinc.remarks().contains(new Remark(Remark.About.ION, List.of("Zn^2+", "zinc chloride"))));
        assertFalse(CLASSIFICATION.of(Matter.solution("left", "Tl^+", Content.molar(0.5))).known());
    }

    @Test
    void whatIsFromMemoryIsMarked() {
        assertTrue(CLASSIFICATION.of(Matter.pure("salt", Form.SOLID, "NaCl")).remarks().stream()
                .anyMatch(r -> r.about() == Remark.About.FROM_MEMORY));
    }
}
