package tarewright.tables;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A worked example of the open textbook in {@code cases/published.jsonl}; each names its section there. */
record PublishedCase(String id, String topic, JsonNode json) {
    private static final Map<String, Double> UNITS = Map.ofEntries(Map.entry("torr", 101325.0 / 760),
            Map.entry("mmHg", 133.322387415), Map.entry("atm", 101325.0), Map.entry("kPa", 1e3), Map.entry("MPa", 1e6), Map.entry("bar", 1e5),
            Map.entry("psi", 6894.757293168), Map.entry("mL", 1e-6), Map.entry("cm3", 1e-6), Map.entry("L", 1e-3),
            Map.entry("mol", 1.0), Map.entry("g", 1e-3), Map.entry("K", 1.0), Map.entry("M", 1.0), Map.entry("kJ", 1e3),
            Map.entry("kJ/mol", 1e3), Map.entry("g/L", 1.0), Map.entry("g/mol", 1e-3), Map.entry("%", 0.01),
            Map.entry("M/atm", 1e3 / 101325), Map.entry("mol/(L.kPa)", 1.0), Map.entry("mg/L", 1e-3), Map.entry("", 1.0));

    static List<PublishedCase> of(String topic) {
        List<PublishedCase> cases = new ArrayList<>();
        ObjectMapper mapper = new ObjectMapper();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                PublishedCase.class.getResourceAsStream("/tarewright/cases/published.jsonl"), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                JsonNode json = mapper.readTree(line);
                if (json.get("topic").asText().equals(topic)) {
                    cases.add(new PublishedCase(json.get("id").asText(), topic, json));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return cases;
    }

    boolean has(String given) {
        return json.get("given").has(given);
    }

    String text(String given) {
        return json.get("given").get(given).asText();
    }

    /** In SI; concentrations in mol/L. */
    double number(String given) {
        return parse(text(given));
    }

    double answer() {
        return parse(json.get("answer").asText());
    }

    /** The largest difference that is allowed: the case states it relative to the answer. */
    double allowed() {
        return Math.abs(answer()) * json.get("tolerance").asDouble() * (1 + 1e-9) + 1e-300;
    }

    String find() {
        return json.get("find").asText();
    }

    private static double parse(String text) {
        String[] parts = text.split(" ", 2);
        double number = Double.parseDouble(parts[0]);
        String unit = parts.length == 1 ? "" : parts[1];
        return unit.equals("degC") ? number + 273.15 : number * UNITS.get(unit);
    }

    @Override
    public String toString() {
        return id;
    }
}
