package tarewright.tables;

import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What there is to say about a hazard table of the teacher's own, beside what {@link OwnTableFinding} has. */
public sealed interface HazardFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.ERROR;
    }

    /** A row that does not say how its substance is classified; {@code none} must be written out. */
    record ClassificationMissing(String name, Span at) implements HazardFinding {
        @Override
        public String id() {
            return "classification-missing";
        }
    }

    /** No hazard class with category and statement of the rule set. */
    record NotAHazardClass(String text, Span at) implements HazardFinding {
        @Override
        public String id() {
            return "not-a-hazard-class";
        }
    }

    /** No percentage with a hazard class. */
    record NotAConcentrationLimit(String text, Span at) implements HazardFinding {
        @Override
        public String id() {
            return "not-a-concentration-limit";
        }
    }

    /** No supplemental statement of the rule set. */
    record NotASupplementalStatement(String text, Span at) implements HazardFinding {
        @Override
        public String id() {
            return "not-a-supplemental-statement";
        }
    }

    /** A molar mass that is no positive number of g/mol. */
    record NotAMolarMass(String text, Span at) implements HazardFinding {
        @Override
        public String id() {
            return "not-a-molar-mass";
        }
    }

    /** The hazards of a substance are the teacher's own and no longer ours. */
    record HazardsOverridden(String name, Span at) implements HazardFinding {
        @Override
        public String id() {
            return "hazards-overridden";
        }

        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }
}
