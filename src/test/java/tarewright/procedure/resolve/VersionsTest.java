package tarewright.procedure.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.finding.Severity;
import tarewright.procedure.check.Checks;
import tarewright.procedure.syntax.Reader;
import tarewright.procedure.syntax.SourceFile;
import tarewright.setting.Overrides;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/**
 * Versions A, B … of the questions' numbers: the numbers differ, each version's answers are right for its own, and what is done at the bench is one for the class. Answers are worked by hand
 * from IUPAC's abridged standard atomic weights of 2021 (Pure Appl. Chem. 94 (2022) 573-600): CaCO3 40.078 + 12.011 + 3 × 15.999 = 100.086 g/mol, Na2CO3 2 × 22.990 + 12.011 + 3 × 15.999 = 105.988 g/mol.
 */
class VersionsTest {
    private static final ReferenceTables TABLES = Tables.load();
    private static final String BENCH = """
            ---
            title: Salt and chalk
            %s
            ---

            ```apparatus
            balance: balance; reads to 0.01 g; one per class
            cylinder: measuring cylinder, 25 mL; graduation 0.5 mL; one per group
            ```

            ```solid salt
            substance: sodium chloride
            mass: 5.85 g
            weigh with: balance
            ```

            %s

            1. Weigh {salt} of {label of salt}. %s

            %s

            ```waste
            into: the sink
            ```
            """;
    private static final String CHALK = """
            ```value chalk
            versions: 2.00 g; 2.50 g; 3.50 g
            ```
            """;
    private static final String ASKED = """
            1. What amount is {chalk} of {formula CaCO3}?

               ```answer
               value: chalk / molar mass of CaCO3
               unit: mmol
               shown to: 3 figures
               ```

            2. What amount of salt did you weigh?

               ```answer
               value: moles of salt
               unit: mmol
               ```
            """;

    private static Found<Resolved> resolve(String source, int versions) {
        Found<SourceFile> file = Reader.read(new SourceText("procedure.md", source));
        Found<Resolved> resolved = Resolver.resolve("procedure", file.value(), Overrides.NONE.withVersions(versions), TABLES);
        List<Finding> all = new ArrayList<>(Stream.of(file.findings(), resolved.findings()).flatMap(List::stream).toList());
        Checks.run(resolved.value()).stream().filter(f -> !all.contains(f)).forEach(all::add);
        return new Found<>(resolved.value(), all);
    }

    private static String procedure(String values, String step, String questions) {
        return BENCH.formatted("groups: 7", values, step, questions);
    }

    private static List<String> ids(Found<Resolved> found) {
        return found.findings().stream().filter(f -> f.severity() != Severity.NOTE).map(Finding::id).sorted().toList();
    }

    private static double answer(Resolved procedure, int question) {
        return procedure.answers().get(question - 1).value().orElseThrow().shownValue();
    }

    /** 2.00 g / 100.086 g/mol = 19.98 mmol; 2.50 g: 24.98 mmol; 3.50 g: 34.97 mmol. Worked by hand, atomic weights as above. */
    @Test
    void everyVersionHasItsOwnNumberAndTheAnswerThatIsRightForIt() {
        Found<Resolved> found = resolve(procedure(CHALK, "", ASKED), 3);
        assertEquals(List.of(), ids(found));
        List<Version> versions = found.value().eachVersion();
        assertEquals(List.of("A", "B", "C"), versions.stream().map(Version::letter).toList());
        assertEquals(List.of(2.00, 2.50, 3.50), versions.stream().map(v -> v.resolved().values().get("chalk").shownValue()).toList());
        assertEquals(19.98, answer(versions.get(0).resolved(), 1), 0.005);
        assertEquals(24.98, answer(versions.get(1).resolved(), 1), 0.005);
        assertEquals(34.97, answer(versions.get(2).resolved(), 1), 0.005);
    }

    /** With two asked for, the third number stays in the file; with none, everybody has the first and no sheet carries a letter. */
    @Test
    void thereAreAsManyVersionsAsAreAskedFor() {
        assertEquals(2, resolve(procedure(CHALK, "", ASKED), 2).value().versions().size());
        Resolved plain = resolve(procedure(CHALK, "", ASKED), 1).value();
        assertEquals(List.of(), plain.versions());
        assertEquals(19.98, answer(plain, 1), 0.005);
        assertEquals("", plain.eachVersion().get(0).letter());
    }

    /** Every figure of every block, every total and every reading is the same in all versions, and so is the answer that comes from the bench. */
    @Test
    void whatIsDoneAtTheBenchIsOneForTheClass() {
        List<Version> versions = resolve(procedure(CHALK, "", ASKED), 3).value().versions();
        Map<Property, Double> first = figures(versions.get(0).resolved());
        assertFalse(first.isEmpty());
        assertTrue(first.containsKey(Property.CLASS_TOTAL));
        versions.forEach(v -> assertEquals(first, figures(v.resolved())));
        versions.forEach(v -> assertEquals(answer(versions.get(0).resolved(), 2), answer(v.resolved(), 2)));
    }

    private static Map<Property, Double> figures(Resolved procedure) {
        Map<Property, Double> all = new java.util.EnumMap<>(Property.class);
        procedure.quantity("salt").orElseThrow().figures().forEach((property, figure) -> all.put(property, figure.value()));
        return all;
    }

    /** A value worked from one that differs differs with it: twice 2.00 g and twice 2.50 g. */
    @Test
    void whatFollowsFromANumberFollowsInEachVersion() {
        String values = CHALK + "\n```value both\nis: 2 * chalk\nunit: g\n```\n";
        Found<Resolved> found = resolve(procedure(values, "", ASKED.replace("{chalk}", "{both}").replace("value: chalk", "value: both")), 2);
        assertEquals(List.of(), ids(found));
        assertEquals(4.00, found.value().versions().get(0).resolved().values().get("both").shownValue(), 1e-9);
        assertEquals(5.00, found.value().versions().get(1).resolved().values().get("both").shownValue(), 1e-9);
        assertEquals(2 * 24.98, answer(found.value().versions().get(1).resolved(), 1), 0.05);
    }

    /** A step, a note for preparation or a reading with a number that differs would part the class: it is refused, whether versions are asked for or not. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void aNumberThatDiffersIsRefusedAtTheBench(int versions) {
        assertEquals(List.of("version-at-the-bench"), ids(resolve(procedure(CHALK, "Add {chalk} of chalk.", ASKED), versions)));
        assertEquals(List.of("version-at-the-bench"), ids(resolve(procedure(CHALK + "\n```prep\nPut out {chalk}.\n```\n", "", ASKED), versions)));
        String reading = "\n```reading left\nexpect: 0.5 * chalk\nread with: balance\n```\n\n```value half\nis: 0.5 * chalk\n```\n";
        assertTrue(ids(resolve(procedure(CHALK + reading, "", ASKED + "\n| left / g |\n|---|\n| {blank left} |\n"), versions)).contains("version-at-the-bench"));
        assertEquals(List.of("version-at-the-bench"), ids(resolve(procedure(CHALK + "\n```value half\nis: 0.5 * chalk\n```\n", "Add {half}.", ASKED), versions)));
    }

    /** The worst that could happen: the sheet shows one number for all, and the key of B is worked from another. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void aNumberThatNoStudentReadsIsRefused(int versions) {
        assertEquals(List.of("version-not-shown"), ids(resolve(procedure(CHALK, "", ASKED.replace("{chalk}", "2.00 g")), versions)));
        String onlyInTheKey = ASKED.replace("{chalk}", "2.00 g") + "\n```key\nVersion B has {chalk}.\n```\n";
        assertEquals(List.of("version-not-shown"), ids(resolve(procedure(CHALK, "", onlyInTheKey), versions)));
        String inATable = ASKED.replace("{chalk}", "the mass in the table") + "\n| chalk |\n|---|\n| {chalk} |\n";
        assertEquals(List.of(), ids(resolve(procedure(CHALK, "", inATable), versions)));
    }

    /** The other way round: each version reads its own number, and the answer was typed with the first. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void aNumberThatNoAnswerIsWorkedFromIsRefused(int versions) {
        assertEquals(List.of("version-not-used"), ids(resolve(procedure(CHALK, "", ASKED.replace("value: chalk /", "value: 2.00 g /")), versions)));
    }

    /** Fewer numbers than versions are refused with both counts; a number that stands there twice is no other version. */
    @Test
    void tooFewNumbersAndEqualOnesAreRefused() {
        Found<Resolved> few = resolve(procedure(CHALK, "", ASKED), 4);
        assertEquals(List.of("versions-few"), ids(few));
        assertEquals(Map.of("name", "chalk", "typed", 3, "wanted", 4), few.findings().get(0).fields());
        assertTrue(ids(resolve(procedure(CHALK.replace("2.50", "2.00"), "", ASKED), 1)).contains("version-twice"));
        assertTrue(ids(resolve(procedure(CHALK.replace("2.00 g; 2.50 g", "2000 mg; 2.00 g"), "", ASKED), 1)).contains("version-twice"));
    }

    @ParameterizedTest
    @CsvSource({"versions: 2.00 g, bad-shape", "versions: 2.00 g; 2 mL, wrong-dimension", "versions: 2 g; 3 g; 4 g; 5 g; 6 g, bad-shape", "versions: 2 to 3 g; 4 g, range-here",
        "is: 2 g\\nversions: 2.00 g; 3.00 g, amount-fixed-twice"})
    void aListThatCannotBeReadIsToldAtItsPlace(String field, String finding) {
        Found<Resolved> found = resolve(procedure("```value chalk\n" + field.replace("\\n", "\n") + "\n```\n", "", ASKED), 2);
        assertTrue(ids(found).contains(finding), ids(found).toString());
    }

    /** One version is then printed for everybody, and the message says what to write: in the block that could differ, if there is one. */
    @Test
    void whereNothingCanDifferItIsSaidWithWhatToWrite() {
        String own = ASKED.substring(ASKED.indexOf("2. What")).replace("2. What", "1. What");
        Found<Resolved> nothing = resolve(procedure("", "", own), 2);
        assertEquals(List.of("nothing-to-vary"), ids(nothing));
        assertEquals(Severity.WARNING, nothing.findings().get(0).severity());
        assertEquals(List.of(), nothing.value().versions());
        assertEquals(List.of(), ids(resolve(procedure("", "", own), 1)));
    }

    /** 2.00 g and 2.01 g of chalk are both 20 mmol to two figures: a neighbour's answer would do. */
    @Test
    void numbersSoNearThatTheAnswersAreTheSameAreTold() {
        Found<Resolved> found = resolve(procedure(CHALK.replace("2.50", "2.01"), "", ASKED.replace("3 figures", "2 figures")), 2);
        assertEquals(List.of("version-same-answer"), ids(found));
        assertEquals("A", found.findings().get(0).fields().get("first"));
    }

    /** 3.00 g less 2.00 g is left; of 3.50 g nothing is, and the answer is negative. */
    @Test
    void anAnswerThatTurnsNegativeInOneVersionIsTold() {
        String left = ASKED.replace("value: chalk / molar mass of CaCO3\n   unit: mmol", "value: 3.00 g - chalk\n   unit: g");
        assertEquals(List.of("version-turns"), ids(resolve(procedure(CHALK, "", left), 3)));
        assertEquals(List.of(), ids(resolve(procedure(CHALK, "", left), 2)));
    }

    /** Which of two limits can be another in version B; a choice and an answer in words are written once. */
    @ParameterizedTest
    @ValueSource(strings = {"choice: chalk; acid", "words: The chalk, since there is less of it."})
    void anAnswerWrittenOnceToAQuestionWithNumbersIsTold(String sought) {
        String question = "\n3. {chalk} of chalk meets 30 mmol of acid. Which limits?\n\n   ```answer\n   " + sought + "\n   ```\n";
        assertEquals(List.of("version-in-words"), ids(resolve(procedure(CHALK, "", ASKED + question), 2)));
        assertEquals(List.of(), ids(resolve(procedure(CHALK, "", ASKED + question), 1)));
        String settled = "\n```settled\nfinding: version-in-words\nbecause: chalk limits with each of the numbers\n```\n";
        assertEquals(List.of(), ids(resolve(procedure(CHALK, "", ASKED + question + settled), 2)));
    }

    /** Amounts that are dealt and versions at once: each version has every hand, with the hand's amount and the version's number. */
    @Test
    void dealtAmountsAndVersionsGoTogether() {
        String both = procedure(CHALK, "", ASKED).replace("mass: 5.85 g", "vary: 5.85 g; 2.92 g");
        Found<Resolved> found = resolve(both, 2);
        assertEquals(List.of(), ids(found));
        for (Version version : found.value().versions()) {
            List<Hand> hands = version.resolved().hands();
            assertEquals(List.of(List.of(1, 3, 5, 7), List.of(2, 4, 6)), hands.stream().map(Hand::groups).toList());
            hands.forEach(h -> assertEquals(version.letter().equals("A") ? 19.98 : 24.98, answer(h.resolved(), 1), 0.005));
            assertNotEquals(answer(hands.get(0).resolved(), 2), answer(hands.get(1).resolved(), 2));
        }
    }

    /** A finding that only version B has says so; one that all versions have is told once. */
    @Test
    void whatIsWrongInOneVersionAloneNamesIt() {
        String zero = ASKED.replace("value: chalk / molar mass of CaCO3\n   unit: mmol", "value: 1 g * 1 g / (2.50 g - chalk)\n   unit: g");
        Found<Resolved> found = resolve(procedure(CHALK, "", zero), 2);
        Finding wrong = found.findings().stream().filter(f -> f.id().equals("division-by-zero")).findFirst().orElseThrow();
        assertEquals("B", wrong.fields().get("inVersion"));
        assertTrue(found.hasErrors());
        Found<Resolved> unknown = resolve(procedure(CHALK, "Add {nothing of the kind}.", ASKED), 3);
        assertEquals(1, unknown.findings().stream().filter(f -> f.severity() == Severity.ERROR).count());
    }

    /** A value as it is on the day is one for all; a number that differs has none. */
    @Test
    void aValueOfTheDayCannotStandForSeveralNumbers() {
        Found<SourceFile> file = Reader.read(new SourceText("procedure.md", procedure(CHALK, "", ASKED)));
        var day = tarewright.procedure.declare.DeclarationReader.onTheDay(new tarewright.procedure.syntax.Fields.Piece("chalk is 2.2 g",
                new SourceText("day", "chalk is 2.2 g").span(0, 14)).split(';'), TABLES);
        Found<Resolved> found = Resolver.resolve("procedure", file.value(), Overrides.NONE.withVersions(2).withOnTheDay(day.value()), TABLES);
        assertTrue(ids(found).contains("day-value-in-versions"), ids(found).toString());
    }
}
