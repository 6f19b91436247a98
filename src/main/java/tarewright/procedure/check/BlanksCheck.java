package tarewright.procedure.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import tarewright.finding.Finding;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.declare.ReadingBlock;
import tarewright.procedure.resolve.Referent;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.Part;

/**
 * A reading that nothing on the page asks for, and places to write in where no step says to read, weigh or write down
 * anything (English verbs only).
 */
final class BlanksCheck implements Check {
    private static final Pattern READS = Pattern.compile(
            "(?iU)\\b((read|write|note|record|weigh|measure|time|count|test|look|titre|level|feel|take|show)s?"
                    + "|lee|l[eé]e(lo|la)|anota|apunta|escribe|registra|pesa|mide|cuenta|cronometra|comprueba|mira|observa|nivel(es)?|gastos?|lectura|toma)\\b");

    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        List<Inline.Reference> blanks = new ArrayList<>();
        Part.walk(procedure.procedure().source().body(), part -> part.inlines().forEach(top -> Inline.walk(top, inline -> {
            if (inline instanceof Inline.Reference reference && isBlank(procedure, reference)) {
                blanks.add(reference);
            }
        })));
        Set<String> used = used(procedure, blanks);
        for (ReadingBlock reading : procedure.procedure().readings()) {
            if (!used.contains(reading.name())) {
                findings.accept(new PageFinding.ReadingNotUsed(reading.name(), reading.block().nameSpan()));
            }
        }
        List<StepText> steps = StepText.of(procedure.procedure().source().body());
        boolean told = steps.stream().anyMatch(s -> READS.matcher(s.words()).find());
        if (!steps.isEmpty() && !told) {
            blanks.stream().findFirst().ifPresent(b -> findings.accept(new PageFinding.BlankWithoutStep(name(b), b.span())));
        }
    }

    /** A blank whose reading came to nothing, which a finding said, still asks for it. */
    private static boolean isBlank(Resolved procedure, Inline.Reference reference) {
        return reference.text().startsWith("blank ") || procedure.referent(reference) instanceof Referent.Blank;
    }

    private static String name(Inline.Reference blank) {
        return blank.text().replaceFirst("^blank\\s+", "");
    }

    /** By name. A formula names what it uses in its own text. */
    private static Set<String> used(Resolved procedure, List<Inline.Reference> blanks) {
        Set<String> used = new HashSet<>();
        blanks.forEach(b -> used.add(name(b)));
        procedure.procedure().readings().forEach(r -> r.difference().ifPresent(d -> {
            used.add(d.first().value());
            used.add(d.second().value());
        }));
        List<String> said = new ArrayList<>();
        procedure.procedure().answers().stream().filter(a -> a.sought() instanceof AnswerBlock.Worked)
                .forEach(a -> said.add(a.block().span().text()));
        procedure.procedure().values().forEach(v -> said.add(v.block().span().text()));
        procedure.procedure().graphs().forEach(g -> said.add(g.block().span().text()));
        for (ReadingBlock reading : procedure.procedure().readings()) {
            Pattern name = Pattern.compile("(?<![\\p{L}\\d])" + Pattern.quote(reading.name()) + "(?![\\p{L}\\d])");
            boolean asked = said.stream().anyMatch(s -> name.matcher(s).find())
                    || reading.of().filter(of -> said.stream().anyMatch(s -> s.contains(of.value()))).isPresent();
            if (asked) {
                used.add(reading.name());
            }
        }
        return used;
    }
}
