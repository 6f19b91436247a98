package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every panel with something wet or hot on the bench tells what to do, and what it demands is put out. A burn is held under cool running water for 20 minutes: European Resuscitation
 * Council Guidelines 2021, first aid (from memory).
 */
class WhenItGoesWrongTest {
    private static final String WORK = """
            ---
            title: T
            groups: 10
            group size: 2
            spare: 10 %%
            ---
            ```apparatus
            tool: %s; one per group
            ```
            ```solution acid
            solute: HCl
            strength: %s
            volume: 20.0 mL
            ```

            1. %s {acid}.
            """;

    private static String sheet(Sheet.Kind kind, String tool, String strength, String verb) {
        return Fixture.text(Fixture.sheet(kind, WORK.formatted(tool, strength, verb)));
    }

    @ParameterizedTest
    @CsvSource({"Bunsen burner, Measure, true", "beaker, Boil, true", "drying oven at 105 °C, Measure, true", "beaker, Measure, false"})
    void whereSomethingBurnsOrIsHotThePanelHasTheBurnAndTheBlanketIsPutOut(String tool, String verb, boolean hot) {
        String panel = sheet(Sheet.Kind.SAFETY, tool, "0.10 mol/L", verb);

        assertEquals(hot, panel.contains("cool running water for 20 minutes"), panel);
        assertEquals(hot, panel.contains("Fire blanket"), panel);
        assertEquals(hot, sheet(Sheet.Kind.PREP, tool, "0.10 mol/L", verb).contains("| fire blanket and extinguisher | 1 |"));
    }

    /** What an author lists is not put out twice. */
    @Test
    void aBlanketThatTheAuthorListsIsCountedOnce() {
        String prep = sheet(Sheet.Kind.PREP, "Bunsen burner and fire blanket", "0.10 mol/L", "Measure");

        assertEquals(-1, prep.indexOf("fire blanket and extinguisher"), prep);
    }

    /** 0.10 mol/L acid has no class (Annex VI, 017-002-01-X: from 10 %): a splash is rinsed out all the same (common practice, no source). */
    @Test
    void aSplashInTheEyesIsOnThePanelOfWhatIsNotClassifiedToo() {
        assertTrue(sheet(Sheet.Kind.SAFETY, "beaker", "0.10 mol/L", "Measure").contains("Rinse with water for several minutes."));
    }

    /** 12 % acid irritates skin and eyes (the same entry): 20 students and a tenth of gloves to spare. */
    @Test
    void glovesAndGogglesThatTheListLeavesOutArePutOut() {
        String prep = sheet(Sheet.Kind.PREP, "beaker", "12 % w/w", "Measure");

        assertTrue(prep.contains("| nitrile gloves, pair | 22 |"), prep);
        assertTrue(prep.contains("| splash goggles | 20 |"), prep);
    }

    /** The acid as it is sold is Skin Corr. 1B: P303+P361+P353 and a spill stand on the technician's sheet, though the students' bottle needs neither (CLP Annex I, table 3.2.5). */
    @Test
    void thePrepSheetTellsWhatToDoWithWhatTheBottlesAreMadeFrom() {
        String prep = sheet(Sheet.Kind.PREP, "beaker", "0.10 mol/L", "Measure");
        String wrong = prep.substring(prep.indexOf("If something goes wrong in the prep room"));

        assertTrue(wrong.contains("P303+P361+P353"), wrong);
        assertTrue(wrong.contains("Keep others away."), wrong);
    }
}
