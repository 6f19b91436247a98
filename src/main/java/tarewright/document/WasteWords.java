package tarewright.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.procedure.bench.WasteContainer;
import tarewright.procedure.declare.Notes.WasteBlock;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.syntax.TypedBlock;

/** What happens to what is left, in the author's words. */
final class WasteWords {
    private final Draft draft;
    private final Disposal disposal;

    WasteWords(Draft draft, Disposal disposal) {
        this.draft = draft;
        this.disposal = disposal;
    }

    List<Piece> of(TypedBlock block) {
        return draft.procedure().procedure().wastes().stream().filter(w -> w.block() == block)
                .<Piece>map(w -> new Piece.Note(draft.say("note.waste"), List.of(new Piece.Paragraph(sentences(w))))).toList();
    }

    List<Text> sentences(WasteBlock waste) {
        List<Text> set = new ArrayList<>();
        Optional<String> with = waste.neutraliseWith().map(m -> draft.called(m.value()));
        if (!waste.into().isBlank()) {
            Map<String, List<Text>> values = new HashMap<>(Map.of("what", what(waste), "into", draft.prose().of(waste.into())));
            with.ifPresent(w -> values.put("substance", Text.words(w)));
            Typeset.append(set, draft.compose(disposal.heldBack(waste.into()) ? "waste.into-jar" : with.isEmpty() ? "waste.into" : "waste.into-neutralised", values));
        } else {
            with.ifPresent(w -> Typeset.append(set, draft.compose("waste.neutralise", Map.of("what", what(waste), "substance", Text.words(w)))));
        }
        return set;
    }

    /** The bottle, or what a reaction leaves, or simply all that is left. */
    List<Text> what(WasteBlock waste) {
        Optional<QuantityBlock> block = waste.of().flatMap(o -> draft.procedure().procedure().quantity(o.value()));
        if (block.isPresent()) {
            return new Labels(draft).label(block.get());
        }
        boolean several = draft.procedure().reactions().size() > 1;
        return waste.of().filter(o -> several).map(o -> Text.words(draft.say("waste.reaction-named", "name", o.value())))
                .orElseGet(() -> Text.words(draft.say(waste.of().isPresent() ? "waste.reaction" : "waste.all")));
    }
}
