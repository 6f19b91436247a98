package tarewright.derivation;

/** Why an amount was rounded the way it was. */
public enum Reason {
    /** To the nearest division of its instrument. */
    INSTRUMENT,
    /** Upward, because it is an excess. */
    EXCESS,
    /** Downward, because a vessel would be passed. */
    VESSEL,
    /** So that there is enough for all: a total upward, the share that one group is handed downward. */
    ENOUGH
}
