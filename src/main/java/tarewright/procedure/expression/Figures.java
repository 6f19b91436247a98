package tarewright.procedure.expression;

import java.util.List;
import java.util.OptionalInt;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;
import tarewright.quantity.UsualUnits;

/** Closes a working into a figure, in the unit that suits it. */
final class Figures {
    private Figures() {
    }

    static Figure of(Working working, Symbol symbol) {
        if (working instanceof Working.Whole whole) {
            return whole(whole, symbol);
        }
        if (working instanceof Working.Terms terms) {
            return sum(symbol, terms.list(), terms.scale());
        }
        Working.Factors factors = (Working.Factors) working;
        Unit unit = UsualUnits.of(factors.dimension(), factors.value());
        return factors.isNumber() ? Figure.given(symbol, Unit.ONE, factors.coefficient(), new Origin.Author())
                : Figure.of(symbol, unit, factors.step());
    }

    private static Figure whole(Working.Whole whole, Symbol symbol) {
        Figure figure = whole.figure();
        if (!whole.made()) {
            return figure.as(symbol);
        }
        Figure renamed = Figure.of(symbol, figure.unit(), figure.step()).uncertain(figure.ownUncertainty());
        return figure.decimals().isPresent() ? renamed.shownTo(figure.decimals().getAsInt()) : renamed;
    }

    /** A sum or a mean: in the unit that its figures share, with the fewest decimals of theirs. */
    static Figure sum(Symbol symbol, List<Step.Term> terms, Scale scale) {
        Figure sum = Figure.of(symbol, unit(terms, scale), new Step.Sum(terms));
        OptionalInt decimals = decimals(terms, sum.unit());
        return decimals.isPresent() ? sum.shownTo(decimals.getAsInt()) : sum;
    }

    private static Unit unit(List<Step.Term> terms, Scale scale) {
        Unit first = terms.get(0).figure().unit();
        Dimension dimension = first.dimension();
        double value = new Step.Sum(terms).value(terms.stream().mapToDouble(t -> t.figure().value()).toArray());
        if (scale == Scale.POINT) {
            return terms.stream().map(t -> t.figure().unit()).filter(u -> !u.fromZero()).findFirst()
                    .orElse(UsualUnits.of(dimension, value));
        }
        boolean shared = first.fromZero() && terms.stream().allMatch(t -> t.figure().unit().equals(first));
        return shared ? first : UsualUnits.of(dimension, value);
    }

    /** Decimals are kept where every term has them in a unit of the same size, once each or in equal parts. */
    private static OptionalInt decimals(List<Step.Term> terms, Unit unit) {
        double size = Math.abs(terms.get(0).coefficient());
        boolean alike = size <= 1 && terms.stream().allMatch(t -> Math.abs(t.coefficient()) == size
                && t.figure().unit().factor() == unit.factor() && t.figure().decimals().isPresent());
        return alike ? terms.stream().mapToInt(t -> t.figure().decimals().orElseThrow()).min() : OptionalInt.empty();
    }
}
