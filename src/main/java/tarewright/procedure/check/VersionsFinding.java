package tarewright.procedure.check;

import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What is to be thought of where versions of the questions' numbers are printed. */
public sealed interface VersionsFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.WARNING;
    }

    /** Two versions with other numbers and the same answer as it is printed. */
    record SameAnswer(String question, String first, String second, String answer, Span at) implements VersionsFinding {
        @Override
        public String id() {
            return "version-same-answer";
        }
    }

    /** An answer that is negative, or nothing, in one version and not in the first. @param plain the first version's */
    record Turns(String question, String version, String answer, String plain, Span at) implements VersionsFinding {
        @Override
        public String id() {
            return "version-turns";
        }
    }

    /** An answer in words, or a choice, to a question whose numbers differ. @param name of the value that it shows */
    record InWords(String question, String name, Span at) implements VersionsFinding {
        @Override
        public String id() {
            return "version-in-words";
        }
    }
}
