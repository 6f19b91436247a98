package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.safety.Bench.CLASSIFICATION;
import static tarewright.safety.Bench.RULES;
import static tarewright.safety.Bench.codes;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

class ClassificationLawsTest {
    static List<SubstanceHazards> rows() {
        return RULES.substances().rows().stream().filter(SubstanceHazards::known).toList();
    }

    /** The rules give back what Annex VI publishes for the undiluted substance. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void undilutedASubstanceHasItsPublishedClasses(SubstanceHazards row) {
        Form form = switch (row.state()) {
            case GAS -> Form.GAS;
            case LIQUID -> Form.LIQUID;
            case SOLUTION -> Form.LIQUID;
            case SOLID -> row.forms().isEmpty() ? Form.SOLID : row.forms().iterator().next();
        };

        Verdict verdict = CLASSIFICATION.of(Matter.pure("pure", form, row.id()));

        Map<Endpoint, HazardClass> found = verdict.assigned().stream().map(Assigned::hazard)
                .collect(Collectors.toMap(HazardClass::endpoint, Function.identity()));
        for (HazardClass published : row.classes()) {
            HazardClass ours = found.get(published.endpoint());
            assertTrue(ours != null && ours.severity() >= published.severity(), () -> published + " but " + ours);
            if (ours.severity() == published.severity()) {
                assertEquals(published.code(), ours.code());
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void moreOfASubstanceNeverTakesAHazardAway(SubstanceHazards row) {
        SplittableRandom random = new SplittableRandom(row.id().hashCode());
        for (int i = 0; i < 5; i++) {
            double more = 100 * Math.pow(random.nextDouble(), 2);
            double less = more * random.nextDouble();
            for (Form form : List.of(Form.SOLUTION, Form.LIQUID, Form.SOLID, Form.SLURRY)) {
                Verdict weak = CLASSIFICATION.of(Matter.of("weak", form, List.of(Part.of(row.name(), Content.percent(less)))));
                Verdict strong = CLASSIFICATION.of(Matter.of("strong", form, List.of(Part.of(row.name(),
                        Content.percent(more)))));
                for (Assigned a : weak.assigned()) {
                    assertTrue(strong.assigned().stream().anyMatch(b -> b.hazard().endpoint() == a.hazard().endpoint()
                            && b.hazard().severity() >= a.hazard().severity()), () -> a + " at " + less + " lost at " + more);
                }
            }
        }
    }

    @Test
    void removingASubstanceFromTheDataTurnsItUnknown() {
        for (SubstanceHazards row : RULES.substances().rows()) {
            Classification without = new Classification(RULES.with(RULES.substances().without(row.id())));
            assertFalse(without.of(Matter.pure("x", Form.SOLID, row.id())).known(), row.id());
        }
    }

    @Test
    void anotherPartNeverTakesAHazardAway() {
        SplittableRandom random = new SplittableRandom(41);
        for (int i = 0; i < 2000; i++) {
            Matter matter = Bench.random(random);
            Matter alone = Matter.of("alone", matter.form(), matter.parts().subList(0, 1));
            Set<Endpoint> whole = endpoints(CLASSIFICATION.of(matter));
            assertTrue(whole.containsAll(endpoints(CLASSIFICATION.of(alone))), matter::toString);
        }
    }

    private static Set<Endpoint> endpoints(Verdict verdict) {
        return verdict.assigned().stream().map(a -> a.hazard().endpoint()).collect(Collectors.toSet());
    }

    /** CLP Article 26(1): precedence within one label; Article 20(3): one signal word. */
    @Test
    void labelsKeepTheRulesOfPrecedence() {
        SplittableRandom random = new SplittableRandom(26);
        for (int i = 0; i < 2500; i++) {
            Verdict verdict = CLASSIFICATION.of(Bench.random(random));
            List<String> pictograms = verdict.pictograms();
            List<String> classes = verdict.assigned().stream().map(a -> a.hazard().code()).toList();
            if (pictograms.contains("GHS06")) {
                assertFalse(pictograms.contains("GHS07"), () -> pictograms + " " + classes);
            }
            if (pictograms.contains("GHS07")) {
                boolean beyondIrritation = classes.stream().anyMatch(Set.of("H302", "H312", "H332", "H317", "H335", "H336",
                        "H420")::contains);
                assertTrue(!pictograms.contains("GHS05") || beyondIrritation, () -> pictograms + " " + classes);
            }
            assertFalse(codes(verdict).contains("H314") && codes(verdict).contains("H318"), () -> pictograms + " " + classes);
            assertFalse(codes(verdict).contains("H410") && codes(verdict).contains("H400"), () -> pictograms + " " + classes);
            assertEquals(classes.stream().anyMatch(DANGER::contains) || dangerByCategory(verdict), verdict.signalWord()
                    .filter(SignalWord.DANGER::equals).isPresent(), () -> pictograms + " " + classes);
        }
    }

    /** Statements that CLP Annex I always pairs with Danger. */
    private static final Set<String> DANGER = Set.of("H220", "H251", "H224", "H225", "H250", "H260", "H270", "H271", "H300",
            "H301",
            "H304", "H310",
            "H311", "H314", "H318", "H330", "H331", "H334", "H340", "H350", "H350i", "H360F", "H360D", "H360FD", "H360Df",
                    "H360Fd", "H370",
            "H372");

    /** H228 and H261 and H272 are Danger or Warning by category. */
    private static boolean dangerByCategory(Verdict verdict) {
        return verdict.assigned().stream().map(Assigned::hazard).anyMatch(h -> h.code().equals("H228") && h.category().equals("1")
                || h.code().equals("H261") && h.category().equals("2") || h.code().equals("H272") && h.category().equals("2"));
    }

    /** Which symbol each statement has, by CLP Annex V, written down apart from the tables. */
    @Test
    void everyPictogramFollowsFromAStatement() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 2000; i++) {
            Verdict verdict = CLASSIFICATION.of(Bench.random(random));
            for (String pictogram : verdict.pictograms()) {
                assertTrue(codes(verdict).stream().anyMatch(c -> pictogramOf(c).equals(pictogram)),
                        () -> pictogram + ": " + codes(verdict));
            }
        }
    }

    private static String pictogramOf(String code) {
        int number = Integer.parseInt(code.substring(1, 4));
        if (number >= 220 && number <= 261) {
            return "GHS02";
        }
        if (number >= 270 && number <= 272) {
            return "GHS03";
        }
        return switch (number) {
            case 290, 314, 318 -> "GHS05";
            case 300, 301, 310, 311, 330, 331 -> "GHS06";
            case 302, 312, 332, 315, 317, 319, 335, 336, 420 -> "GHS07";
            case 304, 334, 340, 341, 350, 351, 360, 361, 370, 371, 372, 373 -> "GHS08";
            case 400, 410, 411 -> "GHS09";
            default -> "";
        };
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/tarewright/safety/annex-iii.csv", numLinesToSkip = 1)
    void statementsAreTheStandardsLetterByLetter(String code, String text) {
        assertEquals(text, RULES.statements().of(code).text());
    }

    @Test
    void everyStatementThatTheTablesUseIsInTheList() {
        for (SubstanceHazards row : RULES.substances().rows()) {
            row.classes().forEach(c -> RULES.statements().of(c.code()));
            row.limits().forEach(l -> RULES.statements().of(l.code()));
            row.supplemental().forEach(RULES.statements()::of);
            row.suppliersAdd().forEach(RULES.statements()::of);
        }
        RULES.acuteEstimates().forEach(a -> RULES.statements().of(a.code()));
    }
}
