package tarewright.procedure.prepare;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.StockBlock;
import tarewright.quantity.Digits;
import tarewright.quantity.Dimension;
import tarewright.quantity.Typed;
import tarewright.quantity.UsualUnits;

/** What is taken of a bottle, in the terms in which the bottle is packed: a volume against packs by mass, a mass against packs by volume, by the density on its label. */
final class Packed {
    private static final int FIGURES = 4;

    private Packed() {
    }

    /** The same draw where it is measured as it is packed, or where no density tells. */
    static Draw of(Draw draw) {
        Optional<Typed> like = draw.stock().flatMap(s -> s.pack().or(s::onHand)).map(At::value);
        Optional<Typed> density = draw.stock().flatMap(StockBlock::density).map(At::value);
        if (like.isEmpty() || density.isEmpty() || like.get().dimension().equals(draw.amount().dimension())) {
            return draw;
        }
        boolean toMass = like.get().dimension().equals(Dimension.MASS) && draw.amount().dimension().equals(Dimension.VOLUME);
        boolean toVolume = like.get().dimension().equals(Dimension.VOLUME) && draw.amount().dimension().equals(Dimension.MASS);
        if (!toMass && !toVolume) {
            return draw;
        }
        Figure rho = Figure.given(Symbol.alone("ρ"), density.get().unit(), density.get().si(), new Origin.Author());
        double about = draw.amount().value() * (toMass ? rho.value() : 1 / rho.value());
        Figure amount = Figure.of(draw.amount().symbol(), UsualUnits.of(like.get().dimension(), about), new Step.Product(1, List.of(new Power(draw.amount(), 1), new Power(rho, toMass ? 1 : -1))));
        String measured = draw.key().substring(0, draw.key().length() - draw.amount().dimension().toString().length());
        return new Draw(measured + amount.dimension(), draw.thing(), draw.stock(),
                amount.value() > 0 ? amount.shownTo(Math.max(0, Digits.decimalsOfSignificant(amount.shownValue(), FIGURES))) : amount);
    }
}
