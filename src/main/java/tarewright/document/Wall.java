package tarewright.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tarewright.safety.Measure;
import tarewright.safety.SignalWord;
import tarewright.safety.Verdict;

/** The first page of the safety panel: what is read from across the room. The precedence of pictograms holds within a label, so each thing keeps its own. */
final class Wall {
    /** The general warning sign, ISO 7010 W001: for what is not known. */
    private static final String UNKNOWN = "W001";

    private final Draft draft;
    private final Bench bench;
    private final Hazards hazards;

    Wall(Draft draft, Bench bench) {
        this.draft = draft;
        this.bench = bench;
        this.hazards = new Hazards(draft);
    }

    List<Piece> pieces(List<Measure> measures) {
        return List.of(new Piece.Wall(word(), marks(), signs(measures)), new Piece.NewPage());
    }

    private String word() {
        Optional<Verdict> strongest = bench.verdicts().stream().filter(v -> v.signalWord().isPresent())
                .max(Comparator.comparing((Verdict v) -> v.signalWord().orElse(SignalWord.WARNING)));
        boolean unknown = bench.verdicts().stream().anyMatch(v -> !v.known()) || bench.bottles().stream().anyMatch(Bottle::solventUnknown);
        boolean harmless = bench.verdicts().stream().allMatch(Verdict::harmless);
        return strongest.map(hazards::signalWord).orElseGet(() -> draft.say(unknown ? "wall.unknown" : harmless ? "wall.none" : "wall.no-signal-word"));
    }

    private List<Piece.WallMark> marks() {
        Map<String, List<String>> names = new TreeMap<>();
        for (Bottle bottle : bench.all()) {
            List<String> codes = new ArrayList<>(bottle.verdict().pictograms());
            if (!bottle.verdict().known() || bottle.solventUnknown()) {
                codes.add(UNKNOWN);
            }
            codes.forEach(c -> names.computeIfAbsent(c, k -> new ArrayList<>()).add(Plain.of(bottle.name())));
        }
        return names.entrySet().stream().map(e -> new Piece.WallMark(e.getKey(), (e.getKey().equals(UNKNOWN) ? draft.say("wall.not-known") + " " : "")
                + e.getValue().stream().distinct().collect(Collectors.joining(", ")))).toList();
    }

    /** What to wear and have at hand that a few words can say; the rest stands with its reasons on the pages that follow. */
    private List<Piece.Sign> signs(List<Measure> measures) {
        Map<String, Piece.Sign> signs = new LinkedHashMap<>();
        measures.forEach(m -> draft.words().find("wall." + m.rule().measure()).ifPresent(said ->
                signs.putIfAbsent(said, new Piece.Sign(m.rule().sign(), said))));
        return List.copyOf(signs.values());
    }
}
