package tarewright.finding;

import java.util.List;

/** A value together with what was found on the way to it. */
public record Found<T>(T value, List<Finding> findings) {
    public Found {
        findings = List.copyOf(findings);
    }

    /** Whether a finding among them forbids printing. */
    public boolean hasErrors() {
        return findings.stream().anyMatch(f -> f.severity() == Severity.ERROR);
    }
}
