package tarewright.safety;

/**
 * What must hold of one side of a pair for it to be dangerous.
 *
 * @param percent for {@link Kind#AT_LEAST} and {@link Kind#ABOVE}: per cent by mass
 */
public record Need(Kind kind, double percent) {
    /** The kinds of condition. */
    public enum Kind {
        /** Whatever its form and strength. */
        ANY,
        /** A dry solid. */
        DRY,
        /** A powder, or a solid of which nothing else is known. */
        POWDER,
        /** A gas. */
        GAS,
        /** Not in water. */
        UNDILUTED,
        /** Not in water, or at least as strong as the table calls concentrated. */
        CONCENTRATED,
        /** At least so strong, in water or not. */
        AT_LEAST,
        /** Stronger than that, in water or not. */
        ABOVE
    }

    /** Without a percentage of its own a solution of so many per cent counts as concentrated: judgement. */
    private static final double CONCENTRATED_BY_DEFAULT = 20;

    boolean holds(Form form, double percentFound, ReactiveMember member) {
        boolean diluted = form == Form.SOLUTION || form == Form.SLURRY;
        return switch (kind) {
            case ANY -> true;
            case DRY -> form.dry();
            case POWDER -> form == Form.POWDER || form == Form.SOLID;
            case GAS -> form == Form.GAS;
            case UNDILUTED -> !diluted;
            case CONCENTRATED -> !diluted && form != Form.LIQUID
                    || Limits.reached(percentFound, member.concentratedFromPercent().orElse(CONCENTRATED_BY_DEFAULT));
            case AT_LEAST -> Limits.reached(percentFound, percent);
            case ABOVE -> percentFound > percent;
        };
    }
}
