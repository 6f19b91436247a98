package tarewright.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.document.Documents;
import tarewright.document.Sheet;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.finding.Severity;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.declare.Notes.CautionBlock;
import tarewright.procedure.resolve.Referent;
import tarewright.print.PlainText;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.quantity.Dimension;
import tarewright.setting.Overrides;
import tarewright.tables.HazardTables;
import tarewright.wording.FindingText;
import tarewright.wording.Numbers;

/**
 * Every procedure that we ship is clean at its own setting and for small and large classes, in cold and hot rooms, at sea level and on a high plateau; and each is complete
 * enough to teach from.
 */
class CleanTest {
    private static final int LONGEST_SENTENCE = 20;
    private static final Pattern MOLAR_VOLUME = Pattern.compile("[0-9]\\u202FL/mol");
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

    /** A question is worked from readings and from what the sheet says: no molar mass, no gas constant has to be looked up. */
    @ParameterizedTest
    @MethodSource("files")
    void whatAQuestionNeedsStandsOnTheHandout(Path file) {
        Resolved procedure = Library.resolve(file, Overrides.NONE).value();
        String handout = PlainText.of(new Documents(HazardTables.of("")).sheets(procedure, EnumSet.of(Sheet.Kind.HANDOUT), List.of(), "abcdefg", "").get(0));
        Numbers numbers = Numbers.in(procedure.setting().language());
        List<String> missing = new ArrayList<>();
        for (ResolvedAnswer answer : procedure.answers()) {
            Set<Figure> needed = new LinkedHashSet<>();
            answer.value().ifPresent(v -> lookedUp(v, needed));
            needed.stream().filter(f -> f.dimension().equals(Dimension.MOLAR_MASS) && !handout.contains(numbers.printed(f)))
                    .forEach(f -> missing.add("question " + answer.number() + ": " + f));
            if (needed.stream().anyMatch(f -> f.symbol().letter().equals("R")) && !MOLAR_VOLUME.matcher(handout).find()) {
                missing.add("question " + answer.number() + ": molar volume");
            }
        }
        assertEquals(List.of(), missing);
    }

    /** Molar masses and constants behind a figure, as far as to what is read off or measured out. */
    private static void lookedUp(Figure figure, Set<Figure> needed) {
        boolean constant = figure.step() instanceof Step.Given given && given.origin() instanceof Origin.Constant;
        if (constant || figure.dimension().equals(Dimension.MOLAR_MASS)) {
            needed.add(figure);
        } else if (!(figure.step() instanceof Step.Read || figure.step() instanceof Step.Set)) {
            figure.from().forEach(f -> lookedUp(f, needed));
        }
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
