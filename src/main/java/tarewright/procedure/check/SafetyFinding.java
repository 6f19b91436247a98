package tarewright.procedure.check;

import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What the checks find that could hurt somebody. */
public sealed interface SafetyFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.WARNING;
    }

    /**
     * Two things that must not meet.
     *
     * @param container the waste in which what is left of both would meet
     * @param procedure that the first belongs to, where two procedures share a lesson
     * @param other the procedure that the second belongs to
     * @param hazard what would come of it, in the table's words
     * @param products what would form
     */
    record MustNotMeet(String first, String second, Optional<String> container, Optional<String> procedure, Optional<String> other, String hazard,
            String products, String advice, Severity severity, Span at, List<Span> also)
            implements SafetyFinding {
        public MustNotMeet {
            also = List.copyOf(also);
        }

        @Override
        public String id() {
            return "must-not-meet";
        }
    }

    /**
     * Something that wants a fume hood where the procedure has none.
     *
     * @param toxic the statements by which it is fatal or toxic if inhaled
     * @param nearFace ppm by volume, if one vessel goes into 1 m³ around a face and that passes {@code limit}
     * @param inRoom ppm by volume in the room, if that passes {@code limit}
     * @param limit ppm by volume
     * @param one ppm by volume in the room if one vessel leaks
     * @param all ppm by volume in the room if all of them do
     * @param face ppm by volume in 1 m³ around a face
     */
    record HoodNeeded(String name, Optional<String> toxic, Optional<String> nearFace, Optional<String> inRoom, Optional<String> limit,
            Optional<String> one, Optional<String> all, Optional<String> face, Severity severity, Span at) implements SafetyFinding {
        @Override
        public String id() {
            return "hood-needed";
        }
    }

    /** Something whose hazards are not in the tables. @param parts the substances that are not */
    record HazardsUnknown(String name, List<String> parts, Span at) implements SafetyFinding {
        public HazardsUnknown {
            parts = List.copyOf(parts);
        }

        @Override
        public String id() {
            return "hazards-unknown";
        }
    }

    /**
     * A step that handles something corrosive or toxic, with no caution for it before it.
     *
     * @param late what the caution says that stands behind the step; at {@code also}
     */
    record CautionMissing(String name, List<String> codes, Optional<String> late, Span at, List<Span> also) implements SafetyFinding {
        public CautionMissing {
            codes = List.copyOf(codes);
            also = List.copyOf(also);
        }

        @Override
        public String id() {
            return "caution-missing";
        }
    }

    /** A caution that stands behind the last step of all. */
    record CautionBehindAll(Span at) implements SafetyFinding {
        @Override
        public String id() {
            return "caution-behind-all";
        }
    }

    /** A caution that tells to do what no step says. */
    record CautionHidesStep(String text, Span at) implements SafetyFinding {
        @Override
        public String id() {
            return "caution-hides-step";
        }
    }

    /** Waste that the author pours away and that the tables keep from the sink. @param why the tables' words */
    record NotIntoSink(String what, List<String> why, Span at) implements SafetyFinding {
        public NotIntoSink {
            why = List.copyOf(why);
        }

        @Override
        public String id() {
            return "not-into-sink";
        }
    }

    /** A container for waste that is called neutral, though what goes into it is not. @param pH the worst that is known */
    record NotNeutral(String into, Optional<String> pH, Span at) implements SafetyFinding {
        @Override
        public String id() {
            return "not-neutral";
        }
    }

    /** A gas that forms in a closed vessel. @param times the pressure of the room */
    record OverPressure(String gas, String vessel, String pressure, String times, Severity severity, Span at, List<Span> also)
            implements SafetyFinding {
        public OverPressure {
            also = List.copyOf(also);
        }

        @Override
        public String id() {
            return "over-pressure";
        }
    }
}
