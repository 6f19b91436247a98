package tarewright.procedure.check;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.declare.ValueBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.resolve.Varied;
import tarewright.procedure.resolve.Version;
import tarewright.procedure.syntax.Part;
import tarewright.procedure.syntax.TypedBlock;

/** Where versions of the questions' numbers are printed: whether their answers differ, and what the author wrote once that must hold for all of them. */
final class VersionsCheck {
    private VersionsCheck() {
    }

    static void check(Resolved procedure, Consumer<Finding> findings) {
        if (procedure.versions().isEmpty()) {
            return;
        }
        Varied varied = Varied.of(procedure);
        Set<String> differing = differing(procedure);
        for (ResolvedAnswer answer : procedure.answers()) {
            if (answer.block().sought() instanceof AnswerBlock.Worked worked && varied.reached(worked.formula().value()).stream().anyMatch(differing::contains)) {
                answer.value().ifPresent(v -> worked(procedure, answer, v, findings));
            }
        }
        for (Part.Item question : Varied.questions(procedure.procedure().source().body())) {
            Set<String> shown = new LinkedHashSet<>(varied.shownIn(question));
            shown.retainAll(differing);
            if (!shown.isEmpty()) {
                written(procedure, question, shown.iterator().next(), findings);
            }
        }
    }

    private static Set<String> differing(Resolved procedure) {
        Set<String> names = new LinkedHashSet<>();
        for (ValueBlock value : procedure.procedure().values()) {
            boolean differs = procedure.versions().stream().map(v -> v.resolved().procedure().value(value.name()).orElseThrow().is()).distinct().count() > 1;
            if (differs) {
                names.add(value.name());
            }
        }
        return names;
    }

    /** As printed, an answer of one version is not that of another, and what is asked for has not turned into its opposite. */
    private static void worked(Resolved procedure, ResolvedAnswer answer, Figure plain, Consumer<Finding> findings) {
        List<Version> versions = procedure.versions();
        for (int i = 1; i < versions.size(); i++) {
            Optional<Figure> value = value(versions.get(i), answer);
            for (int k = 0; k < i; k++) {
                Optional<Figure> earlier = value(versions.get(k), answer);
                if (value.isPresent() && earlier.isPresent() && Amount.of(value.get()).equals(Amount.of(earlier.get()))) {
                    findings.accept(new VersionsFinding.SameAnswer(answer.number(), versions.get(k).letter(), versions.get(i).letter(), Amount.of(value.get()),
                            answer.block().block().typeSpan()));
                }
            }
            if (value.isPresent() && Math.signum(value.get().value()) != Math.signum(plain.value())) {
                findings.accept(new VersionsFinding.Turns(answer.number(), versions.get(i).letter(), Amount.of(value.get()), Amount.of(plain),
                        answer.block().block().typeSpan()));
            }
        }
    }

    private static Optional<Figure> value(Version version, ResolvedAnswer answer) {
        return version.resolved().answer(answer.block().block()).flatMap(ResolvedAnswer::value);
    }

    /** Words and choices are one for all versions, and nothing can tell whether they hold for each. */
    private static void written(Resolved procedure, Part.Item question, String value, Consumer<Finding> findings) {
        Part.walk(question.parts(), part -> {
            if (part instanceof TypedBlock block && block.type().equals("answer")) {
                procedure.answer(block).filter(a -> a.block().sought() instanceof AnswerBlock.InWords || a.block().sought() instanceof AnswerBlock.Choice)
                        .ifPresent(a -> findings.accept(new VersionsFinding.InWords(a.number(), value, block.typeSpan())));
            }
        });
    }
}
