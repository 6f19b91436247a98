package tarewright.derivation;

import java.util.Arrays;
import java.util.List;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Step.Term;
import tarewright.quantity.Rounding;
import tarewright.quantity.Unit;

/** Plain figures, without a unit, from which the tests of this floor build derivations. */
final class Nodes {
    private Nodes() {
    }

    static Figure exact(double value) {
        return Figure.given(Symbol.alone("k"), Unit.ONE, value, new Origin.Counted());
    }

    static Figure input(double value, double standardUncertainty) {
        return Figure.given(Symbol.alone("x"), Unit.ONE, value, new Origin.Author()).uncertain(standardUncertainty);
    }

    static Figure of(Step step) {
        return Figure.of(Symbol.alone("y"), Unit.ONE, step);
    }

    static Figure product(Figure... factors) {
        return of(new Step.Product(1, Arrays.stream(factors).map(f -> new Power(f, 1)).toList()));
    }

    static Figure quotient(Figure above, Figure below) {
        return of(new Step.Product(1, List.of(new Power(above, 1), new Power(below, -1))));
    }

    static Figure difference(Figure from, Figure minus) {
        return of(new Step.Sum(List.of(new Term(1, from), new Term(-1, minus))));
    }

    static Figure mean(Figure... figures) {
        return of(new Step.Sum(Arrays.stream(figures).map(f -> new Term(1.0 / figures.length, f)).toList()));
    }

    static Figure least(Figure... figures) {
        return of(new Step.Extreme(true, List.of(figures)));
    }

    /** Read off an instrument so finely divided that rounding does not show, with an error of its own. */
    static Figure read(Figure truth, double standardUncertainty) {
        return of(new Step.Read(truth, new Rounding(Rounding.Direction.NEAREST, 1e-9))).uncertain(standardUncertainty);
    }

    static Figure set(Figure target, double division, double standardUncertainty) {
        return of(new Step.Set(target, new Rounding(Rounding.Direction.NEAREST, division), Reason.INSTRUMENT)).uncertain(standardUncertainty);
    }

    /** A figure that stands on 2⁶⁰ ways to one source: whoever walks every way never comes back. */
    static Figure doubled(Figure source) {
        Figure figure = source;
        for (int i = 0; i < 60; i++) {
            figure = mean(figure, figure);
        }
        return figure;
    }
}
