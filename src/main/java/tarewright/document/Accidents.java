package tarewright.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import tarewright.safety.Circumstance;
import tarewright.safety.Form;
import tarewright.safety.Response;
import tarewright.safety.ResponseRule;
import tarewright.safety.Rulebook;
import tarewright.safety.Verdict;

/** What to do when something goes wrong, by the precautionary statements that the substances ask for. */
final class Accidents {
    private final Draft draft;

    Accidents(Draft draft) {
        this.draft = draft;
    }

    /** On the bench: what is in its bottles, and what is hot. */
    List<Piece> pieces(List<Verdict> bench, Set<Circumstance> circumstances, Rulebook rules) {
        return grid(bench, circumstances, rules).under(2, "heading.accidents");
    }

    /** In the prep room: what a solution is made from, and a spill of it. Nothing where all of it is harmless. */
    List<Piece> inThePrepRoom(List<Verdict> bottles, Rulebook rules) {
        List<Verdict> hazardous = bottles.stream().filter(v -> !v.harmless()).toList();
        if (hazardous.isEmpty()) {
            return List.of();
        }
        Grid grid = grid(hazardous, Set.of(), rules);
        if (hazardous.stream().anyMatch(v -> !v.known() || v.has("H314", "H290"))) {
            grid.row(Text.words(draft.say("accident.spill")), Text.words(draft.say("accident.spill-corrosive-do")), Text.words(draft.say("accident.practice")));
        }
        return grid.under(3, "heading.accidents-prep");
    }

    private Grid grid(List<Verdict> bench, Set<Circumstance> circumstances, Rulebook rules) {
        Map<ResponseRule.Topic, List<Response>> byTopic = Response.of(bench, rules).stream()
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
        boolean wet = bench.stream().map(v -> v.matter().form()).anyMatch(f -> f == Form.SOLUTION || f == Form.LIQUID || f == Form.SLURRY);
        if (wet && !byTopic.containsKey(ResponseRule.Topic.EYES)) {
            grid.row(Text.words(draft.say("accident.eyes")), Text.words(draft.say("accident.eyes-do")), Text.words(draft.say("accident.practice")));
        }
        if (circumstances.contains(Circumstance.HEAT) || circumstances.contains(Circumstance.FLAME)) {
            grid.row(Text.words(draft.say("accident.burn")), Text.words(draft.say("accident.burn-do")), Text.words(draft.say("accident.because-heat")));
        }
        if (bench.stream().anyMatch(v -> !v.known())) {
            grid.row(Text.words(draft.say("accident.unknown")), Text.words(draft.say("accident.unknown-do")), List.of());
        }
        return grid;
    }
}
