package tarewright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.safety.Statement;
import tarewright.tables.HazardTables;
import tarewright.tables.HazardTables.CountryRules;

/** A document in Spanish is Spanish throughout: nothing falls back to English unseen. */
class LanguagesTest {
    private static Properties words(String name, String language) throws IOException {
        try (InputStream in = LanguagesTest.class.getResourceAsStream("/tarewright/words/" + name + "_" + language + ".properties")) {
            Properties words = new Properties();
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return words;
        }
    }

    private static List<String> blanks(String words) {
        return Pattern.compile("\\{[^}]*}").matcher(words).results().map(MatchResult::group).sorted().toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"documents", "quantities", "reports"})
    void everyWordIsThereWithTheSameBlanks(String name) throws IOException {
        Properties english = words(name, "en");
        Properties spanish = words(name, "es");
        assertEquals(english.stringPropertyNames(), spanish.stringPropertyNames());
        for (String key : english.stringPropertyNames()) {
            assertEquals(blanks(english.getProperty(key)), blanks(spanish.getProperty(key)), key);
        }
    }

    /** Regulation (EC) No 1272/2008, Annex III, Spanish edition; the signal words by its article 2, points 4 (b) and 4 (a). */
    @Test
    void statementsAndSignalWordsAreThoseOfTheRegulation() {
        CountryRules spanish = HazardTables.in(HazardTables.of("ES"), "es-MX");
        assertEquals("Puede agravar un incendio; comburente", spanish.rules().statements().of("H272").text());
        assertEquals("Puede ser corrosivo para los metales", spanish.rules().statements().of("H290").text());
        assertEquals("Peligro", DocumentWords.in("es").say("signal.danger"));
        assertEquals("Atención", DocumentWords.in("es").say("signal.warning"));
    }

    /** Every statement that a classification can print on its own, and every one that the accidents table asks for, has Spanish words. */
    @Test
    void noStatementThatIsPrintedStaysEnglish() {
        CountryRules english = HazardTables.of("");
        CountryRules spanish = HazardTables.in(english, "es");
        for (var element : english.rules().labelElements()) {
            for (String code : element.codes()) {
                assertSpanish(english, spanish, code);
            }
        }
        english.rules().responses().forEach(r -> assertSpanish(english, spanish, r.statement()));
        english.rules().supplementalLimits().forEach(l -> assertSpanish(english, spanish, l.code()));
        for (int i = 0; i < english.rules().responses().size(); i++) {
            String fill = english.rules().responses().get(i).fill();
            assertEquals(fill.isEmpty(), spanish.rules().responses().get(i).fill().equals(fill), fill);
        }
    }

    private static void assertSpanish(CountryRules english, CountryRules spanish, String code) {
        Statement words = spanish.rules().statements().of(code);
        assertFalse(words.printed().isBlank());
        assertNotEquals(english.rules().statements().of(code).text(), words.text(), code);
    }
}
