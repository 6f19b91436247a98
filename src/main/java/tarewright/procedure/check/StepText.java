package tarewright.procedure.check;

import java.util.ArrayList;
import java.util.List;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.Part;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.text.Span;

/**
 * A paragraph of a step. Each reference in it is one letter of the words, so that a place in the words tells which stands there.
 *
 * @param words what is read, with {@link #REFERENCE} for each reference
 * @param references in their order
 * @param typed the pieces of running text, each as the author wrote it
 */
record StepText(String words, List<Inline.Reference> references, List<Inline.Words> typed, Span at) {
    /** A letter of Unicode's private use, which no author writes. */
    static final char REFERENCE = '\uE000';

    StepText {
        references = List.copyOf(references);
        typed = List.copyOf(typed);
    }

    /** The steps of a procedure, in order: not its questions, not the notes for the teacher. */
    static List<StepText> of(List<Part> body) {
        List<StepText> found = new ArrayList<>();
        collect(body, false, found);
        return found;
    }

    private static void collect(List<Part> parts, boolean inStep, List<StepText> found) {
        for (Part part : parts) {
            if (part instanceof Part.Items list) {
                list.items().stream().filter(item -> !item.isQuestion()).forEach(item -> collect(item.parts(), inStep
                        || list.ordered(), found));
            } else if (part instanceof Part.Paragraph paragraph && inStep) {
                found.add(of(paragraph));
            } else if (!(part instanceof TypedBlock)) {
                collect(part.parts(), inStep, found);
            }
        }
    }

    private static StepText of(Part.Paragraph paragraph) {
        StringBuilder words = new StringBuilder();
        List<Inline.Reference> references = new ArrayList<>();
        List<Inline.Words> typed = new ArrayList<>();
        paragraph.inlines().forEach(top -> Inline.walk(top, inline -> {
            if (inline instanceof Inline.Words w) {
                words.append(w.text());
                typed.add(w);
            } else if (inline instanceof Inline.Reference reference) {
                words.append(REFERENCE);
                references.add(reference);
            } else if (inline instanceof Inline.HardBreak) {
                words.append(' ');
            }
        }));
        return new StepText(words.toString(), references, typed, paragraph.span());
    }

    /** The references up to a place in the words. */
    int referencesBefore(int place) {
        return (int) words.substring(0, place).chars().filter(c -> c == REFERENCE).count();
    }
}
