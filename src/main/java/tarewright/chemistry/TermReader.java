package tarewright.chemistry;

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
    private static final Pattern COEFFICIENT = Pattern.compile("([0-9]+(?:/[0-9]+)?|[0-9]*[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])\\s*");
    private static final Pattern DECIMAL = Pattern.compile("[0-9]*[.,][0-9]+(?=\\s)|[0-9]+[.,][0-9]+");
    private static final Pattern LETTER = Pattern.compile("([a-z])\\s+(?=\\S)");
    private static final Pattern STATE = Pattern.compile("\\(([a-z][a-z.]*)\\)$");

    private final String text;
    private final int offset;
    private EquationTrouble trouble;

    /** Of a text without spaces around it, which may be empty; its offset is that in the whole equation. */
    TermReader(String text, int offset) {
        this.text = text;
        this.offset = offset;
    }

    /** The term, or empty: then {@link #trouble} says why. */
    Optional<Term> read() {
        if (text.isEmpty()) {
            return fail(EquationMistake.EMPTY_TERM, 0, 0);
        }
        Matcher decimal = DECIMAL.matcher(text);
        if (decimal.lookingAt()) {
            return fail(EquationMistake.DECIMAL_COEFFICIENT, 0, decimal.end());
        }
        Matcher letter = LETTER.matcher(text);
        if (letter.lookingAt()) {
            trouble = new UnresolvedVariable(letter.group(1), Optional.of(text.substring(letter.end())), Optional.empty(), 0, 1);
            return Optional.empty();
        }
        Matcher coefficient = COEFFICIENT.matcher(text);
        if (!coefficient.lookingAt()) {
            return species(0, Optional.empty());
        }
        int digits = coefficient.end(1);
        Optional<Rational> value = digits > 2 * MOST_DIGITS + 1 ? Optional.empty() : Fractions.parse(coefficient.group(1));
        if (coefficient.group(1).matches(".*/0+|0+(/[0-9]+)?")) {
            return fail(EquationMistake.ZERO_COEFFICIENT, 0, digits);
        }
        if (value.isEmpty() || value.get().numerator().bitLength() > 20 || value.get().denominator().bitLength() > 20) {
            return fail(EquationMistake.COEFFICIENT_TOO_LARGE, 0, digits);
        }
        return coefficient.end() == text.length() ? fail(EquationMistake.COEFFICIENT_ALONE, 0, digits)
                : species(coefficient.end(), value);
    }

    private Optional<Term> species(int from, Optional<Rational> coefficient) {
        Matcher bracket = STATE.matcher(text).region(from, text.length());
        int end = text.length();
        Optional<State> state = Optional.empty();
        if (bracket.find()) {
            end = bracket.start();
            state = State.of(bracket.group(1));
            if (state.isEmpty()) {
                trouble = new UnknownState(bracket.group(1), end, text.length());
                return Optional.empty();
            }
            if (text.substring(from, end).isBlank()) {
                return fail(EquationMistake.STATE_ALONE, end, text.length());
            }
        }
        FormulaResult formula = Formula.parse(text.substring(from, end));
        if (formula instanceof FormulaResult.Bad bad) {
            trouble = bad.trouble().shifted(from);
            return Optional.empty();
        }
        Species species = new Species(((FormulaResult.Ok) formula).formula(), state);
        return Optional.of(new Term(coefficient, species, offset, offset + text.length()));
    }

    /** What stood in the way, by offsets from the start of the term. */
    EquationTrouble trouble() {
        return trouble;
    }

    private Optional<Term> fail(EquationMistake reason, int from, int to) {
        trouble = new BadEquationSyntax(reason, text.substring(from, to), from, to);
        return Optional.empty();
    }
}
