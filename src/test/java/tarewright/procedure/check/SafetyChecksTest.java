package tarewright.procedure.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.finding.Finding;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.safety.Rulebook;
import tarewright.setting.Overrides;
import tarewright.tables.HazardTables;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/**
 * What the checks find that could hurt somebody. Step words and their place: ANSI Z535.6 (a message stands before the step that it concerns, and holds
 * no step itself), from memory. Classes: Regulation (EC) No 1272/2008, Annex VI.
 */
class SafetyChecksTest {
    private static final ReferenceTables TABLES = Tables.load();
    private static final Rulebook RULES = HazardTables.standard();
    /** Annex VI: sodium hydroxide H314 from 2 %, so at 2 mol/L; calcium chloride only irritates. */
    private static final String BENCH = """
            ---
            title: T
            ---

            ```solution alkali
            solute: NaOH
            strength: 2.0 mol/L
            volume: 10 mL
            ```

            ```solid flakes
            substance: calcium chloride
            mass: 1.0 g
            ```

            """;
    private static final String STEP = "1. Measure {alkali} into the flask.\n2. Swirl it.\n";

    private static List<Finding> found(String source) {
        Resolved procedure = Resolver.resolve("p", Reader.read(new SourceText("p.md", source)).value(), Overrides.NONE, TABLES).value();
        return SafetyChecks.run(procedure, RULES);
    }

    private static List<String> ids(String source) {
        return found(source).stream().map(Finding::id).toList();
    }

    private static String caution(String hazard, String avoid) {
        return "```caution\nseverity: danger\nhazard: " + hazard + "\navoid: " + avoid + "\n```\n\n";
    }

    @Test
    void aCorrosiveThingWithoutACautionIsFoundAtItsFirstStep() {
        List<Finding> found = found(BENCH + STEP + "3. Measure {alkali} again.\n");

        assertEquals(List.of("caution-missing"), found.stream().map(Finding::id).toList());
        assertEquals("{alkali}", found.get(0).at().text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"the alkali is slippery", "sodium hydroxide eats into skin", "NaOH eats into skin", "caustic soda blinds", "it burns skin and eyes",
        "splashes blind"})
    void aCautionThatNamesItOrTellsOfItsDangerCoversIt(String hazard) {
        assertEquals(List.of(), ids(BENCH + caution(hazard, "wear goggles") + STEP));
    }

    @ParameterizedTest
    @ValueSource(strings = {"the flask rolls off the bench", "hydrogen and air explode at a flame", "calcium chloride irritates the eyes",
        "the flakes burn wet skin"})
    void aCautionForSomethingElseDoesNotCoverIt(String hazard) {
        assertEquals(List.of("caution-missing"), ids(BENCH + caution(hazard, "keep away") + STEP));
    }

    /** Annex VI: silver nitrate Skin Corr. 1B, lead nitrate Repr. 1A and toxic; a word that both share names neither. */
    @Test
    void aWordThatTwoThingsShareNamesNeither() {
        String two = BENCH.replace("NaOH", "AgNO3").replace("substance: calcium chloride", "substance: sodium nitrate").replace("alkali", "drops");
        String step = STEP.replace("alkali", "drops");

        assertEquals(List.of("caution-missing"), ids(two + caution("the flask slips; nitrate stains", "wear gloves") + step));
        assertEquals(List.of(), ids(two + caution("silver nitrate stains", "wear gloves") + step));
    }

    @Test
    void aCautionAfterTheStepThatItConcernsIsFound() {
        List<Finding> found = found(BENCH + "1. Measure {alkali}.\n2. Wait.\n\n   " + caution("the alkali burns skin", "wear goggles").strip()
                .replace("\n", "\n   ") + "\n\n3. Swirl it.\n");

        assertEquals(List.of("caution-missing"), found.stream().map(Finding::id).toList());
        assertEquals("caution", found.get(0).also().get(0).text());
    }

    @Test
    void aCautionBehindTheLastStepIsFound() {
        String before = caution("the alkali burns skin", "wear goggles");

        assertEquals(List.of("caution-behind-all"), ids(BENCH + before + STEP + "\n" + caution("glass is sharp", "use a brush")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"dilute it with water at once|dilute it with water at once", "wear goggles, then add the acid to the water|add the acid to the water",
        "keep away. Close the tap|Close the tap", "ponte guantes, y abre el grifo despacio|abre el grifo despacio", "use {alkali} with care|{alkali}"})
    void anActionHiddenInACautionIsFound(String avoid, String text) {
        List<Finding> found = found(BENCH + caution("the alkali burns skin", avoid) + STEP);

        assertEquals(List.of("caution-hides-step"), found.stream().map(Finding::id).toList());
        assertEquals(text, found.get(0).at().text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"measure it below eye level, with goggles on", "wear goggles and gloves", "keep the lid closed", "hold the flask by its neck",
        "do not add water", "agítalo sin prisa, lleva gafas", "rinse a splash at once with much water"})
    void howToDoAStepAndWhatKeepsSafeIsNoHiddenAction(String avoid) {
        assertEquals(List.of(), ids(BENCH + caution("the alkali burns skin", avoid) + STEP));
    }

    @Test
    void aCautionWarningCanBeSettled() {
        assertEquals(List.of(), ids(BENCH + STEP + "\n```settled\nfinding: caution-missing\nbecause: the teacher measures it out\n```\n"));
    }

    // --- heating and flames

    /** Manganese dioxide sets chlorine free from hot hydrochloric acid alone (general chemistry textbook knowledge). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"plate: hot plate; one per group|Put {oxide} into the tube.|true", "lamp: spirit lamp; one per group|Put {oxide} into the tube.|true",
        "tube: test tube; one per group|Heat the tube gently.|true", "tube: test tube; one per group|Put {oxide} into the tube.|false",
        "tube: test tube; one per group|Photograph the tube.|false"})
    void whatIsHeatedIsToldByApparatusAndSteps(String apparatus, String step, boolean heated) {
        String source = "---\ntitle: T\nhood: yes\n---\n```apparatus\n" + apparatus + "\n```\n```solution acid\nsolute: HCl\nstrength: 1.0 mol/L\nvolume: 5 mL\n```\n"
                + "```solid oxide\nsubstance: manganese dioxide\nmass: 0.1 g\n```\n\n1. " + step + "\n";

        assertEquals(heated, ids(source).contains("must-not-meet"), ids(source).toString());
    }

    @Test
    void aTemperatureThatIsHotToTheHandIsHeating() {
        String source = "---\ntitle: T\nhood: yes\n---\n```solution acid\nsolute: HCl\nstrength: 1.0 mol/L\nvolume: 5 mL\n```\n"
                + "```solid oxide\nsubstance: manganese dioxide\nmass: 0.1 g\n```\n```value bath\nis: %s °C\n```\n\n1. Put {oxide} into the tube at {bath}.\n";

        assertTrue(ids(source.formatted("80")).contains("must-not-meet"));
        assertEquals(List.of(), ids(source.formatted("30")));
    }

    /** 40 CFR 265 Appendix V, groups 1-A and 2-A with 1-B: metal and acid give hydrogen; near a flame also where the reaction is meant. */
    @Test
    void aReactionThatIsMeantIsToldOfNearAFlame() {
        String source = "---\ntitle: T\n---\n```apparatus\nlamp: %s; one per group\n```\n```reaction r\nMg(s) + HCl(aq) -> MgCl2(aq) + H2(g)\n```\n"
                + "```solid ribbon\nsubstance: magnesium\nmass: 0.05 g\n```\n```solution acid\nsolute: HCl\nstrength: 0.5 mol/L\nvolume: 20 mL\n```\n\n1. Put {ribbon} into {acid}.\n";

        assertTrue(ids(source.formatted("Bunsen burner")).contains("must-not-meet"));
        assertEquals(List.of(), ids(source.formatted("desk lamp")));
    }

    // --- waste

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"the sink|true", "the sink, with plenty of water|true", "dilute acid waste|false",
        "the sink\\nneutralise with: sodium hydrogencarbonate|false"})
    void acidIsNotPouredAwayAsItIs(String into, boolean found) {
        String source = "---\ntitle: T\n---\n```reaction r\nMg(s) + HCl(aq) -> MgCl2(aq) + H2(g)\n```\n```solid ribbon\nsubstance: magnesium\nmass: 0.05 g\n```\n"
                + "```solution acid\nsolute: HCl\nstrength: 0.5 mol/L\nvolume: 20 mL\n```\n\n1. Put {ribbon} into {acid}.\n\n```waste\nof: r\ninto: "
                + into.replace("\\n", "\n") + "\n```\n";

        assertEquals(found, ids(source).contains("not-into-sink"), ids(source).toString());
    }

    /** Copper is toxic in water: local sewer ordinances keep it out (general statement). Neutralising does not mend that. */
    @Test
    void copperDoesNotGoDownTheSinkNeutralisedOrNot() {
        String source = "---\ntitle: T\n---\n```solution blue\nsolute: CuSO4\nstrength: 0.1 mol/L\nvolume: 20 mL\n```\n\n1. Look at {blue}.\n\n```waste\ninto: the sink\n"
                + "neutralise with: sodium carbonate\n```\n";

        assertTrue(ids(source).contains("not-into-sink"), ids(source).toString());
    }

    /** Acid on what is left of a sulfide: hydrogen sulfide (CLP EUH031/EUH032; ICSC 0165). */
    @Test
    void whatIsLeftOfTwoReactionsMustNotMeetInOneContainer() {
        String source = """
                ---
                title: T
                hood: yes
                ---
                ```reaction first
                Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)
                ```
                ```reaction second
                Na2S(aq) + ZnCl2(aq) -> ZnS(s) + NaCl(aq)
                ```
                ```solid ribbon
                substance: magnesium
                mass: 0.05 g
                ```
                ```solution acid
                solute: HCl
                strength: 0.5 mol/L
                volume: 20 mL
                ```
                ```solution sulfide
                solute: Na2S
                strength: 0.10 mol/L
                volume: 20 mL
                ```
                ```solution zinc
                solute: ZnCl2
                strength: 0.10 mol/L
                volume: 10 mL
                ```

                1. Put {ribbon} into {acid}.

                ```waste
                of: first
                into: %s
                ```
                ```waste
                of: second
                into: metal waste
                ```
                """;

        assertTrue(container(source.formatted("metal waste")));
        assertEquals(false, container(source.formatted("acid waste")));
    }

    private static boolean container(String source) {
        return found(source).stream().anyMatch(f -> f instanceof SafetyFinding.MustNotMeet m && m.container().isPresent());
    }
}
