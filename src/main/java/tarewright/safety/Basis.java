package tarewright.safety;

/** What a classification rests on. */
public enum Basis {
    /** Annex VI of CLP. */
    HARMONISED,
    /** Annex VI with additions of suppliers. */
    ADDITIONS,
    /** Suppliers' own classification; no entry in Annex VI. */
    SELF_CLASSIFIED,
    /** Published as not classified. */
    NOT_CLASSIFIED,
    /** The teacher's own table. */
    TEACHER,
    /** Listed, but nothing is known: treated as unknown. */
    NO_DATA
}
