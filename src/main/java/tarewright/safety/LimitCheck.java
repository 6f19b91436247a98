package tarewright.safety;

import tarewright.chemistry.Provenance;

/**
 * A concentration in the air held against a limit.
 *
 * @param scene what was let out, and into what
 * @param kind which limit
 * @param limit parts per million by volume
 * @param found parts per million by volume
 */
public record LimitCheck(Scene scene, Kind kind, double limit, double found, Provenance provenance) {
    /** What was let out, and into what. */
    public enum Scene {
        /** One vessel into the whole room. */
        ONE_VESSEL,
        /** Every vessel at once into the whole room. */
        ALL_VESSELS,
        /** One vessel into one cubic metre around a face. */
        AROUND_FACE
    }

    /** Which limit. */
    public enum Kind {
        /** Average over a working day. */
        AVERAGE,
        /** Short-term or ceiling, whichever is lower. */
        SHORT_TERM,
        /** The average, for want of a short-term limit. */
        AVERAGE_AS_SHORT_TERM,
        /** Immediately dangerous to life or health. */
        DANGEROUS,
        /** A tenth of the lower flammable limit. */
        TENTH_OF_FLAMMABLE,
        /** So much gas that oxygen falls below 19.5 %. */
        TOO_LITTLE_OXYGEN,
        /** So much oxygen that it rises above 23.5 %. */
        TOO_MUCH_OXYGEN
    }

    public boolean over() {
        return found > limit * (1 + 1e-9);
    }
}
