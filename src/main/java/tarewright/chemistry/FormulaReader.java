package tarewright.chemistry;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.FormulaPart.Kind;
import tarewright.chemistry.FormulaTrouble.BadFormulaSyntax;
import tarewright.chemistry.FormulaTrouble.BracketMismatch;
import tarewright.chemistry.FormulaTrouble.CountTooLarge;
import tarewright.chemistry.FormulaTrouble.EmptyGroup;
import tarewright.chemistry.FormulaTrouble.FormulaTooLong;
import tarewright.chemistry.FormulaTrouble.UnknownElement;

/**
 * Reads one formula from left to right. It stops at the first trouble; each step either moves on or stops, and the text is
 * of bounded length, so that any text is read in bounded time.
 */
final class FormulaReader {
    private static final Pattern ELECTRON = Pattern.compile("e(?:\\^?[-−–]|⁻|\\([-−–]\\))");
    /** Two iodines have no business alone in brackets: it is an oxidation number. */
    private static final Pattern ROMAN = Pattern.compile("\\((?:I{1,3}|IV|VI{0,3})\\)(?![0-9₀-₉])");
    private static final Pattern STATE = Pattern.compile("\\([a-z]+\\)?");
    private static final Pattern HYDROGEN_TWENTY = Pattern.compile("(?:.*[.·•∙⋅]|^)[0-9 /½]*H(?:20|₂₀)");

    private record Open(char bracket, int at, int partsBefore) {
    }

    private final FormulaText in;
    private final CountReader counts;
    private final AdductReader adducts;
    private final Deque<Open> open = new ArrayDeque<>();

    private FormulaReader(String text, boolean lettersAllowed) {
        in = new FormulaText(text, lettersAllowed);
        counts = new CountReader(in);
        adducts = new AdductReader(in);
    }

    static FormulaResult read(String text) {
        FormulaReader reader = new FormulaReader(text, false);
        Optional<FormulaTrouble> trouble = reader.whole();
        Optional<FormulaParts.Counted> counted = trouble.isPresent() ? Optional.empty() : FormulaParts.count(reader.in.parts);
        if (counted.isEmpty()) {
            return new FormulaResult.Bad(FormulaHints.improve(trouble.orElseGet(reader::tooManyAtoms), text));
        }
        return new FormulaResult.Ok(Formula.of(reader.in.parts, counted.get()));
    }

    /** Whether a text is a formula, without a word on why not. */
    static boolean isFormula(String text) {
        FormulaReader reader = new FormulaReader(text, false);
        return reader.whole().isEmpty() && FormulaParts.count(reader.in.parts).isPresent();
    }

    static ShownResult readShown(String text) {
        FormulaReader reader = new FormulaReader(text, true);
        Optional<FormulaTrouble> trouble = reader.whole();
        if (trouble.isPresent()) {
            return new ShownResult.Bad(FormulaHints.improve(trouble.get(), text));
        }
        return new ShownResult.Ok(new ShownFormula(reader.in.parts));
    }

    private Optional<FormulaTrouble> whole() {
        if (in.end - in.at > Formula.LONGEST) {
            return Optional.of(new FormulaTooLong(in.end - in.at, Formula.LONGEST, in.at, in.end));
        }
        if (in.atEnd()) {
            return in.mistake(FormulaMistake.EMPTY, in.at, in.at);
        }
        if (in.next() == 'e' && ELECTRON.matcher(in.text).region(in.at, in.end).matches()) {
            in.add(Kind.SYMBOL, "e");
            in.add(Kind.SUPERSCRIPT, FormulaParts.MINUS);
            return Optional.empty();
        }
        if (FormulaText.isDigit(in.next())) {
            return in.mistake(FormulaMistake.LEADING_NUMBER, in.at, in.behindDigits(in.at));
        }
        Optional<FormulaTrouble> trouble = adducts.letter();
        while (trouble.isEmpty() && !in.atEnd()) {
            trouble = step();
        }
        return trouble.or(this::unclosed).or(this::hydrogenTwenty);
    }

    private Optional<FormulaTrouble> step() {
        char c = in.next();
        if (FormulaText.isUpper(c)) {
            return symbol();
        }
        if (c == '(' || c == '[') {
            return openBracket(c);
        }
        if (c == ')' || c == ']') {
            return closeBracket(c);
        }
        if (adducts.isNext()) {
            return open.isEmpty() ? adducts.read() : in.mistake(FormulaMistake.DOT_IN_BRACKETS, in.at, in.at + 1);
        }
        if (ChargeReader.startsCharge(c) || isChargeBehindSubscript()) {
            return charge();
        }
        if (FormulaText.isLower(c)) {
            return unknown(in.at, in.behindLowerCase(in.at));
        }
        if (FormulaText.isDigit(c)) {
            return in.mistake(FormulaMistake.STRAY_NUMBER, in.at, in.behindDigits(in.at));
        }
        if (FormulaText.isSpace(c)) {
            return Optional.of(new BadFormulaSyntax(FormulaMistake.SPACE, in.text.substring(in.start, in.end),
                    Optional.empty(), in.at, in.at + 1));
        }
        return in.mistake(FormulaMistake.STRAY_CHARACTER, in.at, in.text.offsetByCodePoints(in.at, 1));
    }

    /** Plain digits and a sign behind a subscript can only be a charge: {@code SO₄2-}. */
    private boolean isChargeBehindSubscript() {
        int sign = in.behindDigits(in.at);
        return in.at > in.start && FormulaText.isSubscript(in.text.charAt(in.at - 1))
                && sign < in.end && ChargeReader.isPlainSign(in.text.charAt(sign));
    }

    /** A capital and the small letters behind it: a symbol whole, a symbol and a letter for its count, or neither. */
    private Optional<FormulaTrouble> symbol() {
        int from = in.at;
        int to = in.behindLowerCase(from + 1);
        String letters = in.text.substring(from, to);
        String allButLast = letters.substring(0, letters.length() - 1);
        boolean variable = Symbols.isElement(allButLast) && CountReader.VARIABLES.indexOf(in.text.charAt(to - 1)) >= 0;
        if (!Symbols.isElement(letters) && !variable) {
            return unknown(from, to);
        }
        String symbol = Symbols.isElement(letters) ? letters : allButLast;
        in.at = from + symbol.length();
        in.add(Kind.SYMBOL, symbol);
        return counts.read(symbol, false, from);
    }

    private Optional<FormulaTrouble> openBracket(char c) {
        if (c == '(' && ChargeReader.isInBrackets(in.text, in.at, in.end)) {
            return charge();
        }
        // The expressions are not tried where the first letter says that they cannot fit: formulas are read by the thousand.
        char first = in.at + 1 < in.end ? in.text.charAt(in.at + 1) : ' ';
        if (first == 'I' || first == 'V') {
            Matcher roman = ROMAN.matcher(in.text).region(in.at, in.end);
            if (roman.lookingAt() && !in.parts.isEmpty()) {
                return in.mistake(FormulaMistake.OXIDATION_NUMBER, in.at, roman.end());
            }
        }
        if (FormulaText.isLower(first)) {
            Matcher state = STATE.matcher(in.text).region(in.at, in.end);
            if (state.lookingAt()) {
                return in.mistake(FormulaMistake.STATE, in.at, state.end());
            }
        }
        open.push(new Open(c, in.at, in.parts.size()));
        in.add(Kind.OPEN_BRACKET, String.valueOf(c));
        in.at++;
        return Optional.empty();
    }

    private Optional<FormulaTrouble> closeBracket(char c) {
        if (open.isEmpty()) {
            return bracket(in.at, BracketMismatch.Reason.NEVER_OPENED);
        }
        Open opened = open.pop();
        if ((opened.bracket == '(') != (c == ')')) {
            return bracket(in.at, BracketMismatch.Reason.OTHER_KIND);
        }
        if (in.parts.size() == opened.partsBefore + 1) {
            return Optional.of(new EmptyGroup(in.text.substring(opened.at, in.at + 1), opened.at, in.at + 1));
        }
        in.add(Kind.CLOSE_BRACKET, String.valueOf(c));
        in.at++;
        return counts.read(in.text.substring(opened.at + 1, in.at - 1), true, opened.at);
    }

    private Optional<FormulaTrouble> charge() {
        if (!open.isEmpty()) {
            return in.mistake(FormulaMistake.CHARGE_NOT_LAST, in.at, in.at + 1);
        }
        boolean ofNothing = in.parts.isEmpty() || in.parts.get(in.parts.size() - 1).kind() == Kind.DOT
                || in.parts.get(in.parts.size() - 1).kind() == Kind.MULTIPLIER;
        if (ofNothing) {
            return in.mistake(FormulaMistake.STRAY_CHARACTER, in.at, in.at + 1);
        }
        int from = in.at;
        in.at = in.end;
        return ChargeReader.read(in.text, from, in.end, in.parts);
    }

    private Optional<FormulaTrouble> unclosed() {
        return open.isEmpty() ? Optional.empty() : bracket(open.peek().at, BracketMismatch.Reason.NEVER_CLOSED);
    }

    /** {@code H20} for water is twenty atoms of hydrogen, which nothing is. */
    private Optional<FormulaTrouble> hydrogenTwenty() {
        char last = in.text.charAt(in.end - 1);
        return (last == '0' || last == '₀') && HYDROGEN_TWENTY.matcher(in.text).region(in.start, in.end).matches()
                ? in.mistake(FormulaMistake.ZERO_FOR_LETTER_O, in.end - 1, in.end) : Optional.empty();
    }

    private FormulaTrouble tooManyAtoms() {
        return new CountTooLarge(in.text.substring(in.start, in.end), Formula.MOST_ATOMS, in.start, in.end);
    }

    private Optional<FormulaTrouble> bracket(int where, BracketMismatch.Reason reason) {
        return Optional.of(new BracketMismatch(in.text.substring(where, where + 1), reason, where, where + 1));
    }

    private Optional<FormulaTrouble> unknown(int from, int to) {
        return Optional.of(new UnknownElement(in.text.substring(from, to), List.of(), List.of(), from, to));
    }
}
