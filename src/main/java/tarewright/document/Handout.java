package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.declare.ReactionBlock;
import tarewright.procedure.resolve.Referent;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.Part;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.safety.Rulebook;
import tarewright.wording.Numbers;

/** The student's sheet. Nothing of the answers, of what is expected and of what is to be found stands in it. */
final class Handout implements Filling {
    private static final int BLANK = 10;
    private static final int MOST_LINES_FOR_VALUE = 3;
    private static final int LINES_FOR_MARK = 2;

    private final Draft draft;
    private final Rulebook rules;
    private final Disposal disposal;
    private final Optional<Filling> filled;

    Handout(Draft draft, Rulebook rules, Disposal disposal) {
        this(draft, rules, disposal, Optional.empty());
    }

    private Handout(Draft draft, Rulebook rules, Disposal disposal, Optional<Filling> filled) {
        this.draft = draft;
        this.rules = rules;
        this.disposal = disposal;
        this.filled = filled;
    }

    /** The same sheet with its spaces filled in another way: all else on it is the student's, line by line. */
    static Handout filledIn(Draft draft, Rulebook rules, Disposal disposal, Filling filling) {
        return new Handout(draft, rules, disposal, Optional.of(filling));
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece.FormLine(List.of(new Piece.FormField(draft.say("form.name"), 4),
                new Piece.FormField(draft.say("form.group"), 2),
                new Piece.FormField(draft.say("form.date"), 2))));
        pieces.addAll(aims(draft));
        pieces.addAll(reactions(draft));
        pieces.addAll(SmallPanel.pieces(draft, rules));
        pieces.addAll(new Needs(draft).pieces());
        pieces.addAll(new BodyWalk(draft, filled.orElse(this), disposal).body());
        return pieces;
    }

    static List<Piece> aims(Draft draft) {
        List<List<Piece>> aims = draft.procedure().procedure().front().aims().stream()
                .map(a -> List.<Piece>of(new Piece.Paragraph(draft.prose().of(a.text())))).toList();
        return aims.isEmpty() ? List.of() : List.of(draft.heading(2, "heading.aims"), new Piece.Bullets(aims));
    }

    /** The balanced equations that the author's own text does not show by themselves. */
    static List<Piece> reactions(Draft draft) {
        Set<ReactionBlock> displayed = new LinkedHashSet<>();
        Part.walk(draft.procedure().procedure().source().body(), part -> {
            if (part instanceof Part.Paragraph paragraph && paragraph.inlines().size() == 1
                    && paragraph.inlines().get(0) instanceof Inline.Reference r
                    && draft.procedure().referent(r) instanceof Referent.Equation equation) {
                displayed.add(equation.block());
            }
        });
        List<Piece> equations = draft.procedure().reactions().stream().map(ResolvedReaction::block)
                .filter(r -> r.equation().isPresent() && !displayed.contains(r))
                .<Piece>map(r -> new Piece.Display(List.of(draft.equation(r.equation().get(), r)))).toList();
        if (equations.isEmpty()) {
            return List.of();
        }
        String heading = equations.size() == 1 ? "heading.reaction" : "heading.reactions";
        List<Piece> pieces = new ArrayList<>(List.of(draft.heading(2, heading)));
        pieces.addAll(equations);
        return pieces;
    }

    // --- spaces to fill

    /** With its unit behind it, as the key has it, unless the head of its column or row names one. */
    @Override
    public List<Text> blank(String what, Figure expected, String head) {
        Text.Blank blank = new Text.Blank(BLANK, draft.say("blank.for", "what", what));
        String unit = HeadUnit.of(head).filter(u -> u.dimension().equals(expected.dimension())).isPresent() ? ""
                : draft.numbers().symbol(expected.unit().symbol());
        return unit.isEmpty() ? List.of(blank) : List.of(blank, new Text.Words('\u00A0' + unit.replace(' ', Numbers.NARROW_SPACE)));
    }

    @Override
    public List<Text> hidden(String what, Figure figure) {
        return List.of(new Text.Blank(BLANK, draft.say("blank.to-find", "what", what)));
    }

    @Override
    public List<Piece> space(AnswerBlock answer) {
        if (answer.sought() instanceof AnswerBlock.Choice choice) {
            return List.of(new Piece.Choices(Options.set(draft, Options.printed(choice.options())),
                    Optional.empty()));
        }
        int lines = lines(answer);
        return lines == 0 ? List.of() : List.of(new Piece.RuledLines(lines, draft.say("lines.for-answer")));
    }

    /**
     * The author's number of lines; else a line for each step of a calculation that earns a mark, two for each mark of an
     * answer in words.
     */
    static int lines(AnswerBlock answer) {
        int marks = Math.max(1, answer.marks().orElse(1));
        int usual = answer.sought() instanceof AnswerBlock.InWords ? LINES_FOR_MARK * marks
                : Math.min(Math.max(2, marks), MOST_LINES_FOR_VALUE);
        return answer.lines().orElse(usual);
    }

    @Override
    public boolean plots() {
        return false;
    }

    @Override
    public boolean shows(TypedBlock block) {
        return false;
    }
}
