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
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.chemistry.Confidence;
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

    /**
     * Regulation (EC) No 1272/2008, Annexes III and IV, Spanish consolidated text of 2025-09-01 as extracted in the public data set mhchem/hpstatements: those where the usual
     * translations in circulation differ. The signal words by its article 2, points 4 (b) and 4 (a).
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"H281|Contiene gas refrigerado; puede provocar quemaduras o lesiones criogénicas", "H360F|Puede perjudicar a la fertilidad",
        "H361|Se sospecha que puede perjudicar la fertilidad o dañar el feto", "H373|Puede provocar daños en los órganos tras exposiciones prolongadas o repetidas",
        "P310|Llamar inmediatamente a un CENTRO DE TOXICOLOGÍA/médico", "P333+P313|En caso de irritación o erupción cutánea: Consultar a un médico",
        "P363|Lavar las prendas contaminadas antes de volver a usarlas",
        "P306+P360|EN CASO DE CONTACTO CON LA ROPA: Aclarar inmediatamente con agua abundante las prendas y la piel contaminadas antes de quitarse la ropa",
        "P371+P380+P375|En caso de incendio importante y en grandes cantidades: Evacuar la zona. Luchar contra el incendio a distancia, dado el riesgo de explosión"})
    void whatIsPrintedOfAStatementIsTheRegulationsText(String code, String printed) {
        assertEquals(printed, HazardTables.in(HazardTables.of("ES"), "es").rules().statements().of(code).printed());
    }

    /** Every statement that can be printed was read, so no Spanish panel has to warn of one from memory. */
    @Test
    void noSpanishStatementIsFromMemory() {
        CountryRules spanish = HazardTables.in(HazardTables.of(""), "es");
        var english = HazardTables.of("").rules().statements();
        List<String> recalled = spanish.rules().statements().all().stream().filter(s -> !s.text().equals(english.of(s.code()).text()))
                .filter(s -> s.provenance().confidence() != Confidence.READ).map(Statement::code).toList();
        assertEquals(List.of(), recalled);
    }

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
