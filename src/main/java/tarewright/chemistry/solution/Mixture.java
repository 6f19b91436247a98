package tarewright.chemistry.solution;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Step.Term;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;

/**
 * Two solutions of one solute mixed to a strength between them, the alligation by amounts: of the stronger,
 * V₁ = V (c − c₂) / (c₁ − c₂). The volumes are taken to add up, which holds for dilute solutions; of strong acids, alkalis and
 * alcohol it does not.
 *
 * @param first volume of the first solution
 * @param second volume of the second
 * @param check the amounts that both bring against strength times volume
 */
public record Mixture(Figure first, Figure second, AmountCheck check) {
    /** What comes of it. */
    public sealed interface Result {
        Optional<Mixture> value();
    }

    /** A mixture that can be made. */
    public record Made(Mixture mixture) implements Result {
        @Override
        public Optional<Mixture> value() {
            return Optional.of(mixture);
        }
    }

    /** One that cannot. */
    public record Refused(SolutionTrouble trouble) implements Result {
        @Override
        public Optional<Mixture> value() {
            return Optional.empty();
        }
    }

    /**
     * The volumes to mix.
     *
     * @param first amount concentration of one of the two
     * @param second of the other; not the same
     * @param wanted from the weaker to the stronger
     * @param volume of the mixture
     */
    public static Result of(Figure first, Figure second, Figure wanted, Figure volume) {
        double weaker = Math.min(first.value(), second.value());
        double stronger = Math.max(first.value(), second.value());
        if (!(wanted.value() >= weaker && wanted.value() <= stronger && weaker < stronger)) {
            return new Refused(new SolutionTrouble.MixingImpossible(wanted.value(), weaker, stronger));
        }
        Figure ofFirst = part(first, second, wanted, volume);
        Figure ofSecond = part(second, first, wanted, volume);
        Unit moles = new Unit("mol", Dimension.AMOUNT, 1);
        Figure in = Figure.of(Symbol.ofName("n", "in"), moles, new Step.Sum(List.of(new Term(1, product(moles, first, ofFirst)),
                new Term(1, product(moles, second, ofSecond)))));
        return new Made(new Mixture(ofFirst, ofSecond, new AmountCheck(in, product(moles, wanted, volume), 1e-9)));
    }

    private static Figure part(Figure of, Figure other, Figure wanted, Figure volume) {
        Figure needed = difference(wanted, other);
        Figure span = difference(of, other);
        return Figure.of(Symbol.ofName("V", of.symbol().of()), volume.unit(),
                new Step.Product(1, List.of(new Power(volume, 1), new Power(needed, 1), new Power(span, -1))));
    }

    private static Figure difference(Figure a, Figure b) {
        return Figure.of(Symbol.alone(""), a.unit(), new Step.Sum(List.of(new Term(1, a), new Term(-1, b))));
    }

    private static Figure product(Unit unit, Figure strength, Figure volume) {
        return Figure.of(Symbol.alone("n"), unit, new Step.Product(1, List.of(new Power(strength, 1), new Power(volume, 1))));
    }
}
