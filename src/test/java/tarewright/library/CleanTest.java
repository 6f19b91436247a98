package tarewright.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.finding.Severity;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.declare.Notes.CautionBlock;
import tarewright.procedure.resolve.Referent;
import tarewright.procedure.resolve.Resolved;
import tarewright.setting.Overrides;
import tarewright.wording.FindingText;

/**
 * Every procedure that we ship is clean at its own setting and for small and large classes, in cold and hot rooms, at sea level and on a high plateau; and each is complete
 * enough to teach from.
 */
class CleanTest {
    private static final int LONGEST_SENTENCE = 20;
    private static final Pattern STEP = Pattern.compile("(?m)^[0-9]+\\. (.*)$");

    static Stream<Path> files() {
        return Library.files().stream();
    }

    @Test
    void thereAreTenOrMore() {
        assertTrue(Library.files().size() >= 10, Library.files().toString());
    }

    @ParameterizedTest
    @MethodSource("files")
    void cleanAtItsOwnSetting(Path file) {
        assertEquals(List.of(), troubles(Library.resolve(file, Overrides.NONE)));
    }

    @ParameterizedTest
    @MethodSource("files")
    void cleanForEveryClassAndRoom(Path file) {
        List<String> found = new ArrayList<>();
        for (String temperature : List.of("15 °C", "30 °C")) {
            for (String pressure : List.of("80 kPa", "103 kPa")) {
                // Class size and room do not meet in any figure but totals, so each size sees two of the four rooms.
                for (int groups : temperature.equals("15 °C") ? List.of(1, 30) : List.of(7, 14)) {
                    troubles(Library.resolve(file, Library.setting(groups, temperature, pressure)))
                            .forEach(t -> found.add(groups + " groups, " + temperature + ", " + pressure + ": " + t));
                }
            }
        }
        assertEquals(List.of(), found);
    }

    /** What stands on the page in the place of a reference is never nothing: a reference that came to nothing without a finding would be silent. */
    @ParameterizedTest
    @MethodSource("files")
    void everyReferenceStandsForSomething(Path file) {
        Resolved procedure = Library.resolve(file, Overrides.NONE).value();
        assertFalse(procedure.referents().isEmpty());
        procedure.referents().forEach((reference, referent) -> assertFalse(referent instanceof Referent.Nothing, reference.toString()));
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyBlockHasItsFigures(Path file) {
        Resolved procedure = Library.resolve(file, Overrides.NONE).value();
        procedure.quantities().forEach(q -> assertFalse(q.figures().isEmpty(), q.name()));
        procedure.quantities().stream().filter(q -> q.block().block().fields().has("strength")).forEach(q -> assertTrue(
                q.figures().keySet().stream().anyMatch(p -> p.words().equals("strength")), q.name()));
        assertEquals(procedure.procedure().values().size(), procedure.values().size());
        assertEquals(procedure.procedure().readings().size(), procedure.readings().size());
        procedure.answers().stream().filter(a -> a.block().sought() instanceof AnswerBlock.Worked)
                .forEach(a -> assertTrue(a.value().isPresent(), "question " + a.number()));
    }

    @ParameterizedTest
    @MethodSource("files")
    void completeEnoughToTeachFrom(Path file) {
        Resolved procedure = Library.resolve(file, Overrides.NONE).value();
        var front = procedure.procedure().front();
        assertFalse(front.code().isBlank() || front.time().isBlank() || front.level().isBlank(), "code, time, level");
        assertTrue(front.aims().size() >= 3, "aims");
        assertFalse(procedure.procedure().apparatus().isEmpty());
        assertFalse(procedure.procedure().wastes().isEmpty());
        assertTrue(procedure.procedure().cautions().stream().allMatch(CleanTest::whole), "cautions");
        assertFalse(procedure.procedure().cautions().isEmpty());
        List<AnswerBlock> answers = procedure.procedure().answers();
        assertTrue(answers.size() >= 6, "questions");
        assertTrue(answers.stream().allMatch(a -> a.marks().isPresent()), "marks");
        for (Class<?> kind : List.of(AnswerBlock.Worked.class, AnswerBlock.InWords.class, AnswerBlock.Choice.class)) {
            assertTrue(answers.stream().anyMatch(a -> kind.isInstance(a.sought())), kind.getSimpleName());
        }
        String text = Library.text(file);
        assertTrue(text.contains("```key\n") && text.contains("```prep\n"), "key and prep");
        assertTrue(text.contains("{blank "), "a table to fill");
        assertTrue(text.contains("<!--\nChecked on paper") || text.contains("<!--\nComprobado en papel"), "where its figures were checked");
    }

    private static boolean whole(CautionBlock caution) {
        return !caution.hazard().isBlank() && !caution.consequence().isBlank() && !caution.avoid().isBlank();
    }

    /** A sentence of a step has twenty words at most, an amount counting as two. */
    @ParameterizedTest
    @MethodSource("files")
    void sentencesOfStepsAreShort(Path file) {
        Matcher step = STEP.matcher(Library.text(file));
        List<String> tooLong = new ArrayList<>();
        while (step.find()) {
            for (String sentence : step.group(1).split("(?<=[.?!])\\s+")) {
                if (sentence.replaceAll("\\{[^}]*\\}", "two words").split("\\s+").length > LONGEST_SENTENCE) {
                    tooLong.add(sentence);
                }
            }
        }
        assertEquals(List.of(), tooLong);
    }

    private static List<String> troubles(Found<Resolved> found) {
        FindingText words = FindingText.in("en");
        return found.findings().stream().filter(f -> f.severity() != Severity.NOTE).map((Finding f) -> words.full(f)).toList();
    }
}
