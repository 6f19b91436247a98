package tarewright.procedure.resolve;

import java.util.EnumSet;
import java.util.Set;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;

/**
 * Which figures a block has at all, before any is worked out: so that asking for another is the author's slip and not a gap in
 * the data.
 */
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
        boolean made = block.rule() instanceof AmountRule.MadeBy || block.rule() instanceof AmountRule.Wanted;
        // What a reaction makes in solution has a strength only where the author gives one.
        boolean strength = block.is(Kind.SOLUTION) && block.mixture().isEmpty() && (!made || block.strength().isPresent());
        if (strength) {
            all.add(Property.STRENGTH);
        }
        if (bottle) {
            return all;
        }
        all.addAll(amounts(block, known, density, made, strength));
        if (block.ribbon().isPresent()) {
            all.add(Property.LENGTH);
        }
        if (block.is(Kind.GAS)) {
            all.add(Property.DRY);
            all.add(Property.LARGEST);
            all.add(Property.MOLAR_VOLUME);
            if (block.gas().overWater()) {
                all.add(Property.MOIST);
            }
            if (new Gases(bench, block).dissolved().isPresent()) {
                all.add(Property.DISSOLVED);
            }
        }
        if (!block.is(Kind.GAS) && bench.potAsProduct(block).filter(p -> !p.reactants().isEmpty()).isPresent()) {
            all.add(Property.MOST);
            all.add(Property.YIELD);
        }
        if (!made && bench.potAsProduct(block).isEmpty()) {
            all.add(Property.CLASS_TOTAL);
            if (block.ribbon().isPresent()) {
                all.add(Property.CLASS_LENGTH);
            }
        }
        if (bench.potAsReactant(block).isPresent()) {
            all.add(Property.EXCESS);
            all.add(Property.LEFT_OVER);
        }
        if (block.is(Kind.SOLUTION) && block.madeFrom().isPresent() && block.strength().isPresent() && bench.source(block)
                .isPresent()) {
            all.add(Property.TAKEN);
        }
        return all;
    }

    /**
     * Mass, volume and amount of substance, as far as one follows from the other: the volume of a liquid by its density, of a
     * solid by one that the author types.
     */
    private static Set<Property> amounts(QuantityBlock block, boolean known, boolean density, boolean made, boolean strength) {
        Set<Property> all = EnumSet.noneOf(Property.class);
        switch (block.kind()) {
            case SOLID -> {
                all.add(Property.MASS);
                if (block.density().isPresent()) {
                    all.add(Property.VOLUME);
                }
            }
            case LIQUID -> {
                boolean byMass = made || block.rule() instanceof AmountRule.Stated s && s.what() != AmountRule.Measured.VOLUME;
                all.add(byMass ? Property.MASS : Property.VOLUME);
                if (density) {
                    all.add(byMass ? Property.VOLUME : Property.MASS);
                }
                known &= byMass || density;
            }
            case SOLUTION -> {
                if (strength || !made) {
                    all.add(Property.VOLUME);
                }
                if (known && density) {
                    all.add(Property.MASS);
                }
            }
            default -> {
                all.add(Property.VOLUME);
                if (known) {
                    all.add(Property.MASS);
                }
            }
        }
        if (known) {
            all.add(Property.MOLES);
        }
        return all;
    }
}
