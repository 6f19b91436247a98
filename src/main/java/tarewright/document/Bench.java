package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Species;
import tarewright.chemistry.Substance;
import tarewright.procedure.bench.Made;
import tarewright.procedure.bench.Naming;
import tarewright.procedure.bench.OnTheBench;
import tarewright.procedure.bench.Taken;
import tarewright.procedure.bench.WasteContainer;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.safety.Rulebook;
import tarewright.safety.Verdict;

/**
 * What stands on the bench, as its reader may see it.
 *
 * @param things all of it, under the names of this page
 * @param bottles what the students take from, in the order of the procedure
 * @param made what the reactions make, water left out
 */
record Bench(OnTheBench things, List<Bottle> bottles, List<Bottle> made) {
    Bench {
        bottles = List.copyOf(bottles);
        made = List.copyOf(made);
    }

    static Bench of(Draft draft, Rulebook rules) {
        OnTheBench things = OnTheBench.of(draft.procedure(), rules, naming(draft));
        return new Bench(things, things.taken().stream().map(t -> bottle(draft, t)).toList(),
                things.made().stream().map(m -> product(draft, m)).toList());
    }

    /** Everything, bottles first. */
    List<Bottle> all() {
        List<Bottle> all = new ArrayList<>(bottles);
        all.addAll(made);
        return all;
    }

    List<Verdict> verdicts() {
        return things.verdicts();
    }

    /**
     * What goes into each container of waste, of the whole class.
     *
     * @param whole with all that is dealt; the draft may be that of one hand of it
     */
    static List<WasteContainer> containers(Draft draft, Resolved whole, Rulebook rules) {
        return WasteContainer.of(whole, p -> OnTheBench.of(p, rules, naming(p == draft.procedure() ? draft : Draft.of(p, draft.open()))), rules);
    }

    private static Naming naming(Draft draft) {
        Labels labels = new Labels(draft);
        return new Naming() {
            @Override
            public String bottle(QuantityBlock block, Optional<Matter> matter) {
                return labels.plain(block);
            }

            @Override
            public String product(Species species, Optional<ResolvedQuantity> block, Optional<Substance> substance) {
                return Plain.of(productName(draft, species, block, substance));
            }
        };
    }

    private static Bottle bottle(Draft draft, Taken taken) {
        Labels labels = new Labels(draft);
        QuantityBlock block = taken.source().block();
        return new Bottle(labels.name(block), labels.strength(block), labels.formula(block), taken.verdict(),
                labels.isMasked(block), taken.uses(), taken.air());
    }

    private static Bottle product(Draft draft, Made made) {
        List<Text> formula = List.of(draft.formula(made.species().formula()));
        List<Text> name = productName(draft, made.species(), made.block(), made.substance());
        return new Bottle(name, List.of(), name.equals(formula) ? List.of() : formula, made.verdict(),
                draft.disguise(made.species().formula()).isPresent(), made.block().map(List::of).orElse(List.of()), made.air());
    }

    private static List<Text> productName(Draft draft, Species species, Optional<ResolvedQuantity> block,
            Optional<Substance> substance) {
        List<Text> formula = List.of(draft.formula(species.formula()));
        boolean masked = draft.disguise(species.formula()).isPresent();
        return block.map(q -> new Labels(draft).name(q.block()))
                .orElseGet(() -> masked ? formula : substance.<List<Text>>map(s -> Text.words(draft.called(s.name()))).orElse(formula));
    }
}
