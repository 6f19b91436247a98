package tarewright.term;

import java.util.ArrayList;
import java.util.List;
import tarewright.finding.Finding;
import tarewright.procedure.check.LessonChecks;
import tarewright.procedure.declare.Term;
import tarewright.procedure.resolve.Resolved;
import tarewright.safety.Rulebook;

/**
 * The procedures that a section does in one lesson.
 *
 * @param parts without errors, in the order of the section
 */
public record Lesson(Term.Section section, List<Part> parts) {
    public Lesson {
        parts = List.copyOf(parts);
    }

    /** @param ownDay whether it is told on which day just this one is done */
    public record Part(Resolved procedure, boolean ownDay) {
    }

    /** What must be kept apart in it; where no day of their own is told, it is said that they were taken for one lesson. */
    public List<Finding> findings(Rulebook rules) {
        if (parts.size() < 2) {
            return List.of();
        }
        List<Finding> apart = new ArrayList<>(LessonChecks.run(parts.stream().map(Part::procedure).toList(), rules));
        if (!apart.isEmpty() && parts.stream().anyMatch(p -> !p.ownDay())) {
            String example = parts.get(0).procedure().name() + " on 2041-02-04; " + parts.get(1).procedure().name() + " on 2041-02-11";
            apart.add(new TermFinding.LessonAssumed(section.name(), example, section.at()));
        }
        return apart;
    }
}
