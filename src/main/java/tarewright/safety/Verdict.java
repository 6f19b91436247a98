package tarewright.safety;

import java.util.List;
import java.util.Optional;

/** What a matter's label says: classified, or not known and therefore treated as hazardous. Never silent. */
public sealed interface Verdict permits Classified, Unknown {
    Matter matter();

    RuleSet ruleSet();

    /** False where anything in the matter is not in the tables: it is then <em>hazards not known: treat as hazardous</em>. */
    boolean known();

    /** The most severe class of each endpoint, in the order of their statements. */
    List<Assigned> assigned();

    /** The hazard statements of the label, redundant ones left out. */
    List<Statement> statements();

    /** EUH statements. */
    List<Statement> supplemental();

    /** The pictograms of the label, {@code GHS01} to {@code GHS09}, by precedence within this label. */
    List<String> pictograms();

    /** Empty where nothing known asks for one. */
    Optional<SignalWord> signalWord();

    List<NearLimit> nearLimits();

    List<Remark> remarks();

    /** The tables' rows that were used. */
    List<SubstanceHazards> rows();

    /** What the rows rest on, each once. */
    default List<Basis> bases() {
        return rows().stream().map(r -> r.listing().basis()).distinct().sorted().toList();
    }

    /** Whether the known part has this statement or one of them. */
    default boolean has(String... codes) {
        List<String> wanted = List.of(codes);
        return assigned().stream().anyMatch(a -> wanted.contains(a.hazard().code()))
                || supplemental().stream().anyMatch(s -> wanted.contains(s.code()));
    }

    /** Whether it is known and carries no statement at all. */
    default boolean harmless() {
        return known() && assigned().isEmpty() && supplemental().isEmpty();
    }
}
