package tarewright.document;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tarewright.chemistry.Formula;
import tarewright.chemistry.ShownFormula;
import tarewright.chemistry.ShownResult;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Referent;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.resolve.ResolvedReading;

/**
 * What a student must not read before it is measured or worked out: what the students find, every expected reading, what a
 * burette will deliver, and whatever was worked out from these. Told by the step that made a figure, since the same figure may
 * be shown in several units.
 */
final class Secrets {
    private final Resolved procedure;
    private final Set<Step> steps = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<Step> read = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Map<Step, Boolean> judged = new IdentityHashMap<>();
    private final Map<Formula, ShownFormula> shown = new LinkedHashMap<>();

    private Secrets(Resolved procedure) {
        this.procedure = procedure;
    }

    static Secrets of(Resolved procedure) {
        Secrets secrets = new Secrets(procedure);
        procedure.quantities().forEach(secrets::quantity);
        procedure.readings().forEach(secrets::reading);
        procedure.referents().values().forEach(referent -> {
            if (referent instanceof Referent.Blank blank) {
                blank.expected().forEach(secrets::readOff);
            }
        });
        return secrets;
    }

    private void quantity(ResolvedQuantity quantity) {
        QuantityBlock block = quantity.block();
        if (block.found()) {
            for (Property property : List.of(Property.MOLES, Property.STRENGTH, Property.PURITY, Property.DENSITY)) {
                quantity.figure(property).ifPresent(f -> steps.add(f.step()));
            }
            if (massIsFound(block)) {
                quantity.figure(Property.MASS).ifPresent(f -> steps.add(f.step()));
            }
        }
        quantity.amount().filter(a -> isEndPoint(block, a)).ifPresent(a -> steps.add(a.step()));
        block.shownAs().map(Formula::parseShown).ifPresent(result -> {
            if (result instanceof ShownResult.Ok ok) {
                quantity.matter().ifPresent(m -> shown.put(m.formula(), ok.formula()));
            }
            quantity.figure(Property.MOLAR_MASS).ifPresent(f -> steps.add(f.step()));
        });
    }

    /** What is read off a burette follows what the sample holds: no group is told to measure out so much. */
    private static boolean isEndPoint(QuantityBlock block, Figure amount) {
        return block.rule() instanceof AmountRule.For && (block.is(Kind.SOLUTION) || block.is(Kind.LIQUID))
                && amount.step() instanceof Step.Read;
    }

    /** Of a solid without a purity it is the mass that is found, unless it is weighed. */
    private boolean massIsFound(QuantityBlock block) {
        return !block.is(Kind.SOLUTION) && !block.is(Kind.GAS) && block.purity().isEmpty() && block.shownAs().isEmpty()
                && procedure.procedure().readings().stream()
                        .noneMatch(r -> r.of().filter(of -> measures(of.value(), block, Property.MASS)).isPresent());
    }

    private static boolean measures(String of, QuantityBlock block, Property property) {
        return of.equals(property.words() + " of " + block.name()) || of.equals(block.name());
    }

    private void reading(ResolvedReading reading) {
        steps.add(reading.value().step());
        read.add(reading.value().step());
        reading.each().forEach(each -> {
            steps.add(each.step());
            readOff(each);
        });
        reading.block().of().ifPresent(of -> procedure.quantities().forEach(q -> {
            for (Property property : Property.values()) {
                boolean itself = property == q.measuredOut() && of.value().equals(q.name());
                if (itself || of.value().equals(property.words() + " of " + q.name())) {
                    q.figure(property).ifPresent(f -> read.add(f.step()));
                }
            }
        }));
    }

    private void readOff(Figure figure) {
        read.add(figure.step());
        figure.from().forEach(f -> read.add(f.step()));
    }

    /** Whether a figure tells what is to be found, or what a reading will be. */
    boolean hides(Figure figure) {
        Boolean known = judged.get(figure.step());
        if (known == null) {
            known = steps.contains(figure.step()) || figure.from().stream().anyMatch(this::hides);
            judged.put(figure.step(), known);
        }
        return known;
    }

    /** Whether a figure is one that a reading measures. */
    boolean isRead(Figure figure) {
        return read.contains(figure.step());
    }

    /** Whether what a group uses of it is what they read off, such as a titre. */
    boolean hidesAmount(ResolvedQuantity quantity) {
        return quantity.amount().filter(this::hides).isPresent();
    }

    /** Whether the strength, purity or mass of a block, or of the bottle that it is taken from, is to be found. */
    boolean isFound(QuantityBlock block) {
        return block.found() || block.portionOf().flatMap(p -> procedure.procedure().quantity(p.value()))
                .filter(b -> b != block && b.found()).isPresent();
    }

    /** The formula to show in the place of one whose number is to be found. */
    Optional<ShownFormula> shownAs(Formula formula) {
        return shown.entrySet().stream().filter(e -> e.getKey().sameComposition(formula)).map(Map.Entry::getValue).findFirst();
    }

    /** Every formula shown in the place of another. */
    Iterable<ShownFormula> shownFormulas() {
        return List.copyOf(shown.values());
    }
}
