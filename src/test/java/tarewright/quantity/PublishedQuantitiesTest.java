package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Worked examples on units and figures: OpenStax, Chemistry 2e, sections 1.5, 1.6 and 9.1 (CC BY 4.0); each case names its own
 * place. Refusals that concern units and quantities.
 */
class PublishedQuantitiesTest {
    private static final Map<String, Dimension> WANTED = Map.of("mass", Dimension.MASS, "temperature", Dimension.TEMPERATURE,
            "pressure", Dimension.PRESSURE);

    @TestFactory
    Stream<DynamicTest> conversions() throws IOException {
        List<JsonNode> cases = published("unit_conversion");
        assertEquals(20, cases.size());
        return cases.stream().map(row -> DynamicTest.dynamicTest(text(row, "id"), () -> convert(row)));
    }

    private static void convert(JsonNode row) {
        Typed answer = read(text(row, "answer"));
        JsonNode given = row.get("given");
        double si = switch (text(row, "find")) {
            case "converted value" -> read(text(given, "value")).si();
            case "density" -> read(text(given, "mass")).si() / read(text(given, "volume")).si();
            case "mass" -> read(text(given, "density")).si() * read(text(given, "volume")).si();
            case "volume" -> read(text(given, "mass")).si() / read(text(given, "density")).si();
            default -> throw new AssertionError(text(row, "find"));
        };
        // The tolerance, half a unit in the last digit, is relative to the value in the SI: of a temperature, in kelvins.
        assertEquals(answer.si(), si, answer.si() * row.get("tolerance").asDouble() * 1.01);
        assertEquals(answer.value(), Double.parseDouble(Digits.decimals(answer.unit().fromSi(si), answer.decimals())));
        assertEquals(row.get("sigfigs").asInt(), answer.significantDigits());
    }

    @TestFactory
    Stream<DynamicTest> significantFigures() throws IOException {
        List<JsonNode> cases = published("sigfigs");
        assertEquals(14, cases.size());
        return cases.stream().map(row -> DynamicTest.dynamicTest(text(row, "id"),
                () -> assertEquals(text(row, "answer"), figures(row))));
    }

    private static String figures(JsonNode row) {
        JsonNode given = row.get("given");
        if (text(row, "find").equals("count")) {
            return Integer.toString(read(text(given, "value")).significantDigits());
        }
        if (given.has("rule")) {
            assertEquals("half to even", text(given, "rule"));
            return Digits.significantHalfEven(given.get("value").asDouble(), given.get("sigfigs").asInt());
        }
        List<Typed> terms = Stream.of("x1", "x2", "x3").filter(given::has).map(x -> read(text(given, x))).toList();
        double first = terms.get(0).value();
        List<Double> others = terms.subList(1, terms.size()).stream().map(Typed::value).toList();
        int decimals = Digits.decimalsOfSum(terms.stream().mapToInt(Typed::decimals).toArray());
        int figures = Digits.figuresOfProduct(terms.stream().mapToInt(Typed::significantDigits).toArray());
        String number = switch (text(given, "operation")) {
            case "add" -> Digits.decimals(others.stream().reduce(first, Double::sum), decimals);
            case "subtract" -> Digits.decimals(others.stream().reduce(first, (a, b) -> a - b), decimals);
            case "multiply" -> Digits.significant(others.stream().reduce(first, (a, b) -> a * b), figures);
            case "divide" -> Digits.significant(others.stream().reduce(first, (a, b) -> a / b), figures);
            default -> throw new AssertionError(text(given, "operation"));
        };
        return number + " " + text(given, "unit");
    }

    /** Every quantity with a unit that any case gives can be read; formula, equation and count columns are not quantities. */
    @Test
    void everyQuantityOfThePublishedCasesIsRead() throws IOException {
        Set<String> counts = Set.of("atoms", "molecules");
        List<String> unread = new ArrayList<>();
        int read = 0;
        for (JsonNode row : rows("published.jsonl")) {
            for (JsonNode value : row.get("given")) {
                String text = value.asText();
                boolean quantity = text.matches("-?[0-9.]+(e-?[0-9]+)? [^ ]+") && !counts.contains(text.split(" ")[1]);
                read += quantity ? 1 : 0;
                if (quantity && QuantityText.parse(text) instanceof QuantityResult.Bad bad) {
                    unread.add(text(row, "id") + ": " + bad.trouble());
                }
            }
        }
        assertEquals(List.of(), unread);
        assertTrue(read > 200, "quantities read: " + read);
    }

    @TestFactory
    Stream<DynamicTest> refusals() throws IOException {
        Set<String> kinds = Set.of("wrong_dimension", "unknown_unit", "missing_unit", "below_absolute_zero", "percent_over_100");
        List<JsonNode> cases = rows("refused.jsonl").stream().filter(row -> kinds.contains(text(row, "message_kind"))).toList();
        assertEquals(7, cases.size());
        return cases.stream().map(row -> DynamicTest.dynamicTest(text(row, "id"), () -> assertEquals(
                List.of(text(row, "message_kind").replace('_', '-')), troubles(row.get("given")))));
    }

    /** The ids of the troubles in the quantities that a case gives, in their order. */
    private static List<String> troubles(JsonNode given) {
        List<String> ids = new ArrayList<>();
        given.properties().forEach(field -> {
            String name = field.getKey().replaceAll("_.*", "");
            String value = field.getValue().asText();
            if (name.equals("purity")) {
                note(ids, QuantityText.parseFraction(value));
            } else if (field.getKey().equals("mass_percent")) {
                if (StrengthText.parse(value + " w/w") instanceof StrengthResult.Bad bad) {
                    ids.add(bad.trouble().id());
                }
            } else if (WANTED.containsKey(name)) {
                note(ids, QuantityText.parse(value, WANTED.get(name)));
            }
        });
        return ids;
    }

    private static void note(List<String> ids, QuantityResult result) {
        if (result instanceof QuantityResult.Bad bad) {
            ids.add(bad.trouble().id());
        }
    }

    private static Typed read(String text) {
        QuantityResult result = QuantityText.parse(text);
        assertTrue(result instanceof QuantityResult.Ok, text + ": " + result);
        return ((QuantityResult.Ok) result).typed();
    }

    private static String text(JsonNode row, String field) {
        return row.get(field).asText();
    }

    private static List<JsonNode> published(String topic) throws IOException {
        return rows("published.jsonl").stream().filter(row -> text(row, "topic").equals(topic)).toList();
    }

    private static List<JsonNode> rows(String file) throws IOException {
        try (InputStream in = PublishedQuantitiesTest.class.getResourceAsStream("/tarewright/cases/" + file)) {
            ObjectMapper mapper = new ObjectMapper();
            List<JsonNode> rows = new ArrayList<>();
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                rows.add(mapper.readTree(line));
            }
            return rows;
        }
    }
}
