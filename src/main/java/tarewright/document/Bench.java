package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.safety.Classification;
import tarewright.safety.Form;
import tarewright.safety.Matter;
import tarewright.safety.Rulebook;
import tarewright.safety.Verdict;

/**
 * What stands on the bench, classified at its real strength, and what is made there.
 *
 * @param bottles what the students take from, in the order of the procedure
 * @param made what the reactions make, water left out
 */
record Bench(List<Bottle> bottles, List<Bottle> made) {
    private static final double LITRES = 1000;

    Bench {
        bottles = List.copyOf(bottles);
        made = List.copyOf(made);
    }

    static Bench of(Draft draft, Rulebook rules) {
        return new Bench(bottles(draft, new Classification(rules)), Products.of(draft, rules).made());
    }

    /** Everything, bottles first. */
    List<Bottle> all() {
        List<Bottle> all = new ArrayList<>(bottles);
        all.addAll(made);
        return all;
    }

    List<Verdict> verdicts() {
        return all().stream().map(Bottle::verdict).toList();
    }

    private static List<Bottle> bottles(Draft draft, Classification classification) {
        Labels labels = new Labels(draft);
        Map<String, List<ResolvedQuantity>> uses = new LinkedHashMap<>();
        Map<String, ResolvedQuantity> first = new LinkedHashMap<>();
        for (ResolvedQuantity quantity : draft.procedure().quantities()) {
            if (!quantity.taken()) {
                continue;
            }
            QuantityBlock source = labels.bottle(quantity.block());
            String formula = quantity.matter().map(m -> m.formula().plain()).orElse("");
            String strength = source.strength().map(s -> s.at().text()).orElse("");
            String key = String.join(" ", source.kind().word(), labels.plain(source), formula, strength);
            first.putIfAbsent(key, draft.procedure().quantity(source.name()).orElse(quantity));
            uses.computeIfAbsent(key, k -> new ArrayList<>()).add(quantity);
        }
        List<Bottle> bottles = new ArrayList<>();
        first.forEach((key, quantity) -> {
            List<ResolvedQuantity> measured = uses.get(key).stream().filter(q -> q.amount().isPresent()).toList();
            bottles.add(bottle(labels, quantity, measured, classification));
        });
        return bottles;
    }

    private static Bottle bottle(Labels labels, ResolvedQuantity quantity, List<ResolvedQuantity> uses,
            Classification classification) {
        QuantityBlock block = quantity.block();
        String label = labels.plain(block);
        Form form = Contents.form(block);
        OptionalDouble litres = total(uses, Property.VOLUME, LITRES);
        OptionalDouble grams = total(uses, Property.MASS, LITRES);
        Matter matter = new Matter(label, form, Contents.parts(quantity, label), litres, grams, OptionalDouble.empty());
        return new Bottle(labels.name(block), labels.strength(block), labels.formula(block), classification.of(matter),
                labels.isMasked(block), uses, Optional.empty());
    }

    /** What the class takes from one bottle: litres from m³ or grams from kg. Empty unless every use is known. */
    private static OptionalDouble total(List<ResolvedQuantity> uses, Property property, double perSi) {
        double sum = 0;
        for (ResolvedQuantity use : uses) {
            Optional<Figure> each = use.measuredOut() == property ? use.figure(Property.CLASS_TOTAL) : Optional.empty();
            if (each.isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += each.get().value() * perSi;
        }
        return uses.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(sum);
    }
}
