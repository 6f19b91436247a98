package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.finding.Severity;
import tarewright.procedure.check.Checks;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.procedure.syntax.SourceFile;
import tarewright.setting.Overrides;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** The door through which a user's file comes in: text is read, resolved and checked. */
final class Door {
    static final ReferenceTables TABLES = Tables.load();

    private Door() {
    }

    /**
     * What came of a text.
     *
     * @param findings of reading, resolving and checking, each once, in the order of the text
     */
    record Outcome(Resolved resolved, List<Finding> findings) {
        List<Finding> errors() {
            return findings.stream().filter(f -> f.severity() == Severity.ERROR).toList();
        }

        List<String> ids(Severity severity) {
            return findings.stream().filter(f -> f.severity() == severity).map(Finding::id).toList();
        }

        /** The same, if nothing in it forbids printing. */
        Outcome sound() {
            assertEquals(List.of(), errors().stream().map(f -> f.id() + " at " + f.at() + ": " + f.fields()).toList());
            return this;
        }

        /** The value of the only answer, worked from what the students read off. */
        Figure answer() {
            assertEquals(1, resolved.answers().size());
            return answer(0);
        }

        Figure answer(int index) {
            return resolved.answers().get(index).value().orElseThrow(() -> new AssertionError("no answer: " + findings));
        }

        ResolvedQuantity block(String name) {
            return resolved.quantity(name).orElseThrow(() -> new AssertionError("no block " + name));
        }

        Figure figure(String name, Property property) {
            return block(name).figure(property)
                    .orElseThrow(() -> new AssertionError("no " + property + " of " + name + ": " + findings));
        }

        /** A figure's value in its own unit, as the page would have it before rounding. */
        double shown(String name, Property property) {
            return figure(name, property).shownValue();
        }
    }

    static Outcome open(String markdown) {
        return open(markdown, Overrides.NONE);
    }

    static Outcome open(String markdown, Overrides overrides) {
        Found<SourceFile> source = Reader.read(new SourceText("case.md", markdown));
        LinkedHashSet<Finding> findings = new LinkedHashSet<>(source.findings());
        Found<Resolved> resolved = Resolver.resolve("case", source.value(), overrides, TABLES);
        findings.addAll(resolved.findings());
        findings.addAll(Checks.run(resolved.value()));
        List<Finding> inOrder = new ArrayList<>(findings);
        inOrder.sort(Comparator.comparingInt(f -> f.at().start()));
        return new Outcome(resolved.value(), inOrder);
    }
}
