package tarewright.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import tarewright.safety.Response;
import tarewright.safety.ResponseRule;
import tarewright.safety.Rulebook;

/** What to do when something goes wrong, by the precautionary statements that the substances ask for. */
final class Accidents {
    private final Draft draft;

    Accidents(Draft draft) {
        this.draft = draft;
    }

    List<Piece> pieces(Bench bench, Rulebook rules) {
        Map<ResponseRule.Topic, List<Response>> byTopic = Response.of(bench.verdicts(), rules).stream()
                .collect(Collectors.groupingBy(Response::topic, LinkedHashMap::new, Collectors.toList()));
        Grid grid = new Grid(draft, "").words("accident.what", "accident.do", "accident.because");
        byTopic.forEach((topic, responses) -> {
            String said = responses.stream().map(r ->
                    draft.say("hazard.statement", "code", r.statement().code(), "text", r.text()))
                    .collect(Collectors.joining(" "));
            String codes = responses.stream().flatMap(r -> r.codes().stream()).distinct().sorted()
                    .collect(Collectors.joining(", "));
            grid.row(Text.words(draft.say("accident." + topic.name().toLowerCase(Locale.ROOT))), Text.words(said),
                    Text.words(codes));
        });
        if (bench.verdicts().stream().anyMatch(v -> !v.known())) {
            grid.row(Text.words(draft.say("accident.unknown")), Text.words(draft.say("accident.unknown-do")), List.of());
        }
        return grid.under(2, "heading.accidents");
    }
}
