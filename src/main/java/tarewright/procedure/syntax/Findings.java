package tarewright.procedure.syntax;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tarewright.finding.Finding;

/** Gathers what one reading finds. */
final class Findings {
    private final List<Finding> all = new ArrayList<>();

    void add(SyntaxFinding finding) {
        all.add(finding);
    }

    boolean hasAny(Class<? extends SyntaxFinding> kind) {
        return all.stream().anyMatch(kind::isInstance);
    }

    /** All of them in source order. */
    List<Finding> inOrder() {
        List<Finding> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparingInt(f -> f.at().start()));
        return sorted;
    }
}
