package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import tarewright.safety.Rulebook;

/** The safety panel in small, at the head of handout and key: what is dangerous here, and what to wear and do. */
final class SmallPanel {
    private SmallPanel() {
    }

    static List<Piece> pieces(Draft draft, Rulebook rules) {
        Bench bench = Bench.of(draft, rules);
        Hazards hazards = new Hazards(draft);
        List<Piece> pieces = new ArrayList<>(List.of(draft.heading(2, "heading.safety")));
        bench.bottles().stream().filter(b -> !b.verdict().harmless()).map(b -> hazards.box(b, List.of(), false))
                .forEach(pieces::add);
        bench.made().stream().filter(b -> !b.verdict().harmless())
                .map(b -> hazards.box(b, Text.words(draft.say("hazard.made-here")), false)).forEach(pieces::add);
        pieces.addAll(hazards.harmless(bench.all()));
        pieces.addAll(new Wear(draft, bench, rules).forStudents());
        return pieces;
    }
}
