package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import tarewright.setting.Paper;
import tarewright.setting.Setting;
import tarewright.text.Digest;

class VersionCodeTest {
    private static String code(String source, Setting setting, String data) {
        return VersionCode.of(source, setting, data);
    }

    @Test
    void isSevenLettersOrDigitsOfBase32() {
        assertTrue(code("text", Setting.USUAL, "1").matches("[a-z2-7]{7}"));
    }

    /** SHA-256 of "abc" starts ba 78 16 bf 8f (FIPS 180-4, example); base 32 of these five bytes by RFC 4648: XJ4BNP4P. */
    @Test
    void hashesAsTheStandardSays() {
        assertEquals("xj4bnp4", VersionCode.base32(Digest.of("abc"), 7));
    }

    @Test
    void changesWithTheTextTheSettingAndTheData() {
        String code = code("text\n", Setting.USUAL, "1");
        Setting usual = Setting.USUAL;
        Setting letter = new Setting(usual.groups(), usual.groupSize(), usual.runs(), usual.spare(), usual.room(), usual.hood(),
                Paper.LETTER,
                usual.language(), usual.country(), usual.occasion(), usual.onTheDay(), 1);
        Setting more = new Setting(13, usual.groupSize(), usual.runs(), usual.spare(), usual.room(), usual.hood(), usual.paper(),
                usual.language(), usual.country(), usual.occasion(), usual.onTheDay(), 1);
        Setting two = new Setting(usual.groups(), usual.groupSize(), usual.runs(), usual.spare(), usual.room(), usual.hood(), usual.paper(),
                usual.language(), usual.country(), usual.occasion(), usual.onTheDay(), 2);
        assertNotEquals(code, code("text\n", two, "1"));
        assertNotEquals(code, code("text.\n", usual, "1"));
        assertNotEquals(code, code("text\n", letter, "1"));
        assertNotEquals(code, code("text\n", more, "1"));
        assertNotEquals(code, code("text\n", usual, "2"));
        assertEquals(code, code("text\r\n", usual, "1"));
    }
}
