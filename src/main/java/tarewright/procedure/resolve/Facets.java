package tarewright.procedure.resolve;

import java.util.EnumSet;
import java.util.Set;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;

/** Which figures a block has at all, before any is worked out: so that asking for another is the author's slip and not a gap in the data. */
final class Facets {
    private Facets() {
    }

    static Set<Property> of(Bench bench, QuantityBlock block) {
        if (block.unreadable()) {
            return EnumSet.allOf(Property.class);
        }
        Set<Property> all = EnumSet.noneOf(Property.class);
        boolean known = bench.matter(block).isPresent();
        boolean bottle = block.rule() instanceof AmountRule.Unfixed && block.madeUpTo().isEmpty();
        if (known) {
            all.add(Property.MOLAR_MASS);
        }
        if (block.purity().isPresent()) {
            all.add(Property.PURITY);
        }
        boolean density = new Strengths(bench, block).knownDensity().isPresent();
        if (density) {
            all.add(Property.DENSITY);
        }
        if (block.is(Kind.SOLUTION)) {
            all.add(Property.STRENGTH);
        }
        if (bottle) {
            return all;
        }
        all.add(Amounts.measuredOut(block));
        if (known) {
            all.add(Property.MOLES);
            if (!block.is(Kind.SOLUTION) || density) {
                all.add(Property.MASS);
            }
        }
        if (block.is(Kind.LIQUID) || block.is(Kind.SOLID) && block.density().isPresent()) {
            all.add(Property.VOLUME);
        }
        if (block.ribbon().isPresent()) {
            all.add(Property.LENGTH);
        }
        if (block.is(Kind.GAS)) {
            all.add(Property.DRY);
            all.add(Property.LARGEST);
            if (block.gas().overWater()) {
                all.add(Property.MOIST);
            }
            if (new Gases(bench, block).dissolved().isPresent()) {
                all.add(Property.DISSOLVED);
            }
        }
        boolean made = block.rule() instanceof AmountRule.MadeBy || block.rule() instanceof AmountRule.Wanted;
        if (made && !block.is(Kind.GAS)) {
            all.add(Property.MOST);
            all.add(Property.YIELD);
        }
        if (!made && bench.potAsProduct(block).isEmpty()) {
            all.add(Property.CLASS_TOTAL);
        }
        if (bench.potAsReactant(block).isPresent()) {
            all.add(Property.EXCESS);
            all.add(Property.LEFT_OVER);
        }
        if (block.is(Kind.SOLUTION) && block.madeFrom().isPresent() && block.strength().isPresent() && bench.source(block).isPresent()) {
            all.add(Property.TAKEN);
        }
        return all;
    }
}
