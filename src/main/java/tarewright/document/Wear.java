package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tarewright.procedure.bench.Circumstances;
import tarewright.safety.Measure;
import tarewright.safety.Protection;
import tarewright.safety.Rulebook;

/** What to wear, to have at hand, to do and to leave alone. */
final class Wear {
    /** ISO 7010 M001, general mandatory action: it says nothing without its words. */
    private static final String GENERAL = "M001";

    private final Draft draft;
    private final List<Measure> measures;

    Wear(Draft draft, Bench bench, Rulebook rules) {
        this.draft = draft;
        this.measures = new Protection(rules).of(bench.verdicts(), Circumstances.of(draft.procedure(), draft.say("apparatus.gas-syringe"),
                draft.say("apparatus.syringe"), draft.say("apparatus.glass-tubing")));
    }

    /**
     * What the students themselves wear, do and leave alone, each sign once; not where help is found and who supervises. What has no
     * sign of its own is said in a sentence.
     */
    List<Piece> forStudents() {
        List<Measure> own = measures.stream()
                .filter(m -> m.rule().sign().matches("[MPW].*") && !m.rule().measure().equals("adult")).toList();
        Map<String, List<String>> bySign = new LinkedHashMap<>();
        own.forEach(m -> bySign.computeIfAbsent(m.rule().sign(), s -> new ArrayList<>()).add(text(m)));
        List<String> general = bySign.getOrDefault(GENERAL, List.of());
        bySign.remove(GENERAL);
        List<Piece> pieces = new ArrayList<>(List.of(new Piece.Signs(bySign.entrySet().stream()
                .map(e -> new Piece.Sign(e.getKey(), String.join(". ", e.getValue()))).toList())));
        if (!general.isEmpty()) {
            pieces.add(new Piece.Paragraph(Text.words(general.stream().map(t -> t.replaceFirst("\\.?$", "."))
                    .collect(Collectors.joining(" ")))));
        }
        return pieces;
    }

    List<Measure> measures() {
        return measures;
    }

    /** Every measure with what asked for it. */
    Piece.Signs withReasons() {
        return new Piece.Signs(measures.stream().map(m -> new Piece.Sign(m.rule().sign(), m.reasons().isEmpty() ? text(m)
                : draft.say("wear.because", "what", text(m), "reasons", reasons(m)))).toList());
    }

    private String text(Measure measure) {
        return draft.tables().phrase(measure.rule().text());
    }

    private String reasons(Measure measure) {
        List<String> said = new ArrayList<>();
        for (Measure.Reason reason : measure.reasons()) {
            Optional<String> codes = reason.codes().isEmpty() ? Optional.empty() : Optional.of(String.join(", ", reason.codes()));
            said.add(!reason.known() ? draft.say("wear.reason-unknown", "name", reason.matter())
                    : codes.map(c -> draft.say("wear.reason", "name", reason.matter(), "codes", c)).orElse(reason.matter()));
        }
        return String.join("; ", said);
    }
}
