package tarewright.procedure.expression;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.finding.Finding;
import tarewright.procedure.syntax.Fields;
import tarewright.quantity.Dimension;
import tarewright.quantity.NearUnit;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/**
 * Reads a number with the longest text behind it that is a unit: of {@code 2 L / moles of acid} it takes {@code 2 L}, of
 * {@code 24.0 L/mol * moles of acid} it takes {@code 24.0 L/mol}. A multiplication sign ends a unit, and so does a dot with
 * blanks at its sides.
 */
final class NumberToken {
    private static final int LONGEST = 120;
    private static final Pattern DIGITS = Pattern.compile("[0-9.,]*[0-9](?:[eE][-+\u2212]?[0-9]+)?");
    private static final Pattern HYPHEN = Pattern.compile("(\\p{L}+)-[0-9.,]+[\\s\u00A0\u202F]+(\\p{L}+)");
    private static final Pattern PLAIN = Pattern.compile("[0-9]+(?:[.,][0-9]+)?");
    /** Signs that end a quantity, unless what follows makes the number one in powers of ten. */
    private static final Pattern ENDS = Pattern.compile(
            "[+;={}<>\u2212\u00F7]|(?:[*\u00D7]|(?<=[\\s\u00A0\u202F])\u00B7|\u00B7(?=[\\s\u00A0\u202F]))"
            + "(?![\\s\u00A0\u202F]?10(?:\\^|[\u207B\u2070\u00B9\u00B2\u00B3\u2074-\u2079]))");
    private static final Pattern LIMITS = Pattern.compile("\\G[\\s\u00A0\u202F]*+(?:\u00B1|\\+/-)[\\s\u00A0\u202F]*+(?=[0-9.,])");
    private static final Pattern RANGE = Pattern.compile(
            "\\G[\\s\u00A0\u202F]*+(?:to(?![A-Za-z])|\u2013|\u2026|\\.\\.)[\\s\u00A0\u202F]*+(?=[0-9.,])");

    private final Fields.Piece piece;
    private final String text;
    private final int from;

    private NumberToken(Fields.Piece piece, int from) {
        this.piece = piece;
        this.text = piece.text();
        this.from = from;
    }

    static boolean startsAt(String text, int at) {
        char c = text.charAt(at);
        return Letters.isDigit(c) || (c == '.' || c == ',') && at + 1 < text.length() && Letters.isDigit(text.charAt(at + 1));
    }

    /** The number at {@code from}. @param exponent whether it stands behind a caret, where it is bare digits */
    static Token read(Fields.Piece piece, int from, boolean exponent) {
        NumberToken reader = new NumberToken(piece, from);
        return exponent ? reader.bare() : reader.quantity();
    }

    private Token bare() {
        Matcher matcher = PLAIN.matcher(text).region(from, text.length());
        int end = matcher.lookingAt() ? matcher.end() : from + 1;
        QuantityResult result = QuantityText.parse(text.substring(from, end));
        return result instanceof QuantityResult.Ok ok ? new Token.Number(ok.typed(), from, end) : trouble(result, end);
    }

    private Token quantity() {
        Optional<Token.Number> one = longest(from, from);
        if (one.isEmpty()) {
            return withoutUnit();
        }
        Matcher range = RANGE.matcher(text).region(one.get().to(), text.length()).useTransparentBounds(true);
        if (range.find()) {
            int end = longest(range.end(), range.end()).map(Token.Number::to).orElse(range.end());
            return bad(new FormulaFinding.RangeInFormula(text.substring(from, end), piece.span().part(from, end)), end);
        }
        Matcher limits = LIMITS.matcher(text).region(one.get().to(), text.length()).useTransparentBounds(true);
        if (limits.find()) {
            Optional<Token.Number> both = longest(from, limits.end());
            int end = text.length();
            return both.isPresent() ? both.get() : trouble(QuantityText.parse(text.substring(from, end)), end);
        }
        return misread(one.get()).orElse(one.get());
    }

    /** The longest quantity from {@code start} whose last number starts at {@code last}. */
    private Optional<Token.Number> longest(int start, int last) {
        for (int end = stretchEnd(last); end >= digitsEnd(last); end--) {
            boolean boundary = !Letters.isBlank(text.charAt(end - 1)) && !Letters.insideWord(text, end);
            if (boundary && QuantityText.parse(text.substring(start, end)) instanceof QuantityResult.Ok ok
                    && ok.typed().upTo().isEmpty()) {
                return Optional.of(new Token.Number(ok.typed(), start, end));
            }
        }
        return Optional.empty();
    }

    /** Before the hyphen of what is meant as a difference, {@code 25 mL-5 mL}, rather than as a power, {@code J K-1 mol-1}. */
    private int beforeHyphen(int from, int to) {
        Matcher hyphen = HYPHEN.matcher(text).region(from, to);
        boolean difference = hyphen.find() && kind(hyphen.group(1)).isPresent()
                && kind(hyphen.group(1)).equals(kind(hyphen.group(2)));
        return difference ? hyphen.end(1) : to;
    }

    private static Optional<Dimension> kind(String unit) {
        return Units.symbol(unit).map(Unit::dimension);
    }

    /** Where the digits end that start at {@code start}, and an exponent behind them. */
    private int digitsEnd(int start) {
        Matcher digits = DIGITS.matcher(text).region(start, text.length());
        return digits.lookingAt() ? digits.end() : start + 1;
    }

    /**
     * How far a number with its unit may reach: to a sign that ends it, a second stroke, or a bracket that is not below a
     * stroke.
     */
    private int stretchEnd(int last) {
        int most = Math.min(text.length(), last + LONGEST);
        Matcher ends = ENDS.matcher(text).region(last, text.length()).useTransparentBounds(true);
        most = beforeHyphen(last, ends.find() ? Math.min(most, ends.start()) : most);
        int stroke = -1;
        boolean open = false;
        for (int i = last; i < most; i++) {
            char c = text.charAt(i);
            if (c == '/' && stroke < 0) {
                stroke = i;
            } else if (c == '(' && stroke >= 0 && !open && text.substring(stroke + 1, i).isBlank()) {
                open = true;
            } else if (c == ')' && open) {
                return i + 1;
            } else if (c == '/' || c == '(' || c == ')') {
                return i;
            }
        }
        return most;
    }

    /** Digits whose following letters are no unit: a word that starts with digits, or a number with an unknown unit. */
    private Token withoutUnit() {
        int end = digitsEnd(from);
        QuantityResult number = QuantityText.parse(text.substring(from, end));
        if (number instanceof QuantityResult.Bad) {
            return trouble(number, end);
        }
        int unitEnd = end;
        while (unitEnd < text.length() && Letters.isWord(text.charAt(unitEnd))) {
            unitEnd++;
        }
        // A likeness of spelling alone is no ground: `2nd titre` is a name.
        boolean nearUnit = Units.near(text.substring(end, unitEnd)).stream()
                .anyMatch(near -> near.reason() != NearUnit.Reason.SPELLING);
        return nearUnit ? trouble(QuantityText.parse(text.substring(from, unitEnd)), unitEnd) : NameReader.read(text, from);
    }

    /** A word behind a bare number that is one letter away from a unit is a mistyped unit, if it is all that stands there. */
    private Optional<Token> misread(Token.Number number) {
        int start = Letters.skipBlanks(text, number.to());
        if (number.typed().explicitUnit() || !NameReader.startsAt(text, start)) {
            return Optional.empty();
        }
        Token.Name name = NameReader.read(text, start);
        QuantityResult result = QuantityText.parse(text.substring(from, name.to()));
        boolean mistyped = name.text().indexOf(' ') < 0 && !Units.near(name.text()).isEmpty();
        return mistyped && result instanceof QuantityResult.Bad ? Optional.of(trouble(result, name.to())) : Optional.empty();
    }

    private Token trouble(QuantityResult result, int end) {
        if (result instanceof QuantityResult.Bad bad) {
            return bad(QuantityFinding.in(piece.span().part(from, end), bad.trouble()), end);
        }
        Typed typed = ((QuantityResult.Ok) result).typed();
        return new Token.Number(typed, from, end);
    }

    private Token bad(Finding finding, int end) {
        return new Token.Bad(finding, from, end);
    }
}
