package tarewright.procedure.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.declare.Notes;
import tarewright.procedure.declare.Notes.SettledBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Version;
import tarewright.procedure.resolve.VersionFinding;

/** Every check, and the author's answers to what they find. */
public final class Checks {
    private static final List<Check> ALL = List.of(new VesselCheck(), new FitsCheck(), new ExcessCheck(),
            new LimitingCheck(), new ReactantCheck(), new FoundCheck(), new SourceCheck(), new RoomCheck(), new RecipeCheck(),
            new DeliveryCheck(), new ScaleCheck(), new HeatCheck(), new InsideCheck(), new WasteCheck(), new ActionsCheck(),
            new HandTypedCheck(), new BlanksCheck(), new MeasuredWithCheck(), new HydrateNamedCheck());

    private Checks() {
    }

    /** What the checks find, without warnings that the author has answered. */
    public static List<Finding> run(Resolved procedure) {
        Set<Finding> found = new LinkedHashSet<>();
        List<Version> versions = procedure.eachVersion();
        for (Version version : versions) {
            Set<Finding> its = new LinkedHashSet<>();
            // What is wrong with one deal is wrong, whatever the others are like.
            version.resolved().hands().forEach(hand -> ALL.forEach(check -> check.check(hand.resolved(), its::add)));
            VariesCheck.check(version.resolved(), its::add);
            its.stream().filter(f -> !found.contains(f)).toList().forEach(f -> found.add(version == versions.get(0) ? f : new VersionFinding.In(version.letter(), f)));
        }
        VersionsCheck.check(procedure, found::add);
        return unanswered(procedure, new ArrayList<>(found));
    }

    /** Leaves out warnings that a {@code settled} block answers; notes an answer to an error, which cannot be waved away. */
    public static List<Finding> unanswered(Resolved procedure, List<Finding> found) {
        List<SettledBlock> settled = procedure.procedure().settled();
        List<Finding> left = new ArrayList<>(found.stream()
                .filter(f -> f.severity() != Severity.WARNING || !Notes.answers(settled, f.id())).toList());
        for (SettledBlock block : settled) {
            Optional<Finding> error = found.stream().filter(f -> f.severity() == Severity.ERROR
                    && block.finding().filter(id -> id.value().equals(f.id())).isPresent()).findFirst();
            error.ifPresent(f -> left.add(new CheckFinding.CannotBeSettled(f.id(), block.finding().orElseThrow().at(), List.of(f.at()))));
        }
        return left;
    }
}
