package tarewright.procedure.bench;

import java.util.List;
import java.util.stream.Stream;
import tarewright.procedure.resolve.Resolved;
import tarewright.safety.Rulebook;
import tarewright.safety.Verdict;

/**
 * What stands on the bench, classified at its real strength, and what is made there.
 *
 * @param taken what the students take from bottles, in the order of the procedure
 * @param made what the reactions make, water left out
 */
public record OnTheBench(List<Taken> taken, List<Made> made) {
    public OnTheBench {
        taken = List.copyOf(taken);
        made = List.copyOf(made);
    }

    public static OnTheBench of(Resolved procedure, Rulebook rules, Naming naming) {
        return new OnTheBench(Bottles.of(procedure, rules, naming), Products.of(procedure, rules, naming));
    }

    /** Of everything, bottles first. */
    public List<Verdict> verdicts() {
        return Stream.concat(taken.stream().map(Taken::verdict), made.stream().map(Made::verdict)).toList();
    }
}
