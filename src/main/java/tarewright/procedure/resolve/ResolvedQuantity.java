package tarewright.procedure.resolve;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;

/**
 * A quantity with every figure that it has.
 *
 * @param matter what it is, its own or that of the block it is taken from
 * @param figures by property, in the order of {@link Property}
 * @param measuredOut the property that a group measures out
 * @param instrument that weighs or measures it
 * @param taken whether the students take it from a bottle (it is not made in the pot)
 * @param filling what rinses and fills its instruments besides; with the first of the blocks of one bottle and one instrument
 * @param asTyped strength and purity as the procedure types them, where others were found on the day
 */
public record ResolvedQuantity(QuantityBlock block, Optional<Matter> matter, Map<Property, Figure> figures, Property measuredOut,
        Optional<ApparatusItem> instrument, boolean taken, Optional<RinseAndFill> filling, Map<Property, Figure> asTyped) {
    public ResolvedQuantity {
        Map<Property, Figure> ordered = new EnumMap<>(Property.class);
        ordered.putAll(figures);
        figures = Collections.unmodifiableMap(ordered);
        asTyped = Map.copyOf(asTyped);
    }

    /** The same, which the procedure types like another. @param typed of the procedure without what was found on the day */
    ResolvedQuantity typedAs(ResolvedQuantity typed) {
        Map<Property, Figure> other = new EnumMap<>(Property.class);
        for (Property property : List.of(Property.STRENGTH, Property.PURITY)) {
            typed.figure(property).filter(t -> figure(property).filter(f -> f.value() != t.value()).isPresent()).ifPresent(t -> other.put(property, t));
        }
        return new ResolvedQuantity(block, matter, figures, measuredOut, instrument, taken, filling, other);
    }

    /** As the procedure types it, where something else was found on the day. */
    public Optional<Figure> typed(Property property) {
        return Optional.ofNullable(asTyped.get(property));
    }

    /** The strength that it is made in: what is found on the day changes no recipe. */
    public Optional<Figure> strengthToMake() {
        return typed(Property.STRENGTH).or(() -> figure(Property.STRENGTH));
    }

    public String name() {
        return block.name();
    }

    public Optional<Figure> figure(Property property) {
        return Optional.ofNullable(figures.get(property));
    }

    /** What a group measures out of it. */
    public Optional<Figure> amount() {
        return figure(measuredOut);
    }
}
