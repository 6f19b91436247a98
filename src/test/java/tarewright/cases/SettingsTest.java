package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;
import tarewright.setting.Overrides;
import tarewright.setting.Paper;
import tarewright.setting.Setting;

/** For whom a page is printed: the command line and the term go before the procedure, the procedure before what is usual. */
class SettingsTest {
    private static final String[] OWN = {"groups: 7", "group size: 3", "runs: 2", "spare: 20 %", "room: 23 °C; 99.0 kPa; 45 %; 150 m3", "hood: yes", "paper: letter", "language: es", "country: US"};

    private static Setting setting(Overrides overrides, String... front) {
        Page page = new Page("Setting");
        for (String line : front) {
            page.front(line);
        }
        return Door.open(page.wasted().markdown(), overrides).resolved().setting();
    }

    private static Typed typed(String text) {
        return ((QuantityResult.Ok) QuantityText.parse(text)).typed();
    }

    /** Twelve groups of two, once, a tenth to spare, 20 °C, 101.325 kPa, 50 %: what stands in where nobody says anything. */
    @Test
    void whatIsUsualStandsInWhereNothingIsSaid() {
        Setting setting = setting(Overrides.NONE);
        assertEquals(Setting.USUAL, setting);
    }

    @Test
    void whatTheProcedureSaysStands() {
        Setting setting = setting(Overrides.NONE, OWN);
        assertEquals(7, setting.groups());
        assertEquals(3, setting.groupSize());
        assertEquals(2, setting.runs());
        assertEquals(0.20, setting.spare(), 1e-12);
        assertEquals(23, setting.room().temperature().shownValue(), 1e-9);
        assertEquals(99.0, setting.room().pressure().shownValue(), 1e-9);
        assertEquals(45, setting.room().humidity().shownValue(), 1e-9);
        assertEquals(150, setting.room().volume().orElseThrow().shownValue(), 1e-9);
        assertEquals(Setting.Hood.GIVEN, setting.hood());
        assertEquals(Paper.LETTER, setting.paper());
        assertEquals("es", setting.language());
        assertEquals("US", setting.country());
    }

    @Test
    void whatTheCommandLineSaysGoesFirst() {
        Overrides.Air air = new Overrides.Air(Optional.of(typed("18 °C")), Optional.of(typed("102.0 kPa")), Optional.of(typed("60 %")), Optional.of(typed("90 m3")));
        Setting setting = setting(Overrides.NONE.withGroups(9).withGroupSize(1).withRuns(4).withSpare(typed("5 %")).withRoom(air).withHood(Setting.Hood.NONE).withPaper(Paper.A4)
                .withCountry("NZ").withSchool("Fennick Quay").withSection("Tue-B").withDate("2041-02-04"), OWN);
        assertEquals(9, setting.groups());
        assertEquals(1, setting.groupSize());
        assertEquals(4, setting.runs());
        assertEquals(0.05, setting.spare(), 1e-12);
        assertEquals(18, setting.room().temperature().shownValue(), 1e-9);
        assertEquals(102.0, setting.room().pressure().shownValue(), 1e-9);
        assertEquals(60, setting.room().humidity().shownValue(), 1e-9);
        assertEquals(90, setting.room().volume().orElseThrow().shownValue(), 1e-9);
        assertEquals(Setting.Hood.NONE, setting.hood());
        assertEquals(Paper.A4, setting.paper());
        assertEquals("NZ", setting.country());
        assertEquals(new Setting.Occasion("Fennick Quay", "Tue-B", "2041-02-04"), setting.occasion());
    }

    /** A procedure is written in one language, whoever prints it; the term's stands in only where the procedure says none. */
    @Test
    void theProceduresLanguageIsItsOwn() {
        assertEquals("es", setting(Overrides.NONE.withLanguage("en"), OWN).language());
        assertEquals("es", setting(Overrides.NONE.withLanguage("es")).language());
        assertEquals("en", setting(Overrides.NONE).language());
    }

    /** A hood that the author says is not there is not the same as one of which nobody has spoken. */
    @Test
    void noHoodIsNotTheSameAsNoWordOfOne() {
        assertEquals(Setting.Hood.NONE, setting(Overrides.NONE, "hood: no").hood());
        assertEquals(Setting.Hood.NOT_SAID, setting(Overrides.NONE).hood());
        assertEquals(Setting.Hood.GIVEN, setting(Overrides.NONE.withHood(Setting.Hood.GIVEN), "hood: no").hood());
    }

    /** Of the room, the command line may say one thing and leave the others to the procedure. */
    @Test
    void theRoomMayBeSaidInPart() {
        Overrides.Air warm = new Overrides.Air(Optional.of(typed("28 °C")), Optional.empty(), Optional.empty(), Optional.empty());
        Setting setting = setting(Overrides.NONE.withRoom(warm), "room: 23 °C; 99.0 kPa");
        assertEquals(28, setting.room().temperature().shownValue(), 1e-9);
        assertEquals(99.0, setting.room().pressure().shownValue(), 1e-9);
        assertEquals(50, setting.room().humidity().shownValue(), 1e-9);
        assertTrue(setting.room().volume().isEmpty());
    }
}
