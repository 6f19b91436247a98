package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.safety.Bench.CLASSIFICATION;
import static tarewright.safety.Bench.RULES;
import static tarewright.safety.Bench.codes;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabelAndResponseTest {
    private static List<String> small(Verdict verdict, double litres) {
        return SmallLabel.of(verdict, litres, RULES).statements().stream().map(Statement::code).toList();
    }

    /** CLP Annex I 1.5.2.1.1 (b) 12 and 13; number 14 only where it is not supplied to the general public, so H335 stays. */
    @Test
    void aSmallBottleMayLeaveOutIrritation() {
        Verdict acid = Bench.solution("HCl", 12);

        assertEquals(List.of("H335"), small(acid, 0.125));
        assertEquals(codes(acid), small(acid, 0.126));
        assertEquals(List.of("CLP Annex I 1.5.2.1.1 (b) 12", "CLP Annex I 1.5.2.1.1 (b) 13"),
                SmallLabel.of(acid, 0.1, RULES).omitted().stream().map(o -> o.by().clause()).toList());
    }

    @Test
    void corrosionEyeDamageAndToxicityAreNeverLeftOut() {
        Set<String> grave = Set.of("H314", "H318", "H300", "H301", "H310", "H311", "H330", "H331", "H290", "H340", "H350",
                "H350i", "H360FD",
                "H370", "H372", "H304", "H334");
        SplittableRandom random = new SplittableRandom(15);
        for (int i = 0; i < 1500; i++) {
            Verdict verdict = CLASSIFICATION.of(Bench.random(random));
            List<String> kept = small(verdict, 0.01);
            codes(verdict).stream().filter(grave::contains).forEach(c -> assertTrue(kept.contains(c), c));
        }
    }

    @Test
    void aMatterThatIsNotKnownHasNoReducedLabel() {
        Verdict verdict = CLASSIFICATION.of(Matter.of("x", Form.SOLUTION,
                List.of(Part.of("HCl", Content.percent(12)), Part.of("fennick salt", Content.percent(1)))));

        assertEquals(codes(verdict), small(verdict, 0.01));
    }

    private static List<String> responses(Verdict... verdicts) {
        return Response.of(List.of(verdicts), RULES).stream().map(r -> r.topic() + " " + r.statement().code()).toList();
    }

    /** CLP Annex I label-element tables 3.1.3, 3.2.5, 3.3.5, 3.8.4. */
    @ParameterizedTest
    @CsvSource({"H314, EYES P305+P351+P338", "H314, SKIN P303+P361+P353", "H314, SWALLOWED P301+P330+P331", "H314, EXPOSED P310"})
    void corrosiveAnswers(String code, String expected) {
        assertTrue(responses(Bench.solution("NaOH", 10)).contains(expected), code);
    }

    @Test
    void theStricterCallForHelpStandsAlone() {
        List<String> both = responses(Bench.solution("NaOH", 10), CLASSIFICATION.of(Matter.pure("x", Form.SOLID, "citric acid")));

        assertTrue(both.contains("EYES P337+P313"));
        List<String> toxic = responses(CLASSIFICATION.of(Matter.pure("x", Form.SOLID, "BaCl2")),
                CLASSIFICATION.of(Matter.pure("y", Form.SOLID, "KMnO4")));
        assertTrue(toxic.contains("SWALLOWED P301+P310"));
        assertFalse(toxic.contains("SWALLOWED P301+P312"));
    }

    @Test
    void openPlacesOfTheStandardAreFilled() {
        Stream<Response> all = Response.of(RULES.substances().rows().stream()
                .map(r -> CLASSIFICATION.of(Matter.pure(r.name(), Form.SOLID, r.id()))).toList(), RULES).stream();

        all.forEach(r -> assertFalse(r.text().contains("\u2026") || r.text().contains("[") || r.text().contains("<"), r.text()));
    }

    @Test
    void metalFiresAreNotPutOutWithWater() {
        List<Response> fire = Response.of(List.of(CLASSIFICATION.of(Matter.pure("Mg", Form.POWDER, "Mg"))), RULES).stream()
                .filter(r -> r.topic() == ResponseRule.Topic.FIRE).toList();

        assertEquals(List.of("In case of fire: Use dry sand to extinguish."), fire.stream().map(Response::text).toList());
    }

    @Test
    void everyResponseIsInTheStandardsList() {
        RULES.responses().forEach(r -> {
            RULES.statements().of(r.code());
            RULES.statements().of(r.statement());
        });
    }

    @Test
    void printedStatementsHaveNoPlaceholder() {
        assertEquals("Causes damage to organs through prolonged or repeated exposure", RULES.statements().of("H372").printed());
        assertEquals("IF SWALLOWED: Immediately call a POISON CENTER/doctor", RULES.statements().of("P301+P310").printed());
    }
}
