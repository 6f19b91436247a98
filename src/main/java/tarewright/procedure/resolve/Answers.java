package tarewright.procedure.resolve;

import tarewright.derivation.Figure;
import tarewright.procedure.declare.Precision;
import tarewright.quantity.Digits;

/** How an answer's value is shown. */
final class Answers {
    private Answers() {
    }

    /** A figure with the decimals that the author asks for; as it is where the author leaves it. */
    static Figure precise(Figure figure, Precision precision) {
        if (precision instanceof Precision.Decimals fixed) {
            return figure.shownTo(fixed.decimals());
        }
        if (precision instanceof Precision.Figures significant) {
            return figure.shownTo(Digits.decimalsOfSignificant(figure.shownValue(), significant.figures()));
        }
        return figure;
    }

    /** The same, and where the author leaves it the place of the leading digit of the standard uncertainty (in the coherent SI unit). */
    static Figure precise(Figure figure, Precision precision, double standardUncertainty) {
        boolean justified = precision instanceof Precision.Justified && figure.decimals().isEmpty() && standardUncertainty > 0;
        return justified ? figure.shownTo(Digits.decimalsFor(standardUncertainty / figure.unit().factor())) : precise(figure, precision);
    }
}
