package tarewright.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tarewright.document.Documents;
import tarewright.library.Library;
import tarewright.print.PlainText;
import tarewright.procedure.prepare.Need;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.HazardTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** The prep sheet of a whole term, worked by hand. The working day before, and washing between lessons: common practice, no source. */
class TermPrepTest {
    private static final String ACID = """
            ---
            title: Acid and zinc
            ---
            ```apparatus
            flask: conical flask; two per group
            paper: filter paper; one per group; used up
            ```

            ```reaction dissolving
            Zn(s) + HCl(aq) -> ZnCl2(aq) + H2(g)
            ```

            ```stock concentrated acid
            solute: HCl
            strength: 37 % w/w
            density: 1.18 g/mL
            pack: 2.5 kg
            on hand: 100 g
            ```

            ```solid metal
            substance: zinc
            mass: 0.50 g
            ```

            ```solution acid
            solute: HCl
            strength: 2.0 mol/L
            volume: 10 mL
            made from: concentrated acid
            keeps: one week
            ```

            1. Put {metal} into {acid}.

            ```waste
            of: dissolving
            into: dilute acid waste
            ```
            """;

    private static Need need(String section, int groups, String date, String text) {
        Overrides overrides = Library.setting(groups, "20 °C", "101.3 kPa").withSection(section);
        overrides = date.isEmpty() ? overrides : overrides.withDate(date);
        return new Need(section, Resolver.resolve("acid", Reader.read(new SourceText("acid.md", text)).value(), overrides, Tables.load()).value(), List.of(),
                HazardTables.of("").rules());
    }

    private static String sheet(Need... needs) {
        return PlainText.of(Documents.termPrep("Spring 2041", new ArrayList<>(List.of(needs)), "abcdefg", "")).replace('\u202F', ' ').replace('\u00A0', ' ');
    }

    /**
     * 8 and 9 groups take 88 mL and 99 mL with a tenth to spare: a flask of 100 mL each, together 187 mL and still two flasks, since one of 250 mL would be more than the sections' own sheets order. 21
     * and 20 groups take 231 mL and 220 mL: 250 mL each, together 451 mL in one flask of 500 mL. Monday 4 and Tuesday 5 February 2041 are made on Friday the 1st; it keeps until the 8th, so Monday the 11th
     * has its own, made on Friday the 8th.
     */
    @Test
    void aSolutionIsMadeOnceForTheClassesThatItKeepsFor() {
        String small = sheet(need("Mon", 8, "2041-02-04", ACID), need("Tue", 9, "2041-02-05", ACID));
        assertTrue(small.contains("2 × 100 mL") && !small.contains("250 mL"), small);
        String sheet = sheet(need("Mon", 21, "2041-02-04", ACID), need("Tue", 20, "2041-02-05", ACID), need("Later", 8, "2041-02-11", ACID));
        assertTrue(sheet.contains("| Fri 2041-02-01 | hydrochloric acid (2.0 mol/L) | Acid and zinc (Mon, Tue) | 451 mL | 1 × 500 mL"), sheet);
        assertTrue(sheet.contains("| Fri 2041-02-08 | hydrochloric acid (2.0 mol/L) | Acid and zinc (Later) | 88 mL | 1 × 100 mL"), sheet);
        assertTrue(sheet.contains("| Fri 2041-02-08 |\n"), "used by the eighth\n" + sheet);
        assertTrue(sheet.contains("| hydrochloric acid (2.0 mol/L) | 539 mL | 2 |"), sheet);
        assertTrue(sheet.contains("| Mon 2041-01-28 | Hold the shelf against the sheets; order what is short. | Acid and zinc (Mon) |"), sheet);
    }

    /**
     * What keeps for one day is made on the morning of its class, not on the Friday before a Monday: on Monday 4 February 2041 for both classes of that day, on Tuesday for Tuesday's. What keeps for two
     * days would be stale on the Monday if it were made on the Friday. On Tuesday it is made on the Monday.
     */
    @Test
    void whatDoesNotKeepUntilTheClassIsMadeOnItsDay() {
        String day = ACID.replace("keeps: one week", "keeps: one day");
        String sheet = sheet(need("Mon-A", 8, "2041-02-04", day), need("Mon-B", 9, "2041-02-04", day), need("Tue", 9, "2041-02-05", day));
        assertTrue(sheet.contains("| Mon 2041-02-04 | hydrochloric acid (2.0 mol/L) | Acid and zinc (Mon-A, Mon-B) | 187 mL |"), sheet);
        assertTrue(sheet.contains("| Tue 2041-02-05 | hydrochloric acid (2.0 mol/L) | Acid and zinc (Tue) | 99 mL |"), sheet);
        assertTrue(sheet.indexOf("In the morning, before the class: make 200 mL") < sheet.indexOf("Put out the trays"), sheet);
        String two = ACID.replace("keeps: one week", "keeps: two days");
        assertTrue(sheet(need("Mon", 8, "2041-02-04", two)).contains("| Mon 2041-02-04 | hydrochloric acid (2.0 mol/L) |"));
        assertTrue(sheet(need("Tue", 8, "2041-02-05", two)).contains("| Mon 2041-02-04 | hydrochloric acid (2.0 mol/L) |"));
    }

    /** Three months from Friday 1 February 2041 end on 1 May: months of the calendar. */
    @Test
    void threeMonthsAreThoseOfTheCalendar() {
        assertTrue(sheet(need("Mon", 8, "2041-02-04", ACID.replace("one week", "three months"))).contains("| Wed 2041-05-01 |"));
    }

    /** Classes of one day share what is made for that day, however long it keeps: 231 mL and 220 mL in one flask of 500 mL. */
    @Test
    void classesOfOneDayShareWhatIsMadeForIt() {
        String unknown = ACID.replace("keeps: one week\n", "");
        String sheet = sheet(need("A", 21, "2041-02-04", unknown), need("B", 20, "2041-02-04", unknown));
        assertTrue(sheet.contains("| Acid and zinc (A, B) | 451 mL | 1 × 500 mL"), sheet);
        assertTrue(sheet.contains("that class (not told)"), sheet);
    }

    /** What keeps for no told time, or has no day, is made for each class. */
    @Test
    void whatDoesNotKeepIsMadeForEachClass() {
        String sheet = sheet(need("Mon", 21, "2041-02-04", ACID.replace("keeps: one week\n", "")), need("Tue", 20, "2041-02-05", ACID.replace("keeps: one week\n", "")));
        assertFalse(sheet.contains("500 mL"), sheet);
        assertEquals(2, sheet.split("1 × 250 mL", -1).length - 1, sheet);
        assertTrue(sheet(need("Mon", 21, "", ACID), need("Tue", 20, "", ACID)).contains("What has no day in the term"), sheet);
    }

    /** Two sections after each other wash 2 × 9 flasks once; two procedures of one lesson need theirs at the same time: 2 × 8 + 2 × 8. Papers, used up: 9 + 10. */
    @Test
    void glassIsCountedForTheLargestLessonAndWhatIsUsedUpForAll() {
        String after = sheet(need("Mon", 8, "2041-02-04", ACID), need("Tue", 9, "2041-02-05", ACID));
        assertTrue(after.contains("| conical flask | 18 |") && after.contains("| filter paper (used up) | 19 |"), after);
        String together = sheet(need("Mon", 8, "2041-02-04", ACID), need("Mon", 8, "2041-02-04", ACID.replace("Acid and zinc", "Again")));
        assertTrue(together.contains("| conical flask | 32 |"), together);
    }

    /**
     * Glasses that dry until next week: 8 + 9 of Monday's and Tuesday's classes stand at once, with 8 of the Monday after, when Monday's first are still needed and Tuesday's still dry: 25. Each class weighs
     * a week later, at its own next lesson if it has one, and the balance stands there again.
     */
    @Test
    void whatDriesUntilNextWeekIsCountedForAllClassesAtOnceAndPutOutAgain() {
        String dries = ACID.replace("paper: filter", "glass: watch glass; one per group; kept\nbalance: balance; reads to 0.01 g; two per class\npaper: filter")
                .replace("1. Put {metal} into {acid}.", "1. Put {metal} into {acid}.\n2. Leave it on the watch glass.\n3. Next week: weigh it.");
        String sheet = sheet(need("Mon", 8, "2041-02-04", dries), need("Tue", 9, "2041-02-05", dries), need("Mon", 8, "2041-02-11", dries));
        assertTrue(sheet.contains("| watch glass (kept until the next lesson) | 25 |") && sheet.contains("| balance | 2 |"), sheet);
        assertTrue(sheet.contains("| Mon 2041-02-11 | Put out again, for step 3: watch glass × 8; balance × 2; and what was left to stand. | Acid and zinc (Mon) |"), sheet);
        assertTrue(sheet.contains("| Tue 2041-02-12 | Put out again, for step 3: watch glass × 9; balance × 2;"), sheet);
    }

    /** The pots of 8 and 9 groups hold 10 mL each: 170 mL of waste in the one container that both name. */
    @Test
    void wasteIsSummedByContainer() {
        String sheet = sheet(need("Mon", 8, "2041-02-04", ACID), need("Tue", 9, "2041-02-05", ACID));
        assertTrue(sheet.contains("| dilute acid waste | 0.17 L |"), sheet);
        assertTrue(sheet.contains("pour none into another, and none into the sink, before it is neutral") && sheet.contains("| pH of what goes in |"), sheet);
    }

    /**
     * 100 mL of 2.0 mol/L from 37 % w/w at 1.18 g/mL, 11.98 mol/L: 16.70 mL, 16.8 mL in a cylinder, so 33.6 mL for two sections, 39.65 g at 1.18 g/mL: less than the 100 g on hand, and nothing is bought. Without density on the label
     * volume cannot be held against mass.
     */
    @Test
    void whatIsMeasuredByVolumeIsHeldAgainstPacksByMass() {
        List<Need> needs = List.of(need("Mon", 8, "2041-02-04", ACID), need("Tue", 9, "2041-02-05", ACID));
        String order = PlainText.of(Documents.order("Spring", needs, "abcdefg", "")).replace('\u202F', ' ').replace('\u00A0', ' ');
        assertTrue(order.contains("| concentrated acid (37 % w/w) | 39.65 g | 100 g | «0 ×» | 2.5 kg |"), order);
        String without = ACID.replace("density: 1.18 g/mL\n", "");
        assertFalse(PlainText.of(Documents.order("Spring", List.of(need("Mon", 8, "2041-02-04", without)), "abcdefg", "")).contains("«0 ×» | 2.5"), order);
    }

    /** 8 groups take 3 drops each, 27 with a tenth to spare, 27 or more got ready; at 0.05 mL a drop (common practice, no source) that is two millilitres to have. */
    @Test
    void dropsAreOrderedInMillilitresToo() {
        String drops = ACID.replace("volume: 10 mL\n", "volume: 3 drops\n").replace("made from: concentrated acid\nkeeps: one week\n", "role: indicator\n");
        String order = PlainText.of(Documents.order("Spring", List.of(need("Mon", 8, "2041-02-04", drops)), "abcdefg", "")).replace('\u202F', ' ').replace('\u00A0', ' ');
        assertTrue(order.contains("27 drops (2 mL)"), order);
    }
}
