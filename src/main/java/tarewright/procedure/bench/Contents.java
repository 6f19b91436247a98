package tarewright.procedure.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.Substance;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.StandardUncertainty;
import tarewright.quantity.Strength;
import tarewright.quantity.Typed;
import tarewright.safety.Content;
import tarewright.safety.Form;
import tarewright.safety.Part;

/**
 * What is in a bottle, as the classification asks for it: always the real strength, whatever its label says. Where less was found on the day than the procedure types,
 * what is typed counts: a reading makes nothing milder.
 */
final class Contents {
    private static final double PER_LITRE = 1000;
    /** Of an ideal gas at 0 °C and 101.325 kPa (CODATA 2022): twenty volumes give twenty litres of oxygen from a litre. */
    private static final double LITRES_OF_A_MOLE = 22.414;

    private Contents() {
    }

    static Form form(QuantityBlock block) {
        return switch (block.kind()) {
            case SOLID -> block.ribbon().isPresent() ? Form.MASSIVE : Form.SOLID;
            case LIQUID -> Form.LIQUID;
            case SOLUTION -> Form.SOLUTION;
            case GAS -> Form.GAS;
        };
    }

    /** The substances in a bottle. What is not known is in it as undiluted. */
    static List<Part> parts(ResolvedQuantity bottle, String label) {
        List<Part> parts = new ArrayList<>();
        Content content = content(bottle);
        parts.add(bottle.matter().map(m -> part(m, content))
                .orElseGet(() -> Part.of(bottle.block().mixture().map(m -> m.value().name()).orElse(label), content)));
        bottle.block().also().forEach(a -> parts.add(part(a.matter(), countsTheSolute(a.strength().value(), a.matter())
                ? content(a.strength().value(), a.matter(), OptionalDouble.empty()) : Content.unstated())));
        return parts;
    }

    static Part part(Matter matter, Content content) {
        return Part.of(matter.substance().map(Substance::name).orElse(matter.written()), matter.formula().plain(), content);
    }

    private static Content content(ResolvedQuantity bottle) {
        QuantityBlock block = bottle.block();
        if (block.is(Kind.LIQUID) && block.purity().isPresent()) {
            Typed purity = block.purity().get().value();
            Optional<Figure> purer = bottle.typed(Property.PURITY).filter(t -> t.value() > purity.si());
            return purer.isPresent() ? new Content.MassShare(Math.min(1, purer.get().value()), purer.get().standardUncertainty(), Optional.empty()) : new Content.MassShare(Math.min(1, purity.si()), uncertainty(purity), Optional.empty());
        }
        if (!block.is(Kind.SOLUTION)) {
            return Content.pure();
        }
        OptionalDouble density = bottle.figure(Property.DENSITY).map(d -> OptionalDouble.of(d.value() / PER_LITRE))
                .orElse(OptionalDouble.empty());
        Optional<Figure> stronger = bottle.typed(Property.STRENGTH).filter(t -> bottle.figure(Property.STRENGTH).filter(f -> f.value() < t.value()).isPresent());
        if (stronger.isPresent()) {
            return molar(stronger.get(), density);
        }
        if (block.strength().isPresent() && bottle.matter().isPresent()
                && !(block.strength().get().value() instanceof Strength.VolumeStrength)
                && countsTheSolute(block.strength().get().value(), bottle.matter().get())) {
            return content(block.strength().get().value(), bottle.matter().get(), density);
        }
        return bottle.figure(Property.STRENGTH).map(c -> molar(c, density)).orElseGet(Content::unstated);
    }

    /** Whether a strength counts the solute, with or without its water. Of 61.6 % as P₂O₅ 85 % are phosphoric acid: the share itself would say too little. */
    private static boolean countsTheSolute(Strength strength, Matter matter) {
        return strength.asFormula().isEmpty() || Formula.parse(strength.asFormula().get()) instanceof FormulaResult.Ok ok
                && ok.formula().anhydrous().sameComposition(matter.formula().anhydrous());
    }

    /** @param concentration in mol/m³ as SI */
    static Content molar(Figure concentration, OptionalDouble density) {
        return new Content.Molar(concentration.value() / PER_LITRE, concentration.standardUncertainty() / PER_LITRE, density);
    }

    static Content content(Strength strength, Matter matter, OptionalDouble density) {
        Typed typed = strength.typed();
        double value = typed.si();
        double uncertainty = uncertainty(typed);
        Optional<String> counted = Optional.of(strength.asFormula().orElse(matter.formula().plain()));
        if (strength instanceof Strength.Molar) {
            return new Content.Molar(value / PER_LITRE, uncertainty / PER_LITRE, density);
        }
        if (strength instanceof Strength.MassPerVolume) {
            return new Content.MassPerVolume(value / PER_LITRE, uncertainty / PER_LITRE, density, counted);
        }
        if (strength instanceof Strength.MassFraction) {
            return new Content.MassShare(Math.min(1, value), uncertainty, counted);
        }
        if (strength instanceof Strength.VolumeFraction) {
            OptionalDouble pure = matter.substance().flatMap(Substance::density)
                    .map(d -> OptionalDouble.of(d.kilogramsPerCubicMetre() / PER_LITRE)).orElse(OptionalDouble.empty());
            return new Content.VolumeShare(Math.min(1, value), uncertainty, pure, density);
        }
        if (strength instanceof Strength.VolumeStrength && matter.formula().plain().equals("H2O2")) {
            return new Content.Molar(2 * value / LITRES_OF_A_MOLE, 2 * uncertainty / LITRES_OF_A_MOLE, density);
        }
        return Content.unstated();
    }

    private static double uncertainty(Typed typed) {
        return StandardUncertainty.rectangular(typed.plusMinusSi().orElse(typed.lastDigit() * typed.unit().factor() / 2));
    }
}
