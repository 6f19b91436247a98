package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import tarewright.finding.Finding;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Procedure;
import tarewright.procedure.declare.ReadingBlock;
import tarewright.procedure.declare.ValueBlock;
import tarewright.procedure.expression.Expression;
import tarewright.procedure.resolve.VersionFinding.Where;
import tarewright.procedure.syntax.Part;
import tarewright.setting.Setting;
import tarewright.tables.ReferenceTables;
import tarewright.text.Span;

/**
 * Makes of one procedure one for each version of its questions' numbers. Only values differ that questions alone use: steps, readings, notes for preparation, and
 * so amounts, hazards and totals, are the same.
 */
final class Versions {
    private final Procedure procedure;
    private final Varied varied;
    private final Consumer<Finding> findings;

    private Versions(Procedure procedure, ReferenceTables tables, Consumer<Finding> findings) {
        this.procedure = procedure;
        this.varied = Varied.of(procedure, tables);
        this.findings = findings;
    }

    /** As many as are asked for; the procedure alone where one is, or where nothing can differ. */
    static List<Procedure> of(Procedure procedure, Setting setting, ReferenceTables tables, Consumer<Finding> findings) {
        List<ValueBlock> typed = procedure.values().stream().filter(v -> !v.versions().isEmpty()).toList();
        if (typed.isEmpty() && setting.versions() == 1) {
            return List.of(procedure);
        }
        Versions all = new Versions(procedure, tables, findings);
        typed.forEach(all::check);
        return setting.versions() == 1 ? List.of(procedure) : all.asMany(setting.versions(), typed);
    }

    private List<Procedure> asMany(int wanted, List<ValueBlock> typed) {
        List<ValueBlock> few = typed.stream().filter(v -> v.versions().size() < wanted).toList();
        few.forEach(v -> findings.accept(new VersionFinding.Few(v.name(), v.versions().size(), wanted, field(v))));
        if (!few.isEmpty()) {
            return List.of(procedure);
        }
        if (typed.isEmpty()) {
            findings.accept(new VersionFinding.NothingToVary(candidates(), procedure.front().title().map(At::at)
                    .orElseGet(() -> procedure.source().text().span(0, 0))));
            return List.of(procedure);
        }
        List<Procedure> all = new ArrayList<>();
        for (int i = 0; i < wanted; i++) {
            int which = i;
            all.add(procedure.withValues(procedure.values().stream().map(v -> v.versions().isEmpty() ? v : v.being(v.versions().get(which))).toList()));
        }
        return all;
    }

    private static Span field(ValueBlock value) {
        return value.block().fields().get("versions").orElseThrow().valueSpan();
    }

    /** Values typed once that some question shows. */
    private List<String> candidates() {
        return procedure.values().stream().filter(v -> v.is().filter(is -> is.value() instanceof Expression.Quantity).isPresent())
                .map(ValueBlock::name).filter(n -> varied.of(n).stream().anyMatch(s -> s.place() == Varied.Place.QUESTION)).toList();
    }

    /** What is done at the bench is one for all; what an answer is worked from, its student must read. */
    private void check(ValueBlock value) {
        for (Varied.Shown shown : varied.of(value.name())) {
            if (shown.place() == Varied.Place.STEP || shown.place() == Varied.Place.PREP) {
                findings.accept(new VersionFinding.AtTheBench(value.name(), shown.place() == Varied.Place.STEP ? Where.STEP : Where.PREP_NOTE,
                        shown.reference().span()));
            }
        }
        for (ReadingBlock reading : procedure.readings()) {
            reading.expect().filter(e -> varied.reached(e.value()).contains(value.name()))
                    .ifPresent(e -> findings.accept(new VersionFinding.AtTheBench(value.name(), Where.READING, e.at())));
        }
        Optional<AnswerBlock> from = procedure.answers().stream().filter(a -> a.sought() instanceof AnswerBlock.Worked worked
                && varied.reached(worked.formula().value()).contains(value.name())).findFirst();
        if (from.isEmpty()) {
            unused(value);
        } else if (!varied.shown().contains(value.name())) {
            AnswerBlock.Worked worked = (AnswerBlock.Worked) from.get().sought();
            String question = Questions.numbers(procedure.source().body()).getOrDefault(from.get().block(), "");
            findings.accept(new VersionFinding.NotShown(value.name(), question, worked.formula().at()));
        }
    }

    /** Students of two versions would read two numbers, and their answers be marked by one. */
    private void unused(ValueBlock value) {
        for (Varied.Shown shown : varied.of(value.name())) {
            if (!shown.blank() && shown.question().filter(this::asksForAFigure).isPresent()) {
                findings.accept(new VersionFinding.NotUsed(value.name(), shown.reference().span()));
                return;
            }
        }
    }

    private boolean asksForAFigure(Part.Item question) {
        List<Part> inside = new ArrayList<>();
        Part.walk(question.parts(), inside::add);
        return procedure.answers().stream().anyMatch(a -> a.sought() instanceof AnswerBlock.Worked && inside.stream().anyMatch(p -> p == a.block()));
    }
}
