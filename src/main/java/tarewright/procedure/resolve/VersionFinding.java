package tarewright.procedure.resolve;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What can be wrong with versions of the questions' numbers. */
public sealed interface VersionFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.ERROR;
    }

    /** A value that differs between the versions, where something is done or made ready: there all must be the same. @param where it is used */
    record AtTheBench(String name, Where where, Span at) implements VersionFinding {
        @Override
        public String id() {
            return "version-at-the-bench";
        }
    }

    /** A place where a number is one for the whole class. */
    enum Where { STEP, PREP_NOTE, READING }

    /** An answer is worked from a number that no student is told, so nobody would have the number of his own version. */
    record NotShown(String name, String question, Span at) implements VersionFinding {
        @Override
        public String id() {
            return "version-not-shown";
        }
    }

    /** A question shows a number that differs between the versions, and no answer is worked from it. */
    record NotUsed(String name, Span at) implements VersionFinding {
        @Override
        public String id() {
            return "version-not-used";
        }
    }

    /** More versions asked for than typed. */
    record Few(String name, int typed, int wanted, Span at) implements VersionFinding {
        @Override
        public String id() {
            return "versions-few";
        }
    }

    /** Versions asked for, and no number of a question can differ. @param candidates values that are typed once */
    record NothingToVary(List<String> candidates, Span at) implements VersionFinding {
        public NothingToVary {
            candidates = List.copyOf(candidates);
        }

        @Override
        public Severity severity() {
            return Severity.WARNING;
        }

        @Override
        public String id() {
            return "nothing-to-vary";
        }
    }

    /** What is wrong in one version alone. @param version its letter. @param trouble what it is */
    record In(String version, Finding trouble) implements VersionFinding {
        @Override
        public String id() {
            return trouble.id();
        }

        @Override
        public Severity severity() {
            return trouble.severity();
        }

        @Override
        public Span at() {
            return trouble.at();
        }

        @Override
        public List<Span> also() {
            return trouble.also();
        }

        @Override
        public Map<String, Object> fields() {
            Map<String, Object> all = new LinkedHashMap<>(trouble.fields());
            all.put("inVersion", version);
            return all;
        }
    }
}
