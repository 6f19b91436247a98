package tarewright.procedure.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.safety.AirEstimate;
import tarewright.safety.Classification;
import tarewright.safety.Form;
import tarewright.safety.Matter;
import tarewright.safety.Rulebook;

/** The bottles that the students take from: blocks of the same name, substance and strength share one. */
public final class Bottles {
    private static final double PER_SI = 1000;

    private final Resolved procedure;
    private final Naming naming;
    private final Classification classification;
    private final Releases releases;

    private Bottles(Resolved procedure, Rulebook rules, Naming naming) {
        this.procedure = procedure;
        this.naming = naming;
        this.classification = new Classification(rules);
        this.releases = new Releases(procedure, rules);
    }

    static List<Taken> of(Resolved procedure, Rulebook rules, Naming naming) {
        return new Bottles(procedure, rules, naming).taken();
    }

    /** The block whose bottle a block is taken from, in the end. */
    public static QuantityBlock source(Resolved procedure, QuantityBlock block) {
        QuantityBlock at = block;
        for (int i = 0; i < procedure.procedure().quantities().size(); i++) {
            Optional<QuantityBlock> from = at.portionOf().flatMap(p -> procedure.procedure().quantity(p.value()));
            if (from.isEmpty()) {
                break;
            }
            at = from.get();
        }
        return at;
    }

    private List<Taken> taken() {
        Map<String, List<ResolvedQuantity>> uses = new LinkedHashMap<>();
        Map<String, ResolvedQuantity> first = new LinkedHashMap<>();
        for (ResolvedQuantity quantity : procedure.quantities()) {
            if (!quantity.taken()) {
                continue;
            }
            QuantityBlock source = source(procedure, quantity.block());
            String formula = quantity.matter().map(m -> m.formula().plain()).orElse("");
            String strength = source.strength().map(s -> s.at().text()).orElse("");
            String key = String.join(" ", source.kind().word(), name(source), formula, strength);
            first.putIfAbsent(key, procedure.quantity(source.name()).orElse(quantity));
            uses.computeIfAbsent(key, k -> new ArrayList<>()).add(quantity);
        }
        List<Taken> bottles = new ArrayList<>();
        first.forEach((key, source) -> bottles.add(taken(source,
                uses.get(key).stream().filter(q -> q.amount().isPresent()).toList())));
        return bottles;
    }

    private String name(QuantityBlock source) {
        return naming.bottle(source, procedure.quantity(source.name()).flatMap(ResolvedQuantity::matter));
    }

    private Taken taken(ResolvedQuantity source, List<ResolvedQuantity> uses) {
        String name = name(source.block());
        Form form = Contents.form(source.block());
        Matter matter = new Matter(name, form, Contents.parts(source, name), total(uses, Property.VOLUME),
                total(uses, Property.MASS), OptionalDouble.empty());
        Optional<AirEstimate> air = form == Form.GAS ? source.figure(Property.MOLES)
                .map(n -> releases.of(matter.parts().get(0), n, 1)) : Optional.empty();
        return new Taken(source, uses, classification.of(matter), air);
    }

    /** What the class takes from one bottle: litres from m³ or grams from kg. Empty unless every use is known. */
    private static OptionalDouble total(List<ResolvedQuantity> uses, Property property) {
        double sum = 0;
        for (ResolvedQuantity use : uses) {
            Optional<Figure> each = use.measuredOut() == property ? use.figure(Property.CLASS_TOTAL) : Optional.empty();
            if (each.isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += each.get().value() * PER_SI;
        }
        return uses.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(sum);
    }
}
