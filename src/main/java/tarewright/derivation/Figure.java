package tarewright.derivation;

import java.util.List;
import java.util.OptionalInt;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;

/**
 * A value with its unit, its standard uncertainty and the step that made it.
 *
 * <p>Figures are nodes of a graph and are told apart by identity: two weighings of 0.20 g are two figures, and one figure that is used twice
 * counts once when uncertainties are combined.
 */
public final class Figure {
    private final Symbol symbol;
    private final Unit unit;
    private final Step step;
    private final double value;
    private final double ownUncertainty;
    private final OptionalInt decimals;
    private final Gradient gradient;

    private Figure(Symbol symbol, Unit unit, Step step, double ownUncertainty, OptionalInt decimals) {
        this.symbol = symbol;
        this.unit = unit;
        this.step = step;
        this.ownUncertainty = ownUncertainty;
        this.decimals = decimals;
        double[] of = step.from().stream().mapToDouble(Figure::value).toArray();
        this.value = step.value(of);
        this.gradient = Gradient.through(this, step, of);
    }

    /**
     * A figure by its step.
     *
     * @param unit the unit to show it in; its dimension is the figure's
     */
    public static Figure of(Symbol symbol, Unit unit, Step step) {
        return new Figure(symbol, unit, step, 0, OptionalInt.empty());
    }

    /** A figure that was not worked out, with no uncertainty. @param value in the coherent SI unit */
    public static Figure given(Symbol symbol, Unit unit, double value, Origin origin) {
        return of(symbol, unit, new Step.Given(value, origin));
    }

    /** The same figure with a standard uncertainty of its own, in the coherent SI unit, that comes on top of what passes through its step. */
    public Figure uncertain(double standardUncertainty) {
        if (!(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException("standard uncertainty " + standardUncertainty);
        }
        return new Figure(symbol, unit, step, standardUncertainty, decimals);
    }

    /** The same figure, always shown with so many decimals in its unit (negative: rounded to tens, hundreds). */
    public Figure shownTo(int decimalPlaces) {
        return new Figure(symbol, unit, step, ownUncertainty, OptionalInt.of(decimalPlaces));
    }

    /** The same figure shown in another unit of its dimension; decimals that were fixed are free again. */
    public Figure in(Unit other) {
        if (!other.dimension().equals(unit.dimension())) {
            throw new IllegalArgumentException(unit.symbol() + " is not " + other.symbol());
        }
        return new Figure(symbol, other, step, ownUncertainty, other.equals(unit) ? decimals : OptionalInt.empty());
    }

    /** The same value under another symbol, as a figure made from this one. */
    public Figure as(Symbol other) {
        Figure same = of(other, unit, new Step.Same(this));
        return decimals.isPresent() ? same.shownTo(decimals.getAsInt()) : same;
    }

    public Symbol symbol() {
        return symbol;
    }

    public Unit unit() {
        return unit;
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    public Step step() {
        return step;
    }

    public List<Figure> from() {
        return step.from();
    }

    /** In the coherent SI unit. */
    public double value() {
        return value;
    }

    /** In the figure's own unit. */
    public double shownValue() {
        return unit.fromSi(value);
    }

    /** The standard uncertainty that it brings in itself, in the coherent SI unit. */
    public double ownUncertainty() {
        return ownUncertainty;
    }

    /** Decimals in its unit, where they are fixed by what was typed or by an instrument. */
    public OptionalInt decimals() {
        return decimals;
    }

    /** How strongly each uncertain figure behind it moves it. */
    public Gradient gradient() {
        return gradient;
    }

    /** The combined standard uncertainty, in the coherent SI unit, to first order (JCGM 100:2008, 5.1.2). */
    public double standardUncertainty() {
        return gradient.standardUncertainty();
    }

    @Override
    public String toString() {
        return symbol.plain() + " = " + shownValue() + " " + unit.symbol();
    }
}
