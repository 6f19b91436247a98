package tarewright.safety;

/** The two signal words of GHS. */
public enum SignalWord {
    WARNING, DANGER
}
