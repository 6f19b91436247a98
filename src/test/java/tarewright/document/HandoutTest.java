package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.setting.Overrides;

/** The student's sheet. What it must hold and keep is the project's own promise; layout rules beside the checks. */
class HandoutTest {
    private static final String HYDROGEN = Fixture.source("hydrogen");
    private static final String TITRATION = Fixture.source("titration");

    private static Sheet handout(String source) {
        return Fixture.sheet(Sheet.Kind.HANDOUT, source);
    }

    private static String text(String source) {
        return Fixture.text(handout(source));
    }

    private static <T> List<T> all(List<Piece> pieces, Class<T> kind) {
        List<T> found = new ArrayList<>();
        for (Piece piece : pieces) {
            if (kind.isInstance(piece)) {
                found.add(kind.cast(piece));
            }
            inside(piece).forEach(p -> found.addAll(all(p, kind)));
        }
        return found;
    }

    private static List<List<Piece>> inside(Piece piece) {
        if (piece instanceof Piece.Steps steps) {
            return steps.steps();
        } else if (piece instanceof Piece.Question question) {
            return List.of(question.asked(), question.space(), List.copyOf(question.parts()));
        } else if (piece instanceof Piece.Note note) {
            return List.of(note.inside());
        }
        return List.of();
    }

    // --- leaks

    /** Every answer, key text, expectation and trial by others: the sheet is the same to the last piece. */
    @Test
    void nothingOfAnswersShows() {
        String other = HYDROGEN.replace("value: moles of ribbon", "value: 3 * volume of acid")
                .replaceAll("words: .*", "words: something else").replace("The gas is moist", "Whatever")
                .replace("expect: 6 min", "expect: 99 min").replace("gave: 78 mL", "gave: 11 mL")
                .replace("reject: the syringe", "reject: nothing")
                .replace("it doubles; it stays the same;", "it stays the same; it doubles;");
        assertNotEquals(HYDROGEN, other);
        assertNotEquals(Fixture.text(Fixture.sheet(Sheet.Kind.KEY, HYDROGEN)),
                Fixture.text(Fixture.sheet(Sheet.Kind.KEY, other)));
        assertEquals(handout(HYDROGEN), handout(other));
    }

    /** A strength that is to be found changes nothing but the hazards, which are the same within one class. */
    @Test
    void nothingOfWhatIsFoundShows() {
        String other = TITRATION.replace("0.118 mol/L", "0.135 mol/L");
        assertNotEquals(TITRATION, other);
        assertEquals(handout(TITRATION), handout(other));
        assertEquals(Fixture.sheet(Sheet.Kind.SAFETY, TITRATION), Fixture.sheet(Sheet.Kind.SAFETY, other));
        assertFalse(text(TITRATION).contains("29.5"), text(TITRATION));
    }

    @Test
    void theHazardsOfWhatIsFoundAreThoseOfItsRealStrength() {
        String strong = text(TITRATION.replace("0.118 mol/L", "8.0 mol/L").replace("0.100 mol/L", "7.0 mol/L"));
        assertTrue(strong.contains("hazard: Sample A\n"), strong);
        assertTrue(strong.contains("H314") && strong.contains("Danger"), strong);
        assertFalse(strong.contains("8.0"), strong);
    }

    @ParameterizedTest
    @ValueSource(strings = {"pentahydrate", "5H", "·5", "249", "1.28"})
    void theNumberOfAHydrateIsHidden(String secret) {
        String handout = text(Fixture.source("hydrate"));
        assertFalse(handout.contains(secret), handout);
        String safety = Fixture.text(Fixture.sheet(Sheet.Kind.SAFETY, Fixture.source("hydrate")));
        assertFalse(safety.contains(secret), safety);
        assertTrue(handout.contains("CuSO₄·xH₂O(s) → CuSO₄(s) + x H₂O(g)"), handout);
    }

    /** However the author types it in running text, as code or in the title: what is printed is the formula with the letter, and with another number the sheet is the same. */
    @ParameterizedTest
    @ValueSource(strings = {"CuSO4.5H2O", "CuSO4·5H2O", "CuSO₄·5H₂O", "CuSO4 · 5 H2O", "`CuSO4.5H2O`", "CuSO4•5H2O"})
    void theNumberOfAHydrateIsHiddenInProse(String typed) {
        String source = Fixture.source("hydrate").replace("Heat it until", "Blue crystals are " + typed + ", and " + typed + "(s) is a salt. Heat it until")
                .replace("title: Water in blue crystals", "title: Water in " + typed.replace("`", ""));
        String handout = text(source);
        assertFalse(handout.contains("5H") || handout.contains("5 H") || handout.contains("5H₂O"), handout);
        assertTrue(handout.replace("`", "").contains("Blue crystals are CuSO₄·xH₂O, and CuSO₄·xH₂O(s)"), handout);
        Sheet sheet = handout(source);
        assertEquals("Water in CuSO₄·xH₂O", sheet.title());
        assertEquals("Water in CuSO₄·xH₂O", Fixture.sheet(Sheet.Kind.SAFETY, source).title());
        String other = text(source.replace("5H2O", "6H2O").replace("5H₂O", "6H₂O").replace("5 H2O", "6 H2O"));
        assertEquals(handout, other);
        assertTrue(Fixture.text(Fixture.sheet(Sheet.Kind.KEY, source)).contains("CuSO₄·5H₂O"), "the key says what it is");
    }

    /** What burettes deliver is found, not measured out, whether or not anything is hidden. */
    @Test
    void anEndPointIsNotTold() {
        String known = TITRATION.replace("found by students: yes\n", "");
        assertFalse(text(known).contains("29.5"), text(known));
    }

    // --- order and places

    /** A caution is read before its step (American National Standard Z535.6: the message precedes the action; second-hand). */
    @Test
    void cautionsStandBeforeTheWordsOfTheirSteps() {
        Piece.Steps steps = all(handout(HYDROGEN).pieces(), Piece.Steps.class).get(0);
        assertEquals(3, steps.steps().size());
        assertEquals("WARNING", ((Piece.Caution) steps.steps().get(0).get(0)).word());
        assertEquals("CAUTION", ((Piece.Caution) steps.steps().get(1).get(0)).word());
        assertTrue(steps.steps().get(2).get(0) instanceof Piece.Paragraph);
        assertEquals(2, all(handout(HYDROGEN).pieces(), Piece.Caution.class).size());
    }

    @Test
    void aListThatGoesOnKeepsItsNumbers() {
        String source = "---\ntitle: T\n---\n1. One.\n2. Two.\n\n"
                + "```caution\nseverity: danger\nhazard: hot\navoid: wait\n```\n\n3. Three.\n";
        List<Piece.Steps> steps = all(handout(source).pieces(), Piece.Steps.class);
        assertEquals(List.of(1, 3), steps.stream().map(Piece.Steps::first).toList());
        assertTrue(steps.get(1).steps().get(0).get(0) instanceof Piece.Caution);
    }

    @Test
    void headingsStartAtTwoAndSkipNone() {
        String source = "---\ntitle: T\n---\n# A\n\n##### B\n\nText.\n\n## C\n\n1. Do.\n";
        List<Integer> levels = all(new BodyWalk(Draft.of(Fixture.resolve(source), false),
                new KeyAnswer(Draft.of(Fixture.resolve(source),
                false))).body(), Piece.Heading.class).stream().map(Piece.Heading::level).toList();
        assertEquals(List.of(2, 3, 3), levels);
    }

    @Test
    void questionsAreNumberedWithLetteredParts() {
        List<Piece.Question> questions = handout(HYDROGEN).pieces().stream().filter(Piece.Question.class::isInstance)
                .map(Piece.Question.class::cast).toList();
        assertEquals(List.of("1", "2", "3"), questions.stream().map(Piece.Question::number).toList());
        assertEquals(List.of("3 a", "3 b"), questions.get(2).parts().stream().map(Piece.Question::number).toList());
        assertEquals("2 marks", questions.get(0).marks());
        assertEquals("1 mark", questions.get(1).marks());
    }

    /** Lines: as the author says, else three for a figure and two for each mark in words. */
    @Test
    void thereIsRoomToWrite() {
        List<Integer> lines = all(handout(HYDROGEN).pieces(), Piece.RuledLines.class).stream().map(Piece.RuledLines::lines)
                .toList();
        assertEquals(List.of(2, 2, 2), lines);
    }

    /** The order depends on the options alone: whichever is written first, which is the right one, the sheet is the same. */
    @ParameterizedTest
    @CsvSource({"a;b;c;d", "b;a;c;d", "c;d;a;b", "d;a;b;c"})
    void theOrderOfChoicesTellsNothing(String written) {
        assertEquals(Options.printed(List.of("a", "b", "c", "d")), Options.printed(List.of(written.split(";"))));
    }

    /**
     * Over many questions the right one stands first about as often as chance has it: of 400 with four options, 100 give or
     * take 35.
     */
    @Test
    void theRightChoiceStandsAnywhere() {
        int first = 0;
        for (int i = 0; i < 400; i++) {
            List<String> options = List.of("right " + i, "wrong " + i, "else " + i, "other " + i);
            first += Options.printed(options).get(0).equals(options.get(0)) ? 1 : 0;
        }
        assertTrue(first > 65 && first < 135, "first " + first);
    }

    @Test
    void aTableWithBlanksIsToBeFilled() {
        List<Piece.Table> tables = handout(HYDROGEN).pieces().stream().filter(Piece.Table.class::isInstance)
                .map(Piece.Table.class::cast)
                .toList();
        Piece.Table last = tables.get(tables.size() - 1);
        assertEquals(Piece.Use.FILL, last.use());
        assertTrue(last.rows().get(0).stream().allMatch(c -> c.get(0) instanceof Text.Blank), last.toString());
    }

    // --- what a group needs, and safety

    @Test
    void saysWhatAGroupNeeds() {
        String text = text(HYDROGEN);
        assertTrue(text.contains("| magnesium, Mg | «72 mm», about «0.079 g» | balance |"), text);
        assertTrue(text.contains("| hydrochloric acid (1.0 mol/L), HCl | «10.0 mL» | measuring cylinder, 25 mL |"), text);
        assertTrue(text.contains("splash goggles (2)"), text);
    }

    @Test
    void thereIsNothingOnItThatDependsOnTheClass() {
        assertEquals(handout(Fixture.resolve(HYDROGEN, groups(9))), handout(Fixture.resolve(HYDROGEN, groups(30))));
    }

    private static Sheet handout(tarewright.procedure.resolve.Resolved procedure) {
        return Fixture.sheet(Sheet.Kind.HANDOUT, procedure);
    }

    static Overrides groups(int groups) {
        return Overrides.NONE.withGroups(groups);
    }

    /** What the tables do not hold is said to be unknown and treated as hazardous. */
    @Test
    void anUnknownSubstanceIsABoxOfItsOwn() {
        String source = "---\ntitle: T\n---\n```solid odd\nsubstance: Rb2WO4\nmass: 1.0 g\n```\n\n1. Weigh {odd}.\n";
        Piece.Hazard box = all(handout(source).pieces(), Piece.Hazard.class).get(0);
        assertFalse(box.known());
        assertTrue(box.basis().startsWith("Hazards not known: treat as hazardous."), box.basis());
    }

    @Test
    void whatIsMadeIsOnTheSafetyPanelToo() {
        Piece.Hazard hydrogen = all(handout(HYDROGEN).pieces(), Piece.Hazard.class).stream()
                .filter(h -> Plain.of(h.name()).equals("hydrogen")).findFirst().orElseThrow();
        assertEquals(List.of("GHS02"), hydrogen.pictograms());
        assertEquals("Danger", hydrogen.signalWord());
        assertEquals(List.of("H220 Extremely flammable gas"), hydrogen.statements());
    }

    @Test
    void theEquationStandsOnceWhereTheAuthorShowsItAlone() {
        List<Piece> pieces = handout(Fixture.source("precipitation")).pieces();
        assertEquals(1, all(pieces, Piece.Display.class).size());
    }
}
