package tarewright.procedure.expression;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.quantity.Dimension;
import tarewright.quantity.Kinds;
import tarewright.quantity.QuantityTrouble;
import tarewright.quantity.StandardUncertainty;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.text.Span;

/**
 * Works a formula out into one figure with a readable derivation. A chain of products and quotients is one {@link Step.Product},
 * a chain of sums and differences one {@link Step.Sum}; a whole number is folded into the coefficient; any other number and any
 * quantity is a {@link Step.Given} of the author's, exact unless limits were typed.
 *
 * <p>A typed quantity, and a sum inside a product, is a figure whose symbol is empty words: it is shown by its value, or by its
 * own working in brackets. A mean, largest or smallest inside a formula is named by the author's words for it.
 */
public final class Evaluator {
    private static final int HIGHEST_EXPONENT = 9;
    private static final int HIGHEST_POWER = 99;
    private static final double GREATEST = 1e100;
    private static final double LARGEST_COUNT = 1e6;

    private final Lookup lookup;
    private final List<Finding> findings = new ArrayList<>();

    private Evaluator(Lookup lookup) {
        this.lookup = lookup;
    }

    /**
     * The figure that a formula gives.
     *
     * @param result what the figure is called
     * @param shownIn the unit to show it in; where there is none, the unit that the terms of a sum share, else the usual one
     * @return no figure and at least one finding where something is wrong, whether found here or by {@code lookup}
     */
    public static Found<Optional<Figure>> evaluate(Expression expression, Symbol result, Optional<Unit> shownIn, Lookup lookup) {
        Evaluator evaluator = new Evaluator(lookup);
        Optional<Figure> figure = evaluator.of(expression)
                .flatMap(working -> evaluator.shown(expression, working, result, shownIn));
        return new Found<>(figure, evaluator.findings);
    }

    private Optional<Figure> shown(Expression expression, Working working, Symbol result, Optional<Unit> shownIn) {
        if (shownIn.isEmpty()) {
            return Optional.of(Figures.of(working, result));
        }
        Unit unit = shownIn.get();
        if (!unit.dimension().equals(working.dimension())) {
            String text = text(expression);
            QuantityTrouble trouble = new QuantityTrouble.WrongDimension(text, unit.dimension(), working.dimension(),
                    unit.symbol(), Units.of(unit.dimension()), 0, expression.span().text().length());
            return fail(QuantityFinding.in(expression.span(), trouble));
        }
        Figure figure = Figures.of(working, result);
        if (unit.fromZero() || working.scale() == Scale.POINT) {
            return Optional.of(figure.in(unit));
        }
        // Ten kelvin between two temperatures are ten degrees Celsius: the zero of the scale plays no part.
        return working.scale() == Scale.DIFFERENCE
                ? Optional.of(figure.in(new Unit(unit.symbol(), unit.dimension(), unit.factor())))
                : fail(new ReckoningFinding.TemperatureOrDifference(text(expression), unit.symbol(), expression.span()));
    }

    /** Empty where there is no value, for a reason that a finding has given. */
    private Optional<Working> of(Expression expression) {
        Optional<Working> working;
        if (expression instanceof Expression.Quantity quantity) {
            working = Optional.of(typed(quantity.typed()));
        } else if (expression instanceof Expression.Named named) {
            working = lookup.figure(named, findings::add).map(figure -> new Working.Whole(figure, false));
        } else if (expression instanceof Expression.Negated negated) {
            working = of(negated.of()).map(Working::negated);
        } else if (expression instanceof Expression.Selected selected) {
            working = selected(selected);
        } else {
            working = binary((Expression.Binary) expression);
        }
        return working.flatMap(w -> inRange(w, expression.span()));
    }

    /** A whole number of a sensible size is a factor without a name of its own. */
    private static Working typed(Typed typed) {
        boolean counted = !typed.explicitUnit() && typed.decimals() == 0 && typed.plusMinus().isEmpty()
                && Math.abs(typed.value()) <= LARGEST_COUNT;
        if (counted) {
            return Working.Factors.number(typed.value());
        }
        Figure given = Figure.given(Working.UNNAMED, typed.unit(), typed.si(), new Origin.Author()).shownTo(typed.decimals());
        return new Working.Whole(typed.plusMinusSi().isPresent()
                ? given.uncertain(StandardUncertainty.rectangular(typed.plusMinusSi().getAsDouble())) : given, true);
    }

    private Optional<Working> selected(Expression.Selected selected) {
        List<Figure> readings = lookup.repeated(selected.of(), findings::add);
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        Symbol symbol = Symbol.words(selected.selector().words() + " " + selected.of().text());
        if (selected.selector() == Selector.MEAN) {
            return mean(selected, symbol, readings);
        }
        Figure extreme = Figure.of(symbol, readings.get(0).unit(),
                new Step.Extreme(selected.selector() == Selector.SMALLEST, readings));
        return Optional.of(new Working.Whole(readings.get(0).decimals().isPresent()
                ? extreme.shownTo(readings.get(0).decimals().getAsInt()) : extreme, true));
    }

    /**
     * The mean under which the lookup already knows a repeated reading, so that there is one mean and not several; else one
     * of our own.
     */
    private Optional<Working> mean(Expression.Selected selected, Symbol symbol, List<Figure> readings) {
        Optional<Figure> known = lookup.figure(selected.of(), findings::add).filter(f -> f.from().equals(readings));
        if (known.isPresent()) {
            return Optional.of(new Working.Whole(known.get(), true));
        }
        double share = 1.0 / readings.size();
        Scale scale = Scale.of(readings.get(0).unit());
        List<Step.Term> terms = readings.stream().map(r -> new Step.Term(share, r)).toList();
            return Optional.of(new Working.Whole(Figures.sum(symbol, terms, scale), true));
    }

    private Optional<Working> binary(Expression.Binary binary) {
        Optional<Working> left = of(binary.left());
        if (binary.operator() == Operator.RAISE) {
            return left.flatMap(base -> raised(binary, base));
        }
        Optional<Working> right = of(binary.right());
        if (left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        return switch (binary.operator()) {
            case ADD -> joined(binary, left.get(), right.get(), false);
            case SUBTRACT -> joined(binary, left.get(), right.get(), true);
            case MULTIPLY -> Optional.of(left.get().factors().times(right.get().factors()));
            case DIVIDE -> divided(binary, left.get(), right.get());
            case RAISE -> throw new IllegalStateException("raised above");
        };
    }

    private Optional<Working> joined(Expression.Binary binary, Working left, Working right, boolean subtracted) {
        if (!left.dimension().equals(right.dimension())) {
            return fail(new ReckoningFinding.DimensionsDiffer(
                    text(binary.left()), Kinds.name(left.dimension()), unit(left),
                    text(binary.right()), Kinds.name(right.dimension()), unit(right),
                    binary.span(), List.of(binary.left().span(), binary.right().span())));
        }
        if (left instanceof Working.Factors a && right instanceof Working.Factors b && a.isNumber() && b.isNumber()) {
            return Optional.of(Working.Factors.number(
                    subtracted ? a.coefficient() - b.coefficient() : a.coefficient() + b.coefficient()));
        }
        Optional<Scale> scale = Scale.joined(left.scale(), right.scale(), subtracted);
        if (scale.isEmpty()) {
            return fail(new ReckoningFinding.TemperaturesAdded(text(binary.left()), text(binary.right()), binary.span()));
        }
        Working.Terms added = subtracted ? right.terms().negated() : right.terms();
        return Optional.of(left.terms().plus(added, scale.get()));
    }

    private Optional<Working> divided(Expression.Binary binary, Working left, Working right) {
        if (right.value() == 0) {
            return fail(new ReckoningFinding.DivisionByZero(text(binary.right()), binary.right().span()));
        }
        return Optional.of(left.factors().over(right.factors()));
    }

    private Optional<Working> raised(Expression.Binary binary, Working base) {
        Optional<Double> exponent = literal(binary.right());
        double size = exponent.map(Math::abs).orElse(0.0);
        if (size != Math.rint(size) || size < 1 || size > HIGHEST_EXPONENT) {
            return fail(new ReckoningFinding.ExponentNotWhole(text(binary.right()), HIGHEST_EXPONENT, binary.right().span()));
        }
        if (exponent.orElseThrow() < 0 && base.value() == 0) {
            return fail(new ReckoningFinding.DivisionByZero(text(binary.left()), binary.left().span()));
        }
        return Optional.of(base.factors().raised(exponent.orElseThrow().intValue()));
    }

    /**
     * A number that stands in the formula as such, perhaps with a sign; the dimension of a power must be known without
     * reckoning.
     */
    private static Optional<Double> literal(Expression expression) {
        if (expression instanceof Expression.Negated negated) {
            return literal(negated.of()).map(number -> -number);
        }
        return expression instanceof Expression.Quantity quantity && !quantity.typed().explicitUnit()
                && quantity.typed().plusMinus().isEmpty() ? Optional.of(quantity.typed().value()) : Optional.empty();
    }

    private Optional<Working> inRange(Working working, Span at) {
        boolean powers = !(working instanceof Working.Factors factors)
                || factors.powers().stream().allMatch(p -> Math.abs(p.exponent()) <= HIGHEST_POWER);
        double value = powers ? Math.abs(working.value()) : Double.NaN;
        boolean reckonable = value == 0 ? !vanished(working) : value >= 1 / GREATEST && value <= GREATEST;
        return reckonable ? Optional.of(working) : fail(new ReckoningFinding.ResultOutOfRange(Letters.shortened(at.text()), at));
    }

    /** Whether a product is zero though no factor is. */
    private static boolean vanished(Working working) {
        return working instanceof Working.Factors factors && factors.coefficient() != 0
                && factors.powers().stream().allMatch(p -> p.figure().value() != 0);
    }

    private <T> Optional<T> fail(Finding finding) {
        findings.add(finding);
        return Optional.empty();
    }

    private static Optional<String> unit(Working working) {
        String symbol = Figures.of(working, Working.UNNAMED).unit().symbol();
        return symbol.isEmpty() ? Optional.empty() : Optional.of(symbol);
    }

    private static String text(Expression expression) {
        return Letters.shortened(expression.span().text());
    }
}
