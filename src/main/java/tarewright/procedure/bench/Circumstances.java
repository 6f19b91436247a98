package tarewright.procedure.bench;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Resolved;
import tarewright.safety.Circumstance;
import tarewright.safety.PairRule;

/** What the apparatus and the steps of a procedure ask for. */
public final class Circumstances {
    private Circumstances() {
    }

    /**
     * Told by the author's own words for the apparatus, so the words to look for are those of the procedure's language, in lower
     * case.
     *
     * @param syringe any syringe; it counts where a gas is in it
     */
    public static Set<Circumstance> of(Resolved procedure, String gasSyringe, String syringe, String glassTubing) {
        Set<Circumstance> found = EnumSet.noneOf(Circumstance.class);
        for (ApparatusItem item : procedure.procedure().apparatus()) {
            String words = item.words().toLowerCase(Locale.ROOT);
            boolean holdsGas = procedure.quantities().stream().filter(q -> q.block().is(Kind.GAS))
                    .anyMatch(q -> q.block().vessel().filter(v -> v.value().equals(item.name())).isPresent());
            if (words.contains(gasSyringe) || holdsGas && words.contains(syringe)) {
                found.add(Circumstance.GAS_SYRINGE);
            }
            if (words.contains(glassTubing)) {
                found.add(Circumstance.GLASS_TUBING);
            }
        }
        Set<PairRule.Setting> going = Going.of(procedure);
        if (going.contains(PairRule.Setting.NEAR_FLAME)) {
            found.add(Circumstance.FLAME);
        }
        if (going.contains(PairRule.Setting.HEATED)) {
            found.add(Circumstance.HEAT);
        }
        return found;
    }
}
