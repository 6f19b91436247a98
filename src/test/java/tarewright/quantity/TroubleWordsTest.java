package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Each trouble of this floor has words, and each blank in them has a field to fill it. */
class TroubleWordsTest {
    private static final Pattern BLANK = Pattern.compile("\\{([A-Za-z]+)}");
    private static final List<QuantityResult> REFUSED = List.of(
            QuantityText.parse("25.0 Ml"), QuantityText.parse("5 Mg"), QuantityText.parse("5 gm"), QuantityText.parse("5 spoons"),
            QuantityText.parse("5 spoons", Dimension.MASS), QuantityText.parse("5 J/g/K"), QuantityText.parse("5 J/("),
            QuantityText.parse("x"), QuantityText.parse("5-10 mL"), QuantityText.parse("1,000 g"), QuantityText.parse("1e99 g"),
            QuantityText.parse("5", Dimension.MASS), QuantityText.parse("5 mL", Dimension.MASS), QuantityText.parse("-300 °C"),
            QuantityText.parse("10 to 5 g"), QuantityText.parseFraction("0 %"), QuantityText.parseFraction("104 %"));
    private static final List<String> NO_STRENGTHS = List.of("5 %", "5 g", "1 mol/L as");

    @Test
    void everyTroubleIsPutIntoWords() throws IOException {
        Properties words = words();
        Set<String> ids = new TreeSet<>();
        for (QuantityResult refused : REFUSED) {
            check(words, ids, ((QuantityResult.Bad) refused).trouble());
        }
        for (String text : NO_STRENGTHS) {
            check(words, ids, ((StrengthResult.Bad) StrengthText.parse(text)).trouble());
        }
        assertEquals(14, ids.size(), "all the troubles: " + ids);
    }

    private static void check(Properties words, Set<String> ids, QuantityTrouble trouble) {
        ids.add(trouble.id());
        assertNotNull(words.getProperty(trouble.id() + ".says"), trouble.id());
        Map<String, Object> fields = trouble.fields();
        for (String key : words.stringPropertyNames()) {
            if (key.startsWith(trouble.id() + ".")) {
                Matcher blank = BLANK.matcher(words.getProperty(key));
                while (blank.find()) {
                    assertTrue(fields.containsKey(blank.group(1)), key + " has no " + blank.group(1) + " in " + fields);
                }
            }
        }
        for (Object value : fields.values()) {
            boolean typed = value instanceof String || value instanceof Number || value instanceof List<?>
                    || value instanceof Optional<?>;
            assertTrue(typed, trouble.id() + ": " + value);
        }
    }

    private static Properties words() throws IOException {
        Properties words = new Properties();
        try (Reader reader = new InputStreamReader(
                TroubleWordsTest.class.getResourceAsStream("/tarewright/words/findings_en.properties"), StandardCharsets.UTF_8)) {
            words.load(reader);
        }
        return words;
    }
}
