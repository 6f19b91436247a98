package tarewright.term;

import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What can be wrong with a term beside the files that it names. */
public sealed interface TermFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.ERROR;
    }

    /**
     * A procedure that does not lie beside the term.
     *
     * @param apart the same with semicolons, where commas stand between names
     */
    record NoSuchProcedure(String text, Optional<String> apart, List<String> suggestions, Span at) implements TermFinding {
        public NoSuchProcedure {
            suggestions = List.copyOf(suggestions);
        }

        @Override
        public String id() {
            return "no-such-procedure";
        }
    }

    /** Procedures that must be kept apart and of which nothing tells on which day each is done: they count as one lesson, on the safe side. */
    record LessonAssumed(String section, String example, Span at) implements TermFinding {
        @Override
        public String id() {
            return "lesson-assumed";
        }

        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** Neither the section nor the term lists a procedure. */
    record NothingToDo(String section, Span at) implements TermFinding {
        @Override
        public String id() {
            return "nothing-to-do";
        }
    }
}
