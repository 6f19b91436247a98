package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.finding.Finding;
import tarewright.procedure.bench.OwnSolutions;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Notes.TrialBlock;
import tarewright.procedure.declare.QuantityBlock.Role;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.safety.Rulebook;
import tarewright.procedure.syntax.Fields;
import tarewright.wording.FindingWords;

/** The teacher's key: what to expect, how each amount was found, the sheet filled in, what came out when it was tried. */
final class Key {
    private final Draft draft;
    private final Lettered versions;
    private final Function<Draft, List<Piece>> leaf;
    private final List<Finding> warnings;
    private final Rulebook rules;

    /** @param versions of the questions' numbers, this draft's the first. @param leaf makes the student's sheet, filled in */
    Key(Draft draft, Lettered versions, Function<Draft, List<Piece>> leaf, List<Finding> warnings, Rulebook rules) {
        this.draft = draft;
        this.versions = versions;
        this.leaf = leaf;
        this.rules = rules;
        this.warnings = List.copyOf(warnings);
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>(expected());
        for (Lettered.Part version : versions.parts()) {
            pieces.addAll(filledIn(version, List.of()));
            pieces.addAll(answers(version));
        }
        pieces.addAll(trials());
        pieces.addAll(warnings());
        return pieces;
    }

    /** All of it but the sheet filled in. */
    List<Piece> account() {
        List<Piece> pieces = new ArrayList<>(expected());
        versions.parts().forEach(version -> pieces.addAll(answers(version)));
        pieces.addAll(trials());
        pieces.addAll(warnings());
        return pieces;
    }

    private List<Piece> expected() {
        List<Piece> pieces = new ArrayList<>(versions.sideBySide());
        pieces.addAll(SmallPanel.pieces(draft, rules));
        pieces.addAll(new Overview(draft).pieces());
        pieces.addAll(workings());
        pieces.addAll(values());
        pieces.addAll(new Curves(draft).pieces());
        return pieces;
    }

    /**
     * The key of another hand of the class, where that of the first stands before it: what is not already said there.
     * What differs in safety is said again; nothing that differs is left out.
     */
    List<Piece> after(Key first) {
        List<Piece> pieces = new ArrayList<>(versions.sideBySide());
        List<Piece> safety = SmallPanel.pieces(draft, rules);
        if (!safety.equals(SmallPanel.pieces(first.draft, first.rules))) {
            pieces.addAll(safety);
        }
        pieces.addAll(new Overview(draft).outcome());
        pieces.addAll(Repeats.in(workings(), first.workings()));
        List<Piece> values = values();
        if (!values.equals(first.values())) {
            pieces.addAll(values);
        }
        for (int i = 0; i < versions.parts().size(); i++) {
            Lettered.Part version = versions.parts().get(i);
            pieces.addAll(i == 0 ? answersUnlike(version, first.worked(first.versions.parts().get(0)), "hands.same-answer.") : answers(version));
        }
        return pieces;
    }

    /** The answers of a version that are not told before; which are is said. @param said what to say of those */
    private List<Piece> answersUnlike(Lettered.Part version, List<Piece> before, String said) {
        Draft its = version.draft();
        List<Piece> pieces = new ArrayList<>();
        List<String> same = new ArrayList<>();
        for (Piece piece : worked(version)) {
            if (!before.contains(piece)) {
                pieces.add(piece);
            } else if (piece instanceof Piece.Question question) {
                same.add(question.number());
            }
        }
        if (!pieces.isEmpty() || !same.isEmpty()) {
            pieces.add(0, heading(version));
        }
        if (!same.isEmpty()) {
            pieces.add(its.paragraph(said + (same.size() == 1 ? "one" : "many"), "numbers", String.join(", ", same)));
        }
        return pieces;
    }

    /** The worked lines of every amount that was worked out. */
    private List<Piece> workings() {
        Workings workings = new Workings(draft);
        Labels labels = new Labels(draft);
        List<Piece> pieces = new ArrayList<>();
        List<ResolvedQuantity> takenFirst = Stream.of(true, false)
                .flatMap(taken -> draft.procedure().quantities().stream().filter(q -> q.taken() == taken)).toList();
        for (ResolvedQuantity quantity : takenFirst) {
            List<Piece.WorkedLine> lines = worked(quantity).filter(f -> !f.from().isEmpty())
                    .flatMap(f -> workings.fresh(f).stream()).toList();
            if (!lines.isEmpty()) {
                pieces.add(new Piece.Together(List.of(new Piece.Heading(3, labels.label(quantity.block())),
                        new Piece.Working(lines))));
            }
        }
        draft.procedure().values().forEach((name, figure) -> {
            if (!versions.differing().contains(name)) {
                pieces.addAll(worked(draft, workings, name, figure));
            }
        });
        if (!pieces.isEmpty()) {
            pieces.add(0, draft.heading(2, "heading.workings"));
        }
        return pieces;
    }

    private static List<Piece> worked(Draft draft, Workings workings, String name, Figure figure) {
        List<Piece.WorkedLine> lines = figure.from().isEmpty() ? List.of() : workings.fresh(figure);
        return lines.isEmpty() ? List.of()
                : List.of(new Piece.Together(List.of(new Piece.Heading(3, draft.prose().of(name)), new Piece.Working(lines))));
    }

    /** The figures of a quantity that are worth a line: not how far it is in excess where it just suffices. */
    private Stream<Figure> worked(ResolvedQuantity quantity) {
        boolean limits = draft.procedure().reactions().stream().flatMap(r -> r.pots().stream())
                .anyMatch(p -> p.limiting().contains(quantity.name()) || Overview.isJustEnough(p));
        if (quantity.block().role() != Role.REACTS) {
            return quantity.figure(Property.CLASS_TOTAL).stream();
        }
        Property gas = quantity.figure(Property.MOIST).isPresent() ? Property.DRY : quantity.measuredOut();
        return Stream.of(Property.STRENGTH, Property.LENGTH, quantity.measuredOut(), gas, Property.MOLES, Property.MOST,
                Property.YIELD, Property.TAKEN, Property.EXCESS,
                quantity.figure(Property.CLASS_LENGTH).isPresent() ? Property.CLASS_LENGTH : Property.CLASS_TOTAL).distinct()
                .filter(p -> !(limits && p == Property.EXCESS))
                .filter(p -> p != Property.CLASS_TOTAL || !OwnSolutions.holds(draft.procedure(), quantity.block()))
                .flatMap(p -> quantity.figure(p).stream());
    }

    private List<Piece> values() {
        TableValues values = new TableValues(draft);
        draft.procedure().quantities().forEach(q -> worked(q).filter(f -> !(f.step() instanceof Step.Given))
                .forEach(values::behind));
        draft.procedure().answers().forEach(a -> a.value().ifPresent(values::behind));
        return values.pieces();
    }

    /** The student's sheet of each version filled in, page for page. @param above what stands above the student's sheet too */
    List<Piece> filledIn(List<Piece> above) {
        return versions.parts().stream().flatMap(v -> filledIn(v, above).stream()).toList();
    }

    private List<Piece> filledIn(Lettered.Part version, List<Piece> above) {
        Draft its = version.draft();
        if (body(its).isEmpty()) {
            return List.of();
        }
        String title = its.procedure().procedure().front().title().map(At::value).orElse(its.procedure().name());
        String named = Documents.titled(title, version.letter(), its.procedure().setting().language());
        return List.of(new Piece.Leaf(its.say("leaf.filled-in"), its.procedure().procedure().front().code(),
                new Piece.Heading(2, Text.words(named)), Stream.concat(above.stream(), leaf.apply(its).stream()).toList()));
    }

    /** Every answer of the first version worked out; of another one those that are not the same. */
    private List<Piece> answers(Lettered.Part version) {
        if (version != versions.parts().get(0)) {
            return answersUnlike(version, worked(versions.parts().get(0)), "version.same-answer.");
        }
        List<Piece> pieces = new ArrayList<>(worked(version));
        if (!pieces.isEmpty()) {
            int marks = draft.procedure().procedure().answers().stream().mapToInt(a -> a.marks().orElse(0)).sum();
            if (marks > 0) {
                pieces.add(0, draft.paragraph("answers.total", "marks", marks));
            }
            pieces.add(0, heading(version));
        }
        return pieces;
    }

    private static Piece heading(Lettered.Part version) {
        return version.letter().isEmpty() ? version.draft().heading(2, "heading.answers")
                : new Piece.Heading(2, Text.words(version.draft().say("heading.answers-of", "letter", version.letter())));
    }

    private List<Piece> worked(Lettered.Part version) {
        Draft its = version.draft();
        Workings workings = new Workings(its);
        List<Piece> all = new ArrayList<>();
        versions.differing().forEach(name -> all.addAll(worked(its, workings, name, its.procedure().values().get(name))));
        all.addAll(worked(its, body(its)));
        return all;
    }

    private static List<Piece> body(Draft its) {
        return new BodyWalk(its, new KeyAnswer(its)).body();
    }

    /** The questions with their answers, and the notes that only a teacher reads, wherever they stand. */
    static List<Piece> worked(Draft draft, List<Piece> body) {
        List<Piece> found = new ArrayList<>();
        for (Piece piece : body) {
            if (piece instanceof Piece.Question || piece instanceof Piece.Note note
                    && note.label().equals(draft.say("note.key"))) {
                found.add(piece);
            } else if (piece instanceof Piece.Steps steps) {
                steps.steps().forEach(step -> found.addAll(worked(draft, step)));
            } else if (piece instanceof Piece.Bullets bullets) {
                bullets.items().forEach(item -> found.addAll(worked(draft, item)));
            } else if (piece instanceof Piece.Note note) {
                found.addAll(worked(draft, note.inside()));
            }
        }
        return found;
    }

    // --- trials

    private List<Piece> trials() {
        Grid grid = new Grid(draft, "").words("trial.of").numbers("trial.expected", "trial.gave").words("trial.on");
        for (TrialBlock trial : draft.procedure().procedure().trials()) {
            grid.row(draft.prose().of(trial.of().map(At::value).orElse("")), expected(trial),
                    draft.prose().of(field(trial, "gave")), Text.words(trial.on().map(At::value).orElse("")));
        }
        return grid.under(2, "heading.trials");
    }

    private static String field(TrialBlock trial, String key) {
        return trial.block().fields().get(key).map(Fields.Field::value).orElse("");
    }

    /** What was expected of a reading, a value or a figure of a quantity. */
    private List<Text> expected(TrialBlock trial) {
        String of = trial.of().map(At::value).orElse("");
        Optional<Figure> reading = draft.procedure().reading(of).map(r -> r.value());
        Optional<Figure> figure = reading.or(() -> Optional.ofNullable(draft.procedure().values().get(of)))
                .or(() -> draft.procedure().quantity(of).flatMap(ResolvedQuantity::amount)).or(() -> property(of))
                .or(() -> draft.procedure().answers().stream().filter(a -> a.number().equals(of)).flatMap(a -> a.value().stream())
                        .findFirst());
        return figure.map(f -> Text.words(draft.numbers().printed(f))).orElse(List.of());
    }

    private Optional<Figure> property(String of) {
        for (Property property : Property.values()) {
            String before = property.words() + " of ";
            if (of.startsWith(before)) {
                return draft.procedure().quantity(of.substring(before.length())).flatMap(q -> q.figure(property));
            }
        }
        return Optional.empty();
    }

    // --- warnings

    private List<Piece> warnings() {
        if (warnings.isEmpty()) {
            return List.of();
        }
        FindingWords words = FindingWords.in(draft.procedure().setting().language());
        List<List<Piece>> items = warnings.stream().map(w -> List.<Piece>of(new Piece.Paragraph(text(words.words(w))))).toList();
        return List.of(draft.heading(2, "heading.warnings"), new Piece.Bullets(items));
    }

    private List<Text> text(FindingWords.Words said) {
        List<String> sentences = Stream.concat(Stream.of(said.headline() + "."), said.more().stream()).toList();
        return draft.prose().of(String.join(" ", sentences).replace("`", ""));
    }
}
