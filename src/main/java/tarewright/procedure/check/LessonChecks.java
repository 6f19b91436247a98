package tarewright.procedure.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.SharedLesson;
import tarewright.procedure.bench.SharedLesson.Meeting;
import tarewright.procedure.resolve.Resolved;
import tarewright.safety.Clash;
import tarewright.safety.Rulebook;
import tarewright.text.Span;

/**
 * What must not meet of procedures that share a lesson, beside what each of them finds for itself. A warning, since they stand on benches of their own
 * and the bottles stay apart if people are told; each pair once, the gravest of it.
 */
public final class LessonChecks {
    private LessonChecks() {
    }

    /** @param procedures of one lesson, in the order in which their sheets are printed */
    public static List<Finding> run(List<Resolved> procedures, Rulebook rules) {
        List<BenchSafety> benches = procedures.stream().map(p -> BenchSafety.of(p, rules)).toList();
        List<Finding> found = new ArrayList<>();
        Set<List<String>> told = new HashSet<>();
        for (Meeting meeting : SharedLesson.among(benches, rules)) {
            Clash clash = meeting.clash();
            if (told.add(List.of(meeting.first().procedure().name(), clash.first().name(), meeting.other().procedure().name(), clash.second().name()))) {
                found.add(finding(meeting));
            }
        }
        return found;
    }

    private static Finding finding(Meeting meeting) {
        Clash clash = meeting.clash();
        Span here = Where.of(meeting.other(), clash.second());
        Span there = Where.of(meeting.first(), clash.first());
        return new SafetyFinding.MustNotMeet(clash.first().name(), clash.second().name(), meeting.container(),
                Optional.of(title(meeting.first().procedure())), Optional.of(title(meeting.other().procedure())), clash.rule().hazard(),
                clash.rule().products(), clash.rule().advice(), Severity.WARNING, here, List.of(there));
    }

    private static String title(Resolved procedure) {
        return procedure.procedure().front().title().map(t -> t.value()).orElse(procedure.name());
    }
}
