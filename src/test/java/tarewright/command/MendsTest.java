package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.finding.Finding;
import tarewright.procedure.check.Checks;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;
import tarewright.wording.FindingText;

/** What a teacher is told to write instead. */
class MendsTest {
    private static final ReferenceTables TABLES = Tables.load();

    private static String page(String front, String apparatus, String blocks) {
        return "---\ntitle: Mends\n" + front + "---\n\n```apparatus\ncyl: measuring cylinder, 25 mL; graduation 0.5 mL\n"
                + "bal: balance; reads to 0.01 g\n" + apparatus + "```\n\n" + blocks + "\n\n```waste\ninto: labelled waste\n```\n";
    }

    private static String said(String page) {
        var source = Reader.read(new SourceText("page.md", page));
        var resolved = Resolver.resolve("page", source.value(), Overrides.NONE, TABLES);
        java.util.LinkedHashSet<Finding> all = new java.util.LinkedHashSet<>(source.findings());
        all.addAll(resolved.findings());
        all.addAll(Checks.run(resolved.value()));
        return String.join("\n", all.stream().map(FindingText.in("en")::full).toList()) + "\n";
    }

    private static String solution(String fields) {
        return "```solution a\nsolute: HCl\nstrength: 1.0 mol/L\n" + fields + "\n```\n\n```solid y\nsubstance: NaCl\nmass: 1.00 g\nweigh with: bal\n```\n";
    }

    private static void mends(String page, String mend) {
        String said = said(page);
        assertTrue(said.contains("write instead: " + mend + "\n"), said);
    }

    /** Words that teachers use for what we call otherwise. */
    @ParameterizedTest
    @CsvSource({"weight of y,`mass of y`", "concentration of a,`strength of a`", "molarity of a,`strength of a`", "molecular weight of y,`molar mass of y`",
        "vol of a,`volume of a`", "masss of y,`mass of y`"})
    void anotherWordForAFigureIsUnderstood(String asked, String mend) {
        mends(page("", "", solution("volume: 20.0 mL") + "\nIt is {" + asked + "}."), mend);
    }

    /** The block `cyl` is the measuring cylinder: its words say so. */
    @Test
    void theCylinderIsFoundByItsWords() {
        mends(page("", "", solution("volume: 20.0 mL\nmeasure with: cylinder")), "`cyl`");
    }

    /** Nothing is called burette: what measures a volume would do, the balance would not. */
    @Test
    void onlyWhatMeasuresTheSameIsOffered() {
        mends(page("", "pip: pipette; delivers 10.00 mL\n", solution("volume: 20.0 mL\nmeasure with: burette")), "`cyl` or `pip`");
    }

    @Test
    void paperIsOneOfTwo() {
        mends(page("paper: A5\n", "", ""), "one of `A4` or `letter`");
        assertFalse(said(page("paper: a4\n", "", "")).contains("paper"));
        assertFalse(said(page("paper: Letter\n", "", "")).contains("paper"));
    }

    /** 20 L in a cylinder of 25 mL were 20 mL; 40 mL are simply too much for it. */
    @Test
    void tooMuchForAnInstrumentNamesTheUnitThatSlippedOrTheMost() {
        mends(page("", "", solution("volume: 20 L\nmeasure with: cyl")), "`20 mL`, if the unit slipped; else at most 25.0 mL");
        mends(page("", "", solution("volume: 40 mL\nmeasure with: cyl")), "at most 25.0 mL, or an instrument that holds more");
    }

    /** A number with marks between thousands has one meaning in its own country and another in the next: it is written plain. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1.000,5 g|`1000.5`", "1,000.5 g|`1000.5`", "1.000.000 g|`1000000`"})
    void marksBetweenThousandsAreTakenOut(String typed, String mend) {
        mends(page("", "", "```solid x\nsubstance: NaCl\nmass: " + typed + "\n```"), mend);
    }

    /** Five beakers for a group, one tripod for six groups. */
    @ParameterizedTest
    @CsvSource({"five per group,5,1", "twelve per class,12,0", "one per six groups,1,6", "2 per 3 groups,2,3", "ten per student,10,-1"})
    void howManyMayBeInWords(String share, int count, int perGroups) {
        String page = page("", "pot: beaker; " + share + "\n", "");
        var resolved = Resolver.resolve("page", Reader.read(new SourceText("page.md", page)).value(), Overrides.NONE, TABLES);
        assertEquals(List.of(), resolved.findings());
        var item = resolved.value().procedure().apparatus("pot").orElseThrow();
        assertEquals(count, item.share().count());
        assertEquals(perGroups, item.share().perGroups());
    }

    /** Nobody works at 200 °C, in 5 kPa, or in a cupboard of 1 m³; La Paz (3,600 m, about 65 kPa) and a cold hall are rooms. */
    @Test
    void aRoomNobodyCouldWorkInIsFound() {
        assertTrue(said(page("room: 200 °C; 101 kPa\n", "", "")).contains("a temperature of 200 °C is not that of a room where people work"));
        assertTrue(said(page("room: 20 °C; 5 kPa\n", "", "")).contains("a pressure of 5 kPa is not that of a room where people work"));
        assertTrue(said(page("room: 20 °C; 1 m3\n", "", "")).contains("a volume of 1 m³"));
        assertTrue(said(page("room: -5 °C; 101 kPa\n", "", "")).contains("unlikely-room"));
        assertFalse(said(page("room: 12 °C; 65 kPa; 180 m3\n", "", "")).contains("unlikely-room"));
        assertFalse(said(page("room: 41 °C; 106 kPa\n", "", "")).contains("unlikely-room"));
    }
}
