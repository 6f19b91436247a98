package tarewright.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tarewright.procedure.resolve.Referent;
import tarewright.procedure.syntax.Inline;

/** Running text of the author's, references filled in. */
final class RunningText {
    private final Draft draft;
    private final Filling filling;
    private final Labels labels;
    private final Workings workings;
    private final Map<String, Integer> times = new HashMap<>();
    private final Map<String, Integer> seen = new HashMap<>();

    RunningText(Draft draft, Filling filling) {
        this.draft = draft;
        this.filling = filling;
        this.labels = new Labels(draft);
        this.workings = new Workings(draft);
        for (Inline.Reference reference : draft.procedure().procedure().source().references()) {
            if (draft.procedure().referent(reference) instanceof Referent.Blank blank) {
                times.merge(blank.what(), 1, Integer::sum);
            }
        }
    }

    /** @param head the head of the column that it stands in; empty outside a table */
    List<Text> of(List<Inline> inlines, String head) {
        List<Text> set = new ArrayList<>();
        StringBuilder words = new StringBuilder();
        for (Inline inline : inlines) {
            // A star that is no emphasis comes as words of its own, and may stand in a formula.
            if (inline instanceof Inline.Words more) {
                words.append(more.text());
                continue;
            }
            Typeset.append(set, draft.prose().of(words.toString()));
            words.setLength(0);
            if (inline instanceof Inline.Strong strong) {
                set.add(new Text.Strong(of(strong.inside(), head)));
            } else if (inline instanceof Inline.Emphasis emphasis) {
                set.add(new Text.Emphasis(of(emphasis.inside(), head)));
            } else if (inline instanceof Inline.Code code) {
                set.add(new Text.Code(draft.prose().veiled(code.text())));
            } else if (inline instanceof Inline.Link link) {
                Typeset.append(set, link(link, head));
            } else if (inline instanceof Inline.Picture picture) {
                Typeset.append(set, draft.compose("picture", Map.of("alternative", of(picture.inside(), head))));
            } else if (inline instanceof Inline.HardBreak) {
                set.add(new Text.Break());
            } else if (inline instanceof Inline.Reference reference) {
                Typeset.append(set, reference(reference, head));
            }
        }
        Typeset.append(set, draft.prose().of(words.toString()));
        return set;
    }

    /** On paper a link needs its address beside its words. */
    private List<Text> link(Inline.Link link, String head) {
        List<Text> words = of(link.inside(), head);
        return Plain.of(words).equals(link.destination()) ? words
                : draft.compose("link", Map.of("words", words, "address", Text.words(link.destination())));
    }

    private List<Text> reference(Inline.Reference reference, String head) {
        Referent referent = draft.procedure().referent(reference);
        if (referent instanceof Referent.Amount amount) {
            if (draft.keeps(amount.figure())) {
                return filling.hidden(reference.text(), amount.figure());
            }
            String shown = draft.numbers().printed(amount.figure());
            return amount.measured() ? List.of(new Text.Quantity(shown)) : Text.words(shown);
        } else if (referent instanceof Referent.Bottle bottle) {
            return labels.label(bottle.block());
        } else if (referent instanceof Referent.Equation equation) {
            return equation.block().equation().<List<Text>>map(e -> List.of(draft.equation(e, equation.block())))
                    .orElse(List.of());
        } else if (referent instanceof Referent.Chemical chemical) {
            return List.of(draft.formula(chemical.formula()));
        } else if (referent instanceof Referent.Blank blank) {
            return blanks(blank, head);
        } else if (referent instanceof Referent.Working working) {
            return draft.keeps(working.figure()) ? filling.hidden(reference.text(), working.figure())
                    : workings.inline(working.figure());
        } else if (referent instanceof Referent.Plain plain) {
            return Text.words(plain.text());
        }
        return Text.words("{" + reference.text() + "}");
    }

    /**
     * A reading that is taken several times: all of its spaces where it stands once, the next one where it stands several
     * times.
     */
    private List<Text> blanks(Referent.Blank blank, String head) {
        int at = seen.merge(blank.what(), 1, Integer::sum) - 1;
        int last = blank.expected().size() - 1;
        if (standsOnce(blank)) {
            return Typeset.joined(each(blank, head), "  ");
        }
        return filling.blank(blank.what(), blank.expected().get(Math.min(at, last)), head);
    }

    /** Whether the text has one place only for a reading. */
    boolean standsOnce(Referent.Blank blank) {
        return times.getOrDefault(blank.what(), 1) == 1;
    }

    /** One space for each time that it is read. */
    List<List<Text>> each(Referent.Blank blank, String head) {
        return blank.expected().stream().map(e -> filling.blank(blank.what(), e, head)).toList();
    }
}
