package tarewright.chemistry;

import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.FormulaPart.Kind;
import tarewright.chemistry.FormulaTrouble.CountTooLarge;
import tarewright.chemistry.FormulaTrouble.UnresolvedVariable;
import tarewright.chemistry.FormulaTrouble.ZeroCount;
import tarewright.exact.Rational;

/** Reads the dot before an adduct and the number behind it: the {@code ·5} of {@code CuSO₄·5H₂O}. */
final class AdductReader {
    private static final String DOTS = ".·•∙⋅";
    private static final Pattern FRACTION = Pattern.compile(
            "[0-9]*[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[0-9]+/0*[1-9][0-9]*|[0-9]+\\.[0-9]+(?= *[A-Z(\\[])");

    /** No hydrate is known by a finer fraction. */
    private static final BigInteger FINEST = BigInteger.valueOf(100);

    private final FormulaText in;

    AdductReader(FormulaText in) {
        this.in = in;
    }

    /** Whether a dot comes next, spaces before it or not. */
    boolean isNext() {
        return DOTS.indexOf(in.nextBehindSpaces()) >= 0;
    }

    Optional<FormulaTrouble> read() {
        in.skipSpaces();
        int dot = in.at;
        if (in.parts.isEmpty()) {
            return in.mistake(FormulaMistake.NOTHING_BEFORE_DOT, dot, dot + 1);
        }
        in.at++;
        in.skipSpaces();
        Matcher fraction = FRACTION.matcher(in.text).region(in.at, in.end);
        int number = in.at;
        in.at = fraction.lookingAt() ? fraction.end() : in.behindDigits(number);
        String digits = in.text.substring(number, in.at);
        in.skipSpaces();
        if (in.atEnd() || isNext()) {
            return in.mistake(FormulaMistake.NOTHING_AFTER_DOT, dot, in.at);
        }
        in.parts.add(FormulaParts.DOT);
        return digits.isEmpty() ? letter() : number(digits, number);
    }

    private Optional<FormulaTrouble> number(String written, int from) {
        Optional<Rational> value = Fractions.parse(written);
        if (value.isPresent() && value.get().signum() == 0) {
            return Optional.of(new ZeroCount(Optional.empty(), Optional.of(in.rest()), from, in.end));
        }
        if (value.isEmpty() || value.get().isWhole()) {
            return in.addCount(Kind.MULTIPLIER, value.map(Rational::toString).orElse(written), from);
        }
        if (value.get().denominator().compareTo(FINEST) > 0) {
            return in.mistake(FormulaMistake.FRACTION, from, from + written.length());
        }
        if (value.get().compareTo(Rational.of(Formula.LARGEST_COUNT)) > 0) {
            return Optional.of(new CountTooLarge(written, Formula.LARGEST_COUNT, from, from + written.length()));
        }
        in.add(Kind.MULTIPLIER, Fractions.unicode(value.get()));
        return Optional.empty();
    }

    /** A letter in place of the number before a substance: {@code xH2O}. */
    Optional<FormulaTrouble> letter() {
        char behind = in.at + 1 < in.end ? in.text.charAt(in.at + 1) : 'a';
        boolean substance = FormulaText.isUpper(behind) || FormulaText.isSpace(behind) || behind == '(' || behind == '[';
        boolean letter = in.parts.isEmpty() ? CountReader.VARIABLES.indexOf(in.next()) >= 0 : FormulaText.isLower(in.next());
        if (!letter || !substance) {
            return Optional.empty();
        }
        int from = in.at++;
        String variable = in.text.substring(from, in.at);
        in.skipSpaces();
        if (in.lettersAllowed && !in.parts.isEmpty()) {
            in.add(Kind.MULTIPLIER, variable);
            return Optional.empty();
        }
        return Optional.of(new UnresolvedVariable(variable, Optional.of(in.rest()), Optional.empty(), from, from + 1));
    }
}
