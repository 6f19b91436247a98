package tarewright.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A worked example, or an input that must be refused.
 *
 * @param source where the example is printed
 * @param given what it starts from, by name, in the order of the file
 * @param find what is sought
 * @param answer as printed
 * @param tolerance relative to the answer; 0 where the answer is text
 * @param kind of the message that refuses it, empty where it is not refused
 */
record Case(String id, String topic, String task, String source, Map<String, String> given, String find, String answer,
        double tolerance,
        String kind, String shouldSay) {
    /** The examples of OpenStax, Chemistry 2e (CC BY 4.0), each with its section, and those that the examiner computed. */
    static List<Case> published() {
        return read("published.jsonl");
    }

    static List<Case> refused() {
        return read("refused.jsonl");
    }

    boolean has(String name) {
        return given.containsKey(name);
    }

    String get(String name) {
        return Objects.requireNonNull(given.get(name), () -> id + " gives no " + name);
    }

    /** The one quantity given whose name starts so: {@code mass_} for {@code mass_Zn}. */
    Optional<String> speciesOf(String prefix) {
        return given.keySet().stream().filter(k -> k.startsWith(prefix)).map(k -> k.substring(prefix.length())).findFirst();
    }

    /** The number that a given quantity starts with. */
    double number(String name) {
        return Double.parseDouble(get(name).split(" ")[0]);
    }

    /** The unit that stands behind the answer, empty for none. */
    String answerUnit() {
        int space = answer.indexOf(' ');
        return space < 0 ? "" : answer.substring(space + 1);
    }

    @Override
    public String toString() {
        return source.isEmpty() ? id : id + " (" + source + ")";
    }

    private static List<Case> read(String file) {
        ObjectMapper mapper = new ObjectMapper();
        List<Case> cases = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Case.class.getResourceAsStream("/tarewright/cases/" + file)), StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                JsonNode row = mapper.readTree(line);
                Map<String, String> given = new LinkedHashMap<>();
                row.get("given").properties().forEach(e -> given.put(e.getKey(), e.getValue().asText()));
                cases.add(new Case(row.get("id").asText(), row.get("topic").asText(), row.get("task").asText(),
                        row.path("source").asText(""), given,
                        row.get("find").asText(), row.path("answer").asText(""), row.path("tolerance").asDouble(0),
                        row.path("message_kind").asText(""), row.path("message_should_say").asText("")));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return cases;
    }
}
