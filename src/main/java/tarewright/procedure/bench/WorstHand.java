package tarewright.procedure.bench;

import java.util.Comparator;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.safety.Rulebook;

/** Of the hands that are dealt, the one with the most that could hurt: the panel on the wall is for every group. */
public final class WorstHand {
    private WorstHand() {
    }

    /** By what demands a hood, what must not meet, what is left, the gas that comes off, and the amounts themselves, in this order. */
    public static Resolved of(Resolved procedure, Rulebook rules) {
        if (procedure.dealt().isEmpty()) {
            return procedure;
        }
        record Judged(Resolved hand, BenchSafety safety) {
        }
        return procedure.hands().stream().map(Hand::resolved).map(h -> new Judged(h, BenchSafety.of(h, rules)))
                .max(Comparator.comparingInt((Judged j) -> j.safety().hoodReasons().size())
                        .thenComparingInt(j -> j.safety().clashes().size() + j.safety().closed().size())
                        .thenComparingInt(j -> j.safety().verdicts().size())
                        .thenComparingDouble(j -> total(j.hand(), true)).thenComparingDouble(j -> total(j.hand(), false)))
                .map(Judged::hand).orElse(procedure);
    }

    private static double total(Resolved hand, boolean gases) {
        return hand.quantities().stream().filter(q -> q.block().is(Kind.GAS) == gases).flatMap(q -> q.figure(Property.MOLES).stream())
                .mapToDouble(Figure::value).sum();
    }
}
