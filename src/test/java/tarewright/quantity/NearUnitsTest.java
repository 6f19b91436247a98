package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is offered for a unit that is none. The mistakes are common practice, no source. */
class NearUnitsTest {
    @ParameterizedTest
    @CsvSource({
        "Ml, mL, MILLI_NOT_MEGA", "ML, mL, MILLI_NOT_MEGA", "ml, mL, LETTER_CASE", "l, L, LETTER_CASE", "gm, g, ABBREVIATION",
        "gr, g, ABBREVIATION", "gg, g, SPELLING", "gms., g, ABBREVIATION", "sec, s, ABBREVIATION", "hr, h, ABBREVIATION",
        "hrs, h, ABBREVIATION", "Kpa, kPa, LETTER_CASE", "KPA, kPa, LETTER_CASE", "Kg, kg, LETTER_CASE", "molar, mol/L, NAME",
        "cc, cm³, ABBREVIATION", "deg C, °C, ABBREVIATION", "C, °C, ABBREVIATION", "oC, °C, ABBREVIATION", "Celsius, °C, NAME",
        "moles, mol, NAME", "mol/l, mol/L, LETTER_CASE", "grams, g, NAME", "mcg, µg, ABBREVIATION", "mmhg, mmHg, LETTER_CASE",
        "mm Hg, mmHg, SPELLING", "°K, K, SPELLING", "mL., mL, LETTER_CASE", "Mmol, mmol, CASE_DECIDES",
    })
    void theLikeliestComesFirstWithItsReason(String typed, String symbol, NearUnit.Reason reason) {
        assertEquals(new NearUnit(symbol, reason), Units.near(typed).get(0));
    }

    /** SI Brochure, 9th edition, table 7: M is 10⁶ and m is 10⁻³. */
    @ParameterizedTest
    @CsvSource({"Mg, mg;t", "MG, mg;t", "mpa, MPa;mPa", "mj, MJ;mJ"})
    void theCaseOfThePrefixIsLeftToTheAuthor(String typed, String offered) {
        List<NearUnit> near = Units.near(typed);
        assertEquals(List.of(offered.split(";")), near.stream().map(NearUnit::symbol).toList());
        assertTrue(near.stream().allMatch(unit -> unit.reason() == NearUnit.Reason.CASE_DECIDES));
    }

    @Test
    void onlyTheWantedKindIsOffered() {
        assertEquals(List.of("mL"), Units.near(Dimension.VOLUME, "ml"));
        assertEquals(List.of("mg", "t"), Units.near(Dimension.MASS, "Mg"));
        assertEquals(List.of("g/mL"), Units.near(Dimension.DENSITY, "g/ml"));
        Dimension specificHeat = Dimension.ENERGY.over(Dimension.MASS).over(Dimension.TEMPERATURE);
        assertEquals(List.of("J/(g K)"), Units.near(specificHeat, "J/(gm K)"));
        for (String symbol : Units.near(Dimension.MASS, "mx")) {
            assertEquals(Dimension.MASS, Units.symbol(symbol).orElseThrow().dimension());
        }
    }

    @Test
    void whereNothingIsNearTheUsualUnitsAreOffered() {
        UnitResult.Bad bad = (UnitResult.Bad) Units.parse("spoonfuls", Dimension.MASS);
        UnitTrouble.Unknown trouble = (UnitTrouble.Unknown) bad.trouble();
        assertEquals(List.of("g", "mg", "kg"), trouble.suggestions());
        assertEquals(List.of("g", "mg", "kg"), trouble.fields().get("ofKind"));
        assertEquals(List.of(), trouble.fields().get("suggestions"));
        assertEquals(List.of(), Units.near("spoonfuls"));
        assertEquals(Units.of(Dimension.LENGTH), Units.near(Dimension.LENGTH, "ml"), "a known volume is no length");
    }

    /** Units of the wanted kind are not crowded out by the many others that are as near. */
    @Test
    void likenessLooksInTheWantedKindOnly() {
        assertTrue(Units.near(Dimension.TIME, "mx").contains("ms"));
        assertTrue(Units.near(Dimension.PRESSURE, "xPa").containsAll(List.of("kPa", "hPa", "MPa", "mPa")));
    }

    /** Every letter is one change from every other: a unit of one letter is like nothing. */
    @Test
    void aSingleLetterIsLikeNothing() {
        assertEquals(List.of(), Units.near("q"));
        assertTrue(Units.near("gx").stream().allMatch(near -> near.symbol().length() > 1), Units.near("gx")::toString);
        assertTrue(Units.near("mx").size() == 5);
    }

    @Test
    void aMistakeOfTwoWordsIsSeenAsAWhole() {
        UnitTrouble.Unknown trouble = (UnitTrouble.Unknown) ((UnitResult.Bad) Units.parse("deg C")).trouble();
        assertEquals("deg C", trouble.text());
        assertEquals(List.of("°C"), trouble.suggestions());
    }

    /** What is a unit, in whatever case, is not in the list of mistakes too. */
    @Test
    void noUnitIsAMistake() {
        Units.all().forEach(symbol -> assertTrue(KnownMistakes.find(symbol).isEmpty(), symbol));
    }

    @Test
    void aLongWordIsLikeNothing() {
        assertEquals(List.of(), Units.near("x".repeat(1_000_000)));
        assertEquals(List.of(), Units.near(""));
    }

    @Test
    void everyMendIsAUnit() {
        for (String typed : List.of("ml", "Ml", "gm", "sec", "deg C", "molar", "cc", "Kpa", "kilograms", "per cent", "gtt",
                "xL", "mmoll")) {
            assertTrue(!Units.near(typed).isEmpty(), typed);
            for (NearUnit near : Units.near(typed)) {
                assertTrue(Units.symbol(near.symbol()).isPresent(), typed + ": " + near);
            }
        }
    }
}
