package tarewright.procedure.resolve;

import java.util.Collections;
import java.util.EnumMap;
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
 */
public record ResolvedQuantity(QuantityBlock block, Optional<Matter> matter, Map<Property, Figure> figures, Property measuredOut,
        Optional<ApparatusItem> instrument, boolean taken, Optional<RinseAndFill> filling) {
    public ResolvedQuantity {
        Map<Property, Figure> ordered = new EnumMap<>(Property.class);
        ordered.putAll(figures);
        figures = Collections.unmodifiableMap(ordered);
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
