package tarewright.procedure.prepare;

import tarewright.derivation.Figure;
import tarewright.derivation.Reason;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.quantity.Rounding;
import tarewright.quantity.Unit;

/** Rounding to a number of significant figures in the figure's own unit: what can be weighed or measured out without a second thought. */
final class Rounded {
    private static final double SAME = 1e-9;

    private Rounded() {
    }

    /** Enough, and at most a tenth more at two figures. Things that are counted stay whole. */
    static Figure up(Figure figure, int figures, Symbol symbol) {
        return to(figure, figures, symbol, Rounding.Direction.UP);
    }

    static Figure down(Figure figure, int figures, Symbol symbol) {
        return to(figure, figures, symbol, Rounding.Direction.DOWN);
    }

    private static Figure to(Figure figure, int figures, Symbol symbol, Rounding.Direction direction) {
        double shown = figure.shownValue();
        if (!(shown > 0) || Double.isInfinite(shown)) {
            return figure.as(symbol);
        }
        int decimals = figures - 1 - exponent(shown);
        decimals = isCounted(figure.unit()) ? Math.min(0, decimals) : decimals;
        Rounding rounding = new Rounding(direction, Math.pow(10, -decimals) * figure.unit().factor());
        return Figure.of(symbol, figure.unit(), new Step.Set(figure, rounding, Reason.ENOUGH)).shownTo(Math.max(0, decimals));
    }

    private static boolean isCounted(Unit unit) {
        return unit.symbol().startsWith("drop");
    }

    /** The power of ten of the first figure; a hair below a power counts as that power. */
    private static int exponent(double value) {
        return (int) Math.floor(Math.log10(value * (1 + SAME)));
    }
}
