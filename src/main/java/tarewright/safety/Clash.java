package tarewright.safety;

/**
 * Two things that must not meet.
 *
 * @param first the one of group A
 * @param second the one of group B; the same matter where two of its own parts clash
 * @param firstPart the substance that does it, by the table's name
 * @param secondPart the substance that does it, by the table's name
 * @param rule what would form, how grave it is, what to do instead
 */
public record Clash(Matter first, Matter second, String firstPart, String secondPart, PairRule rule) {
    public PairRule.Severity severity() {
        return rule.severity();
    }

    /** Whether it is water that the first must not meet. */
    public boolean withWater() {
        return secondPart.equals(ReactiveTable.WATER);
    }
}
