package tarewright.document;

import java.util.List;
import java.util.Locale;
import tarewright.procedure.bench.Meetings;
import tarewright.safety.Clash;
import tarewright.safety.Rulebook;

/** What must not meet of what is on the bench, other than what the procedure means to bring together. */
final class Apart {
    private final Draft draft;

    Apart(Draft draft) {
        this.draft = draft;
    }

    List<Piece> pieces(Bench bench, Rulebook rules) {
        List<Clash> clashes = Meetings.among(draft.procedure(), bench.things(), rules);
        List<List<Piece>> items = clashes.stream().map(c -> List.<Piece>of(new Piece.Paragraph(Text.words(sentence(c)))))
                .distinct().toList();
        return items.isEmpty() ? List.of() : List.of(draft.heading(2, "heading.apart"), new Piece.Bullets(items));
    }

    private String sentence(Clash clash) {
        boolean within = clash.first() == clash.second();
        return draft.say(within ? "apart.within" : "apart.pair", "first", clash.first().name(), "second", clash.second().name(),
                "how", draft.say("apart." + clash.severity().name().toLowerCase(Locale.ROOT).replace('_', '-')),
                "hazard", phrase(clash.rule().hazard()), "products", phrase(clash.rule().products()), "advice", phrase(clash.rule().advice()));
    }

    private String phrase(String english) {
        return draft.tables().phrase(english);
    }
}
