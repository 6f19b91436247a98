package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.declare.Notes.CautionBlock;
import tarewright.procedure.resolve.Questions;
import tarewright.procedure.resolve.Referent;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.Part;
import tarewright.procedure.syntax.PictureFile;
import tarewright.procedure.syntax.TypedBlock;

/**
 * The author's Markdown as pieces of a page. A caution that stands before a step, or anywhere in it, goes before the words of
 * that step, so that it is read first.
 */
final class BodyWalk {
    private static final int TOP = 2;
    private static final int DEEPEST = 4;

    private final Draft draft;
    private final Filling filling;
    private final WasteWords waste;
    private final RunningText text;
    private final BodyTable tables;
    private final Map<TypedBlock, String> numbers;
    private final boolean ownHeadings;
    /** The level that the author gives to the widest of her headings, whether she counts the title or not. */
    private final int topmost;
    private int lastLevel = TOP - 1;
    /** The heading put before the first steps; the one instance. */
    private Piece namedSteps;
    private boolean questionsNamed;
    private int depth;

    /** For a document that shows no waste blocks, or none that waits in a jar. */
    BodyWalk(Draft draft, Filling filling) {
        this(draft, filling, new Disposal(List.of()));
    }

    BodyWalk(Draft draft, Filling filling, Disposal disposal) {
        this.draft = draft;
        this.waste = new WasteWords(draft, disposal);
        this.filling = filling;
        this.text = new RunningText(draft, filling);
        this.tables = new BodyTable(draft, text);
        List<Part> body = draft.procedure().procedure().source().body();
        this.numbers = Questions.numbers(body);
        this.topmost = body.stream().flatMap(p -> p instanceof Part.Heading h ? Stream.of(h.level()) : Stream.empty())
                .min(Integer::compare).orElse(1);
        this.ownHeadings = body.stream().anyMatch(Part.Heading.class::isInstance);
    }

    /**
     * The whole body. Where the author wrote no heading at all, the steps and the questions get one each; so does text before
     * the first heading.
     */
    List<Piece> body() {
        List<Piece> pieces = walk(draft.procedure().procedure().source().body());
        if (!pieces.isEmpty() && !(pieces.get(0) instanceof Piece.Heading)) {
            pieces.add(0, draft.heading(TOP, ownHeadings ? "heading.introduction" : "heading.steps"));
            pieces.removeIf(p -> p == namedSteps);
        }
        return pieces;
    }

    /** The Markdown inside a block. */
    List<Piece> inside(TypedBlock block) {
        return walk(block.markdown());
    }

    private List<Piece> walk(List<Part> parts) {
        depth++;
        List<Piece> pieces = new ArrayList<>();
        List<Piece> cautions = new ArrayList<>();
        for (Part part : parts) {
            if (part instanceof TypedBlock block && block.type().equals("caution")) {
                caution(block).ifPresent(cautions::add);
            } else if (part instanceof Part.Items list && list.ordered()) {
                ordered(list, cautions, pieces);
            } else {
                List<Piece> own = piece(part);
                if (!own.isEmpty()) {
                    pieces.addAll(cautions);
                    cautions.clear();
                    pieces.addAll(own);
                }
            }
        }
        pieces.addAll(cautions);
        depth--;
        return pieces;
    }

    private List<Piece> piece(Part part) {
        if (part instanceof Part.Heading heading) {
            lastLevel = Math.min(Math.min(Math.max(heading.level() - topmost + TOP, TOP), lastLevel + 1), DEEPEST);
            return List.of(new Piece.Heading(lastLevel, text.of(heading.inlines(), "")));
        } else if (part instanceof Part.Paragraph paragraph) {
            return paragraph(paragraph);
        } else if (part instanceof Part.Items list) {
            return List.of(new Piece.Bullets(list.items().stream().map(i -> walk(i.parts())).toList()));
        } else if (part instanceof Part.Table table) {
            return List.of(tables.of(table));
        } else if (part instanceof Part.Quote quote) {
            return List.of(new Piece.Note("", walk(quote.parts())));
        } else if (part instanceof Part.Literal literal) {
            return List.of(literal(literal));
        } else if (part instanceof TypedBlock block) {
            return typed(block);
        }
        return List.of();
    }

    /** A picture stands on lines of its own, with the words before and after it above and below. */
    private List<Piece> paragraph(Part.Paragraph paragraph) {
        List<Piece> pieces = new ArrayList<>();
        List<Inline> words = new ArrayList<>();
        for (Inline inline : paragraph.inlines()) {
            Optional<Piece> picture = inline instanceof Inline.Picture p ? picture(p) : Optional.empty();
            if (picture.isPresent()) {
                words(words, paragraph, pieces);
                words.clear();
                pieces.add(picture.get());
            } else {
                words.add(inline);
            }
        }
        words(words, paragraph, pieces);
        return pieces;
    }

    private void words(List<Inline> words, Part.Paragraph paragraph, List<Piece> into) {
        List<Text> set = words.stream().allMatch(i -> i instanceof Inline.Words w && w.text().isBlank()) ? List.of() : text.of(words, "");
        if (!set.isEmpty()) {
            into.add(isEquation(paragraph) ? new Piece.Display(set) : new Piece.Paragraph(set));
        }
    }

    /** Empty where the file was not read: its description stands in for it then. */
    private Optional<Piece> picture(Inline.Picture picture) {
        return draft.procedure().procedure().source().file(picture).map(file -> {
            String spoken = Plain.of(text.of(picture.inside(), ""));
            return file instanceof PictureFile.Dots dots ? new Piece.Photograph(dots.png(), spoken, dots.widthMillimetres(), dots.heightMillimetres())
                    : new Piece.Drawing(((PictureFile.Shapes) file).svg(), spoken, file.widthMillimetres(), file.heightMillimetres());
        });
    }

    private boolean isEquation(Part.Paragraph paragraph) {
        List<Inline> words = paragraph.inlines().stream().filter(i -> !(i instanceof Inline.Words w && w.text().isBlank()))
                .toList();
        return words.size() == 1 && words.get(0) instanceof Inline.Reference reference
                && draft.procedure().referent(reference) instanceof Referent.Equation;
    }

    private Piece literal(Part.Literal literal) {
        List<Text> lines = new ArrayList<>();
        for (String line : literal.text().stripTrailing().split("\n", -1)) {
            if (!lines.isEmpty()) {
                lines.add(new Text.Break());
            }
            lines.add(new Text.Code(draft.prose().veiled(line)));
        }
        return new Piece.Paragraph(lines);
    }

    private List<Piece> typed(TypedBlock block) {
        if (block.type().equals("waste")) {
            return waste.of(block);
        }
        if (block.type().equals("graph")) {
            return draft.procedure().graph(block).<List<Piece>>map(g -> List.of(new Graphing(draft).of(g, filling.plots())))
                    .orElse(List.of());
        }
        if (!block.markdown().isEmpty() && filling.shows(block)) {
            return List.of(new Piece.Note(draft.say("note." + block.type()), walk(block.markdown())));
        }
        return List.of();
    }

    // --- cautions, steps and questions

    private Optional<Piece> caution(TypedBlock block) {
        Optional<CautionBlock> declared = draft.procedure().procedure().cautions().stream().filter(c -> c.block() == block)
                .findFirst();
        return declared.map(c -> caution(draft, c));
    }

    static Piece.Caution caution(Draft draft, CautionBlock caution) {
        String word = draft.say("caution." + caution.severity().name().toLowerCase(Locale.ROOT));
        return new Piece.Caution(word, caution.severity().ordinal(), draft.prose().of(caution.hazard()),
                draft.prose().of(caution.consequence()), draft.prose().of(caution.avoid()));
    }

    /**
     * Runs of steps and questions, in their order. Cautions that wait go to the next step; before a question they stand by
     * themselves.
     */
    private void ordered(Part.Items list, List<Piece> cautions, List<Piece> into) {
        List<List<Piece>> steps = new ArrayList<>();
        int number = list.start();
        for (Part.Item item : list.items()) {
            if (item.isQuestion()) {
                endSteps(number, steps, into);
                into.addAll(cautions);
                name(into, true);
                into.add(question(item));
            } else {
                List<Piece> step = new ArrayList<>(cautions);
                step.addAll(step(item));
                steps.add(step);
            }
            cautions.clear();
            number++;
        }
        endSteps(number, steps, into);
    }

    private void endSteps(int next, List<List<Piece>> steps, List<Piece> into) {
        if (!steps.isEmpty()) {
            name(into, false);
            into.add(new Piece.Steps(next - steps.size(), steps));
            steps.clear();
        }
    }

    private void name(List<Piece> into, boolean questions) {
        if (depth > 1 || ownHeadings || (questions ? questionsNamed : namedSteps != null)) {
            return;
        }
        Piece heading = draft.heading(TOP, questions ? "heading.questions" : "heading.steps");
        into.add(heading);
        if (questions) {
            questionsNamed = true;
        } else {
            namedSteps = heading;
        }
    }

    private List<Piece> step(Part.Item item) {
        List<Part> first = item.parts().stream().filter(BodyWalk::isCaution).toList();
        List<Part> rest = item.parts().stream().filter(p -> !isCaution(p)).toList();
        List<Piece> pieces = new ArrayList<>(walk(first));
        pieces.addAll(walk(rest));
        return pieces;
    }

    private static boolean isCaution(Part part) {
        return part instanceof TypedBlock block && block.type().equals("caution");
    }

    private Piece.Question question(Part.Item item) {
        List<Part> asked = new ArrayList<>();
        List<Piece.Question> parts = new ArrayList<>();
        String number = number(item);
        int letter = 0;
        for (Part part : item.parts()) {
            if (part instanceof Part.Items list) {
                boolean lettered = list.items().stream().anyMatch(Part.Item::isQuestion);
                for (Part.Item each : list.items()) {
                    String full = draft.say("question.part", "number", number, "letter", Questions.letter(letter++));
                    if (lettered) {
                        parts.add(single(each, each.parts(), full, List.of()));
                    }
                }
                if (!lettered) {
                    asked.add(list);
                }
            } else {
                asked.add(part);
            }
        }
        return single(item, asked, number, parts);
    }

    private Piece.Question single(Part.Item item, List<Part> parts, String number, List<Piece.Question> inner) {
        List<AnswerBlock> answers = item.answers().stream().flatMap(a -> draft.procedure().declared(a).stream()).toList();
        int marks = answers.stream().mapToInt(a -> a.marks().orElse(0)).sum();
        String shown = marks == 0 ? "" : draft.say(marks == 1 ? "marks.one" : "marks.many", "marks", marks);
        List<Piece> space = answers.stream().flatMap(a -> filling.space(a).stream()).toList();
        List<Part> asked = parts.stream().filter(p -> !(p instanceof TypedBlock block && block.type().equals("answer"))).toList();
        return new Piece.Question(number, shown, walk(asked), space, inner);
    }

    private String number(Part.Item item) {
        List<String> found = new ArrayList<>();
        Part.walk(item.parts(), part -> {
            if (part instanceof TypedBlock block && numbers.containsKey(block)) {
                found.add(numbers.get(block).replaceAll("[^0-9]", ""));
            }
        });
        return found.isEmpty() ? "" : found.get(0);
    }
}
