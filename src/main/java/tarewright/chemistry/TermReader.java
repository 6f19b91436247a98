package tarewright.chemistry;

import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.Equation.Term;
import tarewright.chemistry.EquationTrouble.BadEquationSyntax;
import tarewright.chemistry.EquationTrouble.UnknownState;
import tarewright.chemistry.FormulaTrouble.UnresolvedVariable;
import tarewright.exact.Rational;

/** Reads one term of an equation: a coefficient, a formula, a state. */
final class TermReader {
    private static final int MOST_DIGITS = 6;
    private static final Pattern COEFFICIENT = Pattern.compile("([0-9]*[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[0-9]+(?:/[0-9]+)?)\\s*");
    private static final Pattern DECIMAL = Pattern.compile("[0-9]*[.,][0-9]+(?=\\s)|[0-9]+[.,][0-9]+");
    private static final Pattern NOUGHT = Pattern.compile("0+(?:/[0-9]+)?|[0-9]+/0+");
    private static final Pattern LETTER = Pattern.compile("([a-z])\\s+(?=\\S)");
    private static final Pattern STATE = Pattern.compile("\\(([a-z][a-z.]*)\\)$");

    /** A term, or what stood in the way by offsets from the start of the term: exactly one of them. */
    record Outcome(Optional<Term> term, Optional<EquationTrouble> trouble) {
        private static Outcome of(EquationTrouble trouble) {
            return new Outcome(Optional.empty(), Optional.of(trouble));
        }
    }

    private final String text;
    private final int offset;

    private TermReader(String text, int offset) {
        this.text = text;
        this.offset = offset;
    }

    /** Reads a text that is not empty, without spaces around it; its offset is that in the whole equation. */
    static Outcome read(String text, int offset) {
        return new TermReader(text, offset).whole();
    }

    private Outcome whole() {
        Matcher decimal = DECIMAL.matcher(text);
        if (decimal.lookingAt()) {
            return mistake(EquationMistake.DECIMAL_COEFFICIENT, 0, decimal.end());
        }
        Matcher letter = LETTER.matcher(text);
        if (letter.lookingAt()) {
            return Outcome.of(new UnresolvedVariable(letter.group(1), Optional.of(text.substring(letter.end())),
                    Optional.empty(), 0, 1));
        }
        Matcher coefficient = COEFFICIENT.matcher(text);
        if (!coefficient.lookingAt()) {
            return species(0, Optional.empty());
        }
        int digits = coefficient.end(1);
        if (NOUGHT.matcher(coefficient.group(1)).matches()) {
            return mistake(EquationMistake.ZERO_COEFFICIENT, 0, digits);
        }
        Optional<Rational> value = Fractions.parse(coefficient.group(1)).filter(TermReader::isOfBearableSize);
        if (value.isEmpty()) {
            return mistake(EquationMistake.COEFFICIENT_TOO_LARGE, 0, digits);
        }
        return coefficient.end() == text.length() ? mistake(EquationMistake.COEFFICIENT_ALONE, 0, digits)
                : species(coefficient.end(), value);
    }

    private static boolean isOfBearableSize(Rational coefficient) {
        BigInteger limit = BigInteger.TEN.pow(MOST_DIGITS);
        return coefficient.numerator().compareTo(limit) < 0 && coefficient.denominator().compareTo(limit) < 0;
    }

    private Outcome species(int from, Optional<Rational> coefficient) {
        Matcher bracket = STATE.matcher(text).region(from, text.length());
        boolean written = bracket.find();
        int end = written ? bracket.start() : text.length();
        Optional<State> state = written ? State.of(bracket.group(1)) : Optional.empty();
        if (written && state.isEmpty()) {
            return Outcome.of(new UnknownState(bracket.group(1), end, text.length()));
        }
        if (written && text.substring(from, end).isBlank()) {
            return mistake(EquationMistake.STATE_ALONE, end, text.length());
        }
        FormulaResult formula = Formula.parse(text.substring(from, end));
        if (formula instanceof FormulaResult.Bad bad) {
            return Outcome.of(bad.trouble().shifted(from));
        }
        Species species = new Species(((FormulaResult.Ok) formula).formula(), state);
        return new Outcome(Optional.of(new Term(coefficient, species, offset, offset + text.length())), Optional.empty());
    }

    private Outcome mistake(EquationMistake reason, int from, int to) {
        return Outcome.of(new BadEquationSyntax(reason, text.substring(from, to), from, to));
    }
}
