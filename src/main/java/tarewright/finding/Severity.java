package tarewright.finding;

/** How much a finding weighs. */
public enum Severity {
    /** Nothing is printed until it is mended. */
    ERROR,
    /** Printed all the same; the author may answer it with a {@code settled} block. */
    WARNING,
    /** Good to know, nothing to do. */
    NOTE
}
