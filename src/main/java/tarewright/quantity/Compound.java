package tarewright.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A product of powers of units over a power of ten of them, such as {@code g/100 mL}.
 *
 * @param terms at least one
 * @param multiple the number that stands in the denominator, 1 where none does
 */
record Compound(List<Term> terms, int multiple) {
    private static final BigDecimal GREATEST = new BigDecimal("1e60");
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /** One unit to a power, which stands in the denominator where the power is below zero. */
    record Term(UnitTable.Entry entry, int power) {
    }

    Compound {
        terms = List.copyOf(terms);
    }

    /** The unit, whose zero is that of the quantity; empty if its factor is too large or too small to reckon with. */
    Optional<Unit> unit() {
        Dimension dimension = Dimension.NONE;
        BigDecimal factor = BigDecimal.ONE.divide(BigDecimal.valueOf(multiple), UnitTable.DIGITS);
        for (Term term : terms) {
            dimension = dimension.times(term.entry.unit().dimension().power(term.power));
            factor = factor.multiply(term.entry.factor().pow(term.power, UnitTable.DIGITS), UnitTable.DIGITS);
        }
        boolean reckonable = factor.compareTo(GREATEST) < 0
                && BigDecimal.ONE.divide(factor, UnitTable.DIGITS).compareTo(GREATEST) < 0;
        return reckonable ? Optional.of(new Unit(symbol(), dimension, factor.doubleValue())) : Optional.empty();
    }

    /** As it is printed: {@code J/(g K)}, {@code g/100 mL}, {@code 1/s}. */
    String symbol() {
        List<String> above = new ArrayList<>();
        List<String> below = new ArrayList<>();
        for (Term term : terms) {
            int power = Math.abs(term.power);
            String raised = term.entry.unit().symbol() + (power == 1 ? "" : SUPERSCRIPTS.charAt(power));
            (term.power > 0 ? above : below).add(raised);
        }
        String head = above.isEmpty() ? "1" : String.join(" ", above);
        if (below.isEmpty()) {
            return head;
        }
        String number = multiple == 1 ? "" : multiple + " ";
        return head + "/" + number + (below.size() == 1 ? below.get(0) : "(" + String.join(" ", below) + ")");
    }
}
