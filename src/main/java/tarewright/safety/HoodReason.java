package tarewright.safety;

import java.util.List;
import java.util.Optional;

/**
 * Why a fume hood is demanded.
 *
 * @param codes the statements that demand it
 * @param check the limit that is passed
 */
public record HoodReason(Why why, List<String> codes, Optional<LimitCheck> check) {
    /** The kinds of reason. */
    public enum Why {
        /** Fatal or toxic if inhaled, whatever the amount. */
        TOXIC_IF_INHALED,
        /** One vessel around a face passes a short-term or ceiling limit. */
        OVER_LIMIT_AROUND_FACE,
        /** The room passes a limit, if one vessel or all of them leak. */
        OVER_LIMIT_IN_ROOM,
        /** The tables do not know this gas. */
        NOT_KNOWN
    }

    public HoodReason {
        codes = List.copyOf(codes);
    }
}
