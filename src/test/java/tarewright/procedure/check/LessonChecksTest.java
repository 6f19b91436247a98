package tarewright.procedure.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.HazardTables;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;
import tarewright.wording.FindingText;

/** What must not meet of procedures that share a lesson. All procedures are invented. */
class LessonChecksTest {
    private static final ReferenceTables TABLES = Tables.load();

    private static Resolved procedure(String name, String blocks) {
        String source = "---\ntitle: " + name + "\n---\n" + blocks;
        return Resolver.resolve(name, Reader.read(new SourceText(name + ".md", source)).value(), Overrides.NONE, TABLES).value();
    }

    private static String solution(String name, String solute) {
        return "```solution " + name + "\nsolute: " + solute + "\nstrength: 0.5 mol/L\nvolume: 10 mL\n```\n";
    }

    private static List<Finding> lesson(Resolved... procedures) {
        return LessonChecks.run(Arrays.asList(procedures), HazardTables.standard());
    }

    /** Chlorine from hypochlorite and acid: EUH031 of sodium hypochlorite (CLP Annex VI, index 017-011-00-1). */
    @Test
    void theAcidOfOneAndTheBleachOfTheOtherAreFoundWithBothProceduresNamed() {
        List<Finding> found = lesson(procedure("Fizz", solution("acid", "HCl")), procedure("White", solution("bleach", "NaClO")));

        assertEquals(List.of("must-not-meet"), found.stream().map(Finding::id).toList());
        assertEquals("White.md", found.get(0).at().source().name());
        assertEquals("bleach", found.get(0).at().text());
        assertEquals("acid", found.get(0).also().get(0).text());
        assertEquals(Severity.WARNING, found.get(0).severity());
        String said = FindingText.in("en").full(found.get(0)).toLowerCase(java.util.Locale.ROOT);
        assertTrue(said.contains("fizz") && said.contains("white") && said.contains("in one lesson") && said.contains("toxic gas"), said);
    }

    @Test
    void everydayProceduresRaiseNothingAndWhatOneFindsForItselfIsNotToldTwice() {
        assertEquals(List.of(), lesson(procedure("Fizz", solution("acid", "HCl")), procedure("Salt", solution("salt", "NaCl"))));
        assertEquals(List.of(), lesson(procedure("Both", solution("acid", "HCl") + solution("bleach", "NaClO")), procedure("Salt", solution("salt", "NaCl"))));
        assertEquals(List.of(), lesson(procedure("Alone", solution("acid", "HCl") + solution("bleach", "NaClO"))));
    }

    /** A stock at its own strength counts too: concentrated nitric acid and an organic solvent (40 CFR 265 Appendix V, group 6). */
    @Test
    void aStockOfOneCountsAgainstTheOther() {
        String acid = solution("acid", "HNO3").replace("volume: 10 mL\n", "volume: 10 mL\nmade from: concentrated nitric acid\n");
        List<Finding> found = lesson(procedure("Etch", acid), procedure("Clean", "```liquid spirit\nsubstance: propan-2-ol\nvolume: 10 mL\n```\n"));

        assertTrue(found.stream().anyMatch(f -> f instanceof SafetyFinding.MustNotMeet m && m.first().equals("concentrated nitric acid")), found.toString());
    }

    /** Oxygen, an organic liquid and a flame: fierce fire (general chemistry textbook knowledge). The flame may stand on either bench. */
    @Test
    void aFlameOfOneCountsForTheOther() {
        String oxygen = "```gas oxygen\nsubstance: oxygen\nvolume: 50 mL\n```\n";
        String spirit = "```apparatus\nlamp: spirit lamp; one per group\n```\n```liquid spirit\nsubstance: ethanol\nvolume: 10 mL\n```\n";

        assertEquals(1, lesson(procedure("Gas", oxygen), procedure("Lamp", spirit)).size());
        assertEquals(0, lesson(procedure("Gas", oxygen), procedure("Lamp", spirit.replace("spirit lamp", "desk lamp"))).size());
    }

    /** Acid on what is left of a sulfide: hydrogen sulfide (ICSC 0165). */
    @Test
    void whatIsLeftOfBothMustNotMeetInAContainerOfOneName() {
        String acid = solution("acid", "HCl") + "```waste\ninto: metal waste\n```\n";
        String sulfide = solution("sulfide", "Na2S") + "```waste\ninto: metal waste\n```\n";
        List<Finding> found = lesson(procedure("Fizz", acid), procedure("Smell", sulfide));

        assertEquals(1, found.size(), "the bottles already clash, and are told of once: " + found);
    }
}
