package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.procedure.declare.Notes.WasteBlock;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.syntax.TypedBlock;

/** What happens to what is left, in the author's words. */
final class WasteWords {
    private final Draft draft;

    WasteWords(Draft draft) {
        this.draft = draft;
    }

    List<Piece> of(TypedBlock block) {
        return draft.procedure().procedure().wastes().stream().filter(w -> w.block() == block)
                .<Piece>map(w -> new Piece.Note(draft.say("note.waste"), List.of(new Piece.Paragraph(sentences(w))))).toList();
    }

    List<Text> sentences(WasteBlock waste) {
        List<Text> set = new ArrayList<>();
        if (!waste.into().isBlank()) {
            Typeset.append(set, draft.compose("waste.into", Map.of("what", what(waste), "into", draft.prose().of(waste.into()))));
        }
        waste.neutraliseWith().ifPresent(m -> {
            Typeset.join(set, set.isEmpty() ? "" : " ");
            Typeset.append(set, draft.compose("waste.neutralise", Map.of("substance", Text.words(draft.called(m.value())))));
        });
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
