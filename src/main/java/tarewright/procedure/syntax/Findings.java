package tarewright.procedure.syntax;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Severity;

/** Gathers what one reading finds. */
final class Findings {
    private final List<Finding> all = new ArrayList<>();
    private Optional<SyntaxFinding> firstUntold = Optional.empty();
    private int untold;

    /** Past the limit they are only counted: nobody mends more at one sitting, and telling them all would cost more than reading the file. */
    void add(SyntaxFinding finding) {
        if (all.size() < Limits.FINDINGS) {
            all.add(finding);
            return;
        }
        untold++;
        firstUntold = firstUntold.or(() -> Optional.of(finding));
    }

    boolean hasAny(Class<? extends SyntaxFinding> kind) {
        return all.stream().anyMatch(kind::isInstance);
    }

    /** All of them in source order. */
    List<Finding> inOrder() {
        List<Finding> sorted = new ArrayList<>(all);
        firstUntold.ifPresent(f -> sorted.add(new SyntaxFinding.AndMore(Limits.FINDINGS, untold, Severity.ERROR, f.at())));
        sorted.sort(Comparator.comparingInt(f -> f.at().start()));
        return sorted;
    }
}
