package tarewright.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What to do after an accident: a precautionary statement of the standard.
 *
 * @param text the standard's words with its open place filled
 * @param codes the hazard statements that ask for it
 */
public record Response(ResponseRule.Topic topic, Statement statement, String text, List<String> codes) {
    /** Of these the first that is asked for makes the others redundant (CLP Article 28). */
    private static final List<List<String>> STRICTEST_FIRST = List.of(List.of("P310", "P311", "P312"),
            List.of("P361+P364", "P362+P364"),
            List.of("P301+P310", "P301+P312"), List.of("P303+P361+P353", "P302+P352"), List.of("P301+P330+P331", "P330"));

    public Response {
        codes = List.copyOf(codes);
    }

    /** The responses for all these matters together, by topic. */
    public static List<Response> of(List<Verdict> bench, Rulebook rules) {
        Map<String, Set<String>> codes = new LinkedHashMap<>();
        Map<String, ResponseRule> first = new LinkedHashMap<>();
        for (ResponseRule rule : rules.responses()) {
            if (bench.stream().anyMatch(v -> v.statements().stream().anyMatch(s -> s.code().equals(rule.code())))) {
                String key = rule.topic() + " " + rule.statement() + " " + rule.fill();
                codes.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(rule.code());
                first.putIfAbsent(key, rule);
            }
        }
        List<Response> responses = new ArrayList<>();
        first.forEach((key, rule) -> {
            if (!redundant(rule, first.values())) {
                Statement statement = rules.statements().of(rule.statement());
                String text = rule.fill().isEmpty() ? statement.printed() : statement.printed().replace("\u2026", rule.fill());
                responses.add(new Response(rule.topic(), statement, text, List.copyOf(codes.get(key))));
            }
        });
        responses.sort(Comparator.comparing(Response::topic));
        return responses;
    }

    private static boolean redundant(ResponseRule rule, Iterable<ResponseRule> asked) {
        for (List<String> order : STRICTEST_FIRST) {
            int place = order.indexOf(rule.statement());
            for (ResponseRule other : asked) {
                int stricter = order.indexOf(other.statement());
                if (place > 0 && stricter >= 0 && stricter < place && other.topic() == rule.topic()) {
                    return true;
                }
            }
        }
        return false;
    }
}
