package tarewright.chemistry.solution;

import java.util.List;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.UsualUnits;

/**
 * One solution made in one step: so much of a source, made up with water to a volume.
 *
 * @param strength amount concentration of what is made
 * @param volume that it is made up to
 * @param source what it is made from
 * @param exact mass or volume to take, as worked out
 * @param taken the same as it is set on its instrument
 * @param delivery the instrument
 * @param check solute in against solute out
 */
public record Preparation(Figure strength, Figure volume, Source source, Figure exact, Figure taken, Delivery delivery,
        AmountCheck check) {
    /** Made from a source that is strong enough. @param strength in mol/m³ as SI @param volume in m³ as SI */
    static Preparation of(Figure strength, Figure volume, Source source) {
        Figure moles = Figure.of(Symbol.alone("n"), UsualUnits.of(Dimension.AMOUNT, strength.value() * volume.value()),
                new Step.Product(1, List.of(new Power(strength, 1), new Power(volume, 1))));
        Figure exact = source.take(moles);
        Figure taken = Delivery.set(exact, source);
        return new Preparation(strength, volume, source, exact, taken, Delivery.of(taken, source),
                new AmountCheck(source.moles(taken), moles, Delivery.COARSE));
    }

    /** By what the source is diluted; 1 where it is taken as it is. Of a solid there is none: 1. */
    public double factor() {
        return source.strongest().map(c -> c.value() / strength.value()).orElse(1.0);
    }
}
