package tarewright.chemistry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** Published examples, inputs to refuse, and tables, as the tests of this floor read them. */
final class Cases {
    private Cases() {
    }

    /** The worked examples of a task, each with its source. */
    static Stream<JsonNode> published(String task) {
        return lines("/tarewright/cases/published.jsonl").filter(row -> row.get("task").asText().equals(task));
    }

    /** The inputs that must be refused with one of these kinds of message. */
    static Stream<JsonNode> refused(String... kinds) {
        return lines("/tarewright/cases/refused.jsonl").filter(row -> List.of(kinds).contains(row.get("message_kind").asText()));
    }

    static List<Map<String, String>> table(String path) {
        CsvSchema header = CsvSchema.emptySchema().withHeader();
        try (BufferedReader in = open(path);
                MappingIterator<Map<String, String>> rows = new CsvMapper().readerForMapOf(String.class)
                        .with(header).readValues(in)) {
            return rows.readAll();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The elements with their abridged standard atomic weights 2021 (Prohaska et al., Pure Appl. Chem. 94 (2022) 573-600). */
    static Elements elements() {
        List<Element> elements = new ArrayList<>();
        for (Map<String, String> row : table("/tarewright/data/atomic-weights.csv")) {
            if (!row.get("abridged_value").isEmpty()) {
                elements.add(new Element(Integer.parseInt(row.get("z")), row.get("symbol"), row.get("name"),
                        Double.parseDouble(row.get("abridged_value")), Double.parseDouble(row.get("abridged_uncertainty")),
                        row.get("source")));
            }
        }
        return Elements.of(elements);
    }

    static Formula formula(String text) {
        FormulaResult result = Formula.parse(text);
        return result.value().orElseThrow(() -> new AssertionError(text + ": " + result));
    }

    static Equation equation(String text) {
        EquationResult result = Equation.parse(text);
        return result.value().orElseThrow(() -> new AssertionError(text + ": " + result));
    }

    /** The number that a published answer starts with, its unit left out. */
    static double number(String answer) {
        return Double.parseDouble(answer.split(" ")[0]);
    }

    private static Stream<JsonNode> lines(String path) {
        ObjectMapper mapper = new ObjectMapper();
        List<JsonNode> rows = new ArrayList<>();
        try (BufferedReader in = open(path)) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                rows.add(mapper.readTree(line));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows.stream();
    }

    private static BufferedReader open(String path) {
        return new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Cases.class.getResourceAsStream(path), path), StandardCharsets.UTF_8));
    }
}
