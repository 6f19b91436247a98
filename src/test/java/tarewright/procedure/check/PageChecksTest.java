package tarewright.procedure.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.finding.Finding;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/**
 * What a reader of the page would stumble over, told to the author. One action to a sentence, the amount with what
 * measures it, the result written down at the step that reads it: common practice in procedural writing, no source.
 */
class PageChecksTest {
    private static final ReferenceTables TABLES = Tables.load();
    private static final String BENCH = """
            ---
            title: T
            ---

            ```apparatus
            cylinder: measuring cylinder, 25 mL; graduation 0.5 mL; one per group
            thermometer: thermometer; reads to 0.1 °C; one per group
            ```

            ```solution acid
            solute: HCl
            strength: 0.5 mol/L
            volume: 20.0 mL
            measure with: cylinder
            ```

            ```solid salt
            substance: sodium chloride
            mass: 1.25 g
            role: solvent
            ```

            ```reading warmth
            expect: 25 °C
            read with: thermometer
            ```

            """;
    private static final String TABLE = "\n\n| warmth |\n|---|\n| {blank warmth} |\n";

    private static List<Finding> found(String body) {
        Resolved procedure = Resolver.resolve("p", Reader.read(new SourceText("p.md", BENCH + body)).value(), Overrides.NONE,
                TABLES).value();
        return Checks.run(procedure).stream().filter(f -> f instanceof PageFinding).toList();
    }

    private static String told(String body) {
        return found(body).stream().map(f -> f.id() + ": " + f.at().text()).collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Measure {acid} of acid and read it, then pour it away.|two-actions: pour",
        "Read the level and then pour the acid away.|two-actions: pour",
        "Push the plunger in, swirl, and read the level.|two-actions: read",
        "Weigh {salt} of salt in the cylinder into {acid} of acid.|two-actions: {acid}",
        "Lee el nivel y después vierte el ácido.|two-actions: vierte",
        "Empuja el émbolo, agita y lee el nivel.|two-actions: lee"})
    void aSecondActionInASentenceIsToldAtItsPlace(String step, String expected) {
        assertEquals(expected, told("1. " + step + TABLE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Read the level. Then pour the acid away.", "Warm and stir until all is clear. Read it.",
            "Cool it and weigh it again.",
        "Measure {acid} of {label of acid} into the flask.", "If the acid is warmer than that, then it has reacted. Read it.",
        "Lee el nivel. Después vierte el ácido.", "Calienta y agita hasta que quede claro. Léelo.", "Mide {acid} de {label of acid} y pásalo al matraz."})
    void oneActionOrOneMovementOfTheHandsIsLeftAlone(String step) {
        assertEquals("", told("1. " + step + " Read the thermometer." + TABLE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"20 mL", "20.0 mL", "0.02 L", "20.2 mL", "20 cm3"})
    void anAmountTypedWhereABlockHasItIsTold(String typed) {
        assertEquals("typed-by-hand: " + typed, told("1. Measure " + typed + " of acid with the cylinder." + TABLE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"25 mL", "20 °C", "20 times", "about 20 mL", "20 mL/min", "20 g"})
    void anotherFigureIsLeftAlone(String typed) {
        assertEquals("", told("1. Measure " + typed + " with the cylinder." + TABLE));
    }

    private static String hidden(String shownAs, String body) {
        return found("```solid crystals\nsubstance: magnesium sulfate heptahydrate\nmass: 3.10 g\n" + shownAs + "\n```\n\n" + body).stream()
                .filter(f -> f instanceof PageFinding.HydrateNamed).map(f -> f.id() + ": " + f.at().text()).collect(Collectors.joining("; "));
    }

    /** The students are to find the number of waters: a word that tells it is told at its place, in English and Spanish, in a caution and in a table too. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Heat the heptahydrate gently.|heptahydrate", "Take the hydrate with 7 waters.|hydrate with 7", "It holds seven molecules of water.|seven molecules of water",
        "Calienta el sulfato heptahidratado.|heptahidratado", "The Heptahydrates of zinc and of magnesium look alike.|Heptahydrates"})
    void aWordThatTellsTheNumberOfWatersIsTold(String sentence, String told) {
        assertEquals("hydrate-named: " + told, hidden("shown as: MgSO4.xH2O", sentence));
        assertEquals("", hidden("role: solvent", sentence), "nothing is hidden");
    }

    @Test
    void cautionsAndTablesAreReadToo() {
        assertEquals("hydrate-named: heptahydrate", hidden("shown as: MgSO4.xH2O", "```caution\nsay: The heptahydrate spits.\n```\n"));
        assertEquals("hydrate-named: heptahydrate", hidden("shown as: MgSO4.xH2O", "| heptahydrate |\n|---|\n| 1 |\n"));
        assertEquals("hydrate-named: heptahydrate", hidden("shown as: MgSO4.xH2O", "## The heptahydrate\n"));
        assertEquals("", hidden("shown as: MgSO4.xH2O", "```key\nIt is the heptahydrate.\n```\n"), "the key is the teacher's");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Heat the hydrate gently.", "The pentahydrate is blue.", "Take 7 mL of water.", "Wait 17 minutes.", "Carbohydrates burn.", "Rinse with water 7 times."})
    void wordsThatTellNothingAreLeftAlone(String sentence) {
        assertEquals("", hidden("shown as: MgSO4.xH2O", sentence));
    }

    @Test
    void aReadingThatNothingAsksForIsTold() {
        assertEquals("reading-not-used: warmth", told("1. Read the thermometer.\n"));
    }

    @Test
    void aReadingThatAQuestionUsesIsAskedFor() {
        assertEquals("", told("1. Read the thermometer.\n\n## Questions\n\n"
                + "1. How warm?\n\n   ```answer\n   value: warmth\n   unit: °C\n   marks: 1\n   ```\n"));
    }

    @Test
    void aBlankWithoutAStepThatReadsAnythingIsTold() {
        assertEquals("blank-without-step: {blank warmth}", told("1. Pour the acid away." + TABLE));
        assertEquals("blank-without-step: {blank warmth}", told("1. Vierte el ácido." + TABLE));
        assertEquals("", told("1. Anota lo que marca." + TABLE));
    }

    @Test
    void anAmountWithNothingToMeasureItIsToldAtTheStep() {
        assertEquals("nothing-measures: {salt}", told("1. Weigh {salt} of salt." + TABLE));
    }

    @Test
    void theNamedThingInTheStepIsEnough() {
        assertEquals("", told("1. Put {salt} of salt into the cylinder. Read it." + TABLE));
    }

    /** Each is a matter of judgement, so each can be answered with a reason. */
    @Test
    void theAuthorCanAnswerEachOfThem() {
        StringBuilder answered = new StringBuilder();
        for (String id : List.of("two-actions", "typed-by-hand", "nothing-measures", "blank-without-step")) {
            answered.append("```settled\nfinding: ").append(id).append("\nbecause: they have done it before\n```\n\n");
        }
        String body = "1. Pour 20 mL in, stir, and add {salt}." + TABLE;
        assertEquals(4, found(body).size(), told(body));
        assertEquals("", told(answered + body));
    }
}
