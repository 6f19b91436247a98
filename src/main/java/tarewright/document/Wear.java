package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tarewright.procedure.bench.Circumstances;
import tarewright.safety.Circumstance;
import tarewright.safety.Measure;
import tarewright.safety.Protection;
import tarewright.safety.Rulebook;

/** What to wear, to have at hand, to do and to leave alone. */
final class Wear {
    /** ISO 7010 M001, general mandatory action: it says nothing without its words. */
    private static final String GENERAL = "M001";

    private final Draft draft;
    private final List<Measure> measures;
    private final Set<Circumstance> circumstances;

    Wear(Draft draft, Bench bench, Rulebook rules) {
        this.draft = draft;
        this.circumstances = Circumstances.of(draft.procedure(), draft.say("apparatus.gas-syringe"), draft.say("apparatus.syringe"), draft.say("apparatus.glass-tubing"));
        this.measures = new Protection(rules).of(bench.verdicts(), circumstances);
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

    Set<Circumstance> circumstances() {
        return circumstances;
    }

    /**
     * What the panel demands and the author's lists of apparatus leave out, with how many: told by the words of those lists. Gloves and goggles for every student, gloves with spare.
     */
    List<Map.Entry<String, Integer>> missing() {
        int students = draft.procedure().setting().groups() * draft.procedure().setting().groupSize();
        List<Map.Entry<String, Integer>> rows = new ArrayList<>();
        Set<String> listed = new LinkedHashSet<>();
        measures.forEach(m -> draft.words().find("bench." + m.rule().measure()).filter(listed::add).ifPresent(words -> {
            List<String> known = List.of(draft.say("bench." + m.rule().measure() + ".known").split("; "));
            boolean there = draft.procedure().procedure().apparatus().stream().map(a -> a.words().toLowerCase(Locale.ROOT)).anyMatch(a -> known.stream().anyMatch(a::contains));
            int many = switch (m.rule().measure()) {
                case "gloves" -> (int) Math.ceil(students * (1 + draft.procedure().setting().spare()) - 1e-9);
                case "splash-goggles", "eye-protection" -> students;
                default -> 1;
            };
            if (!there) {
                rows.add(Map.entry(words, many));
            }
        }));
        return rows;
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
