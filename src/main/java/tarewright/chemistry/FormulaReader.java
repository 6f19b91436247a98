package tarewright.chemistry;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.FormulaPart.Kind;
import tarewright.chemistry.FormulaTrouble.AmbiguousCharge;
import tarewright.chemistry.FormulaTrouble.BadFormulaSyntax;
import tarewright.chemistry.FormulaTrouble.BracketMismatch;
import tarewright.chemistry.FormulaTrouble.CountTooLarge;
import tarewright.chemistry.FormulaTrouble.EmptyGroup;
import tarewright.chemistry.FormulaTrouble.FormulaTooLong;
import tarewright.chemistry.FormulaTrouble.UnknownElement;
import tarewright.chemistry.FormulaTrouble.UnresolvedVariable;
import tarewright.chemistry.FormulaTrouble.ZeroCount;

/**
 * Reads one formula from left to right. It stops at the first trouble; each step either moves on or stops, and the text is
 * of bounded length, so that any text is read in bounded time.
 */
final class FormulaReader {
    private static final String DOTS = ".·•∙⋅";
    private static final String SPACES = " \t\u00a0\u2009\u202f";
    private static final String VARIABLES = "xny";
    private static final Pattern ELECTRON = Pattern.compile("e(?:\\^?[-−–]|⁻|\\([-−–]\\))");
    private static final Pattern ROMAN = Pattern.compile("\\((?:I{1,3}|IV|VI{0,3})\\)(?![0-9₀-₉])");
    private static final Pattern STATE = Pattern.compile("\\([a-z]+\\)?");
    private static final Pattern FRACTION = Pattern.compile("[0-9]*[½⅓¼⅔¾⅕⅙⅛]|[0-9]+/[0-9]+|[0-9]+\\.[0-9]+(?=[A-Z(\\[])");

    private record Open(char bracket, int at, int partsBefore) {
    }

    private final String text;
    private final int end;
    private final boolean lettersAllowed;
    private final List<FormulaPart> parts = new ArrayList<>();
    private final Deque<Open> open = new ArrayDeque<>();
    private int at;
    private int adductFrom;

    private FormulaReader(String text, boolean lettersAllowed) {
        this.text = text;
        this.lettersAllowed = lettersAllowed;
        int last = text.length();
        while (last > 0 && isSpace(text.charAt(last - 1))) {
            last--;
        }
        this.end = last;
        skipSpaces();
    }

    static FormulaResult read(String text) {
        FormulaReader reader = new FormulaReader(text, false);
        Optional<FormulaTrouble> trouble = reader.whole().or(reader::tooManyAtoms);
        if (trouble.isPresent()) {
            return new FormulaResult.Bad(FormulaHints.improve(trouble.get(), text));
        }
        return new FormulaResult.Ok(Formula.of(reader.parts));
    }

    /** Whether a text is a formula, without a word on why not. */
    static boolean isFormula(String text) {
        FormulaReader reader = new FormulaReader(text, false);
        return reader.whole().or(reader::tooManyAtoms).isEmpty();
    }

    static ShownResult readShown(String text) {
        FormulaReader reader = new FormulaReader(text, true);
        Optional<FormulaTrouble> trouble = reader.whole();
        if (trouble.isPresent()) {
            return new ShownResult.Bad(FormulaHints.improve(trouble.get(), text));
        }
        return new ShownResult.Ok(new ShownFormula(reader.parts));
    }

    private Optional<FormulaTrouble> whole() {
        if (end - at > Formula.LONGEST) {
            return Optional.of(new FormulaTooLong(end - at, Formula.LONGEST, at, end));
        }
        if (at >= end) {
            return mistake(FormulaMistake.EMPTY, at, at);
        }
        if (ELECTRON.matcher(text).region(at, end).matches()) {
            parts.add(new FormulaPart(Kind.SYMBOL, "e"));
            parts.add(new FormulaPart(Kind.SUPERSCRIPT, FormulaParts.MINUS));
            return Optional.empty();
        }
        adductFrom = at;
        Optional<FormulaTrouble> trouble = leadingLetter().or(this::leadingNumber);
        while (trouble.isEmpty() && at < end) {
            trouble = step();
        }
        return trouble.or(this::unclosed).or(this::hydrogenTwenty);
    }

    private Optional<FormulaTrouble> step() {
        char c = text.charAt(at);
        if (c >= 'A' && c <= 'Z') {
            return symbol();
        }
        if (c == '(' || c == '[') {
            return openBracket(c);
        }
        if (c == ')' || c == ']') {
            return closeBracket(c);
        }
        if (DOTS.indexOf(c) >= 0 || isSpace(c) && DOTS.indexOf(afterSpaces()) >= 0) {
            return dot();
        }
        if (ChargeReader.startsCharge(c) || isDigit(c) && isSubscript(text.charAt(Math.max(at - 1, 0)))) {
            return charge();
        }
        if (c >= 'a' && c <= 'z') {
            return lowerCase();
        }
        if (isDigit(c)) {
            return mistake(FormulaMistake.STRAY_NUMBER, at, afterDigits(at));
        }
        return mistake(isSpace(c) ? FormulaMistake.SPACE : FormulaMistake.STRAY_CHARACTER, at,
                text.offsetByCodePoints(at, 1));
    }

    private Optional<FormulaTrouble> symbol() {
        int letters = at + 1;
        while (letters < end && isLower(text.charAt(letters))) {
            letters++;
        }
        String two = text.substring(at, Math.min(at + 2, letters));
        String one = text.substring(at, at + 1);
        int from = at;
        if (Symbols.isElement(two)) {
            at += two.length();
        } else if (Symbols.isElement(one) && VARIABLES.contains(text.substring(at + 1, at + 2))) {
            at++;
        } else {
            return Optional.of(new UnknownElement(text.substring(at, letters), List.of(), List.of(), at, letters));
        }
        String symbol = text.substring(from, at);
        boolean overlong = at < letters && !(at == letters - 1 && VARIABLES.indexOf(text.charAt(at)) >= 0);
        if (overlong) {
            return Optional.of(new UnknownElement(text.substring(from, letters), List.of(), List.of(), from, letters));
        }
        parts.add(new FormulaPart(Kind.SYMBOL, symbol));
        return count(Optional.of(symbol), symbol, from);
    }

    private Optional<FormulaTrouble> openBracket(char c) {
        if (c == '(' && ChargeReader.inBrackets(text, at, end) > 0) {
            return charge();
        }
        Matcher roman = ROMAN.matcher(text).region(at, end);
        if (roman.lookingAt() && !parts.isEmpty()) {
            return mistake(FormulaMistake.OXIDATION_NUMBER, at, roman.end());
        }
        Matcher state = STATE.matcher(text).region(at, end);
        if (state.lookingAt()) {
            return mistake(FormulaMistake.STATE, at, state.end());
        }
        open.push(new Open(c, at, parts.size()));
        parts.add(new FormulaPart(Kind.OPEN_BRACKET, String.valueOf(c)));
        at++;
        return Optional.empty();
    }

    private Optional<FormulaTrouble> closeBracket(char c) {
        if (open.isEmpty()) {
            return bracket(at, BracketMismatch.Reason.NEVER_OPENED);
        }
        Open opened = open.pop();
        if ((opened.bracket == '(') != (c == ')')) {
            return bracket(at, BracketMismatch.Reason.OTHER_KIND);
        }
        if (parts.size() == opened.partsBefore + 1) {
            return Optional.of(new EmptyGroup(text.substring(opened.at, at + 1), opened.at, at + 1));
        }
        parts.add(new FormulaPart(Kind.CLOSE_BRACKET, String.valueOf(c)));
        at++;
        return count(Optional.empty(), text.substring(opened.at + 1, at - 1), opened.at);
    }

    /** The count behind a symbol or a group, if there is one, and a charge with a plain sign if that follows. */
    private Optional<FormulaTrouble> count(Optional<String> element, String counted, int from) {
        int first = at;
        boolean lowered = at < end && isSubscript(text.charAt(at));
        while (at < end && (lowered ? isSubscript(text.charAt(at)) : isDigit(text.charAt(at)))) {
            at++;
        }
        if (at == first) {
            return variable(counted);
        }
        if (!lowered && at < end && ChargeReader.isPlainSign(text.charAt(at))) {
            return ambiguous(first);
        }
        String digits = ascii(text.substring(first, at));
        if (digits.matches("0+")) {
            Optional<String> group = element.isPresent() ? Optional.empty() : Optional.of(counted);
            return Optional.of(new ZeroCount(element, group, from, at));
        }
        if (digits.charAt(0) == '0') {
            return mistake(FormulaMistake.ZERO_FOR_LETTER_O, first, at);
        }
        return number(digits, first).or(() -> {
            if (!digits.equals("1")) {
                parts.add(new FormulaPart(Kind.SUBSCRIPT, digits));
            }
            return Optional.empty();
        });
    }

    private Optional<FormulaTrouble> variable(String counted) {
        boolean stands = at < end && ("ₙₓ".indexOf(text.charAt(at)) >= 0
                || VARIABLES.indexOf(text.charAt(at)) >= 0 && (at + 1 == end || !isLower(text.charAt(at + 1))));
        if (!stands) {
            return Optional.empty();
        }
        String letter = text.substring(at, at + 1).replace('ₙ', 'n').replace('ₓ', 'x');
        at++;
        if (lettersAllowed) {
            parts.add(new FormulaPart(Kind.SUBSCRIPT, letter));
            return Optional.empty();
        }
        return Optional.of(new UnresolvedVariable(letter, Optional.empty(), Optional.of(counted), at - 1, at));
    }

    private Optional<FormulaTrouble> dot() {
        skipSpaces();
        int dot = at;
        if (!open.isEmpty()) {
            return mistake(FormulaMistake.DOT_IN_BRACKETS, dot, dot + 1);
        }
        if (parts.isEmpty()) {
            return mistake(FormulaMistake.NOTHING_BEFORE_DOT, dot, dot + 1);
        }
        at++;
        skipSpaces();
        Matcher fraction = FRACTION.matcher(text).region(at, end);
        if (fraction.lookingAt()) {
            return mistake(FormulaMistake.FRACTION, at, fraction.end());
        }
        parts.add(FormulaParts.DOT);
        int number = at;
        at = afterDigits(at);
        String digits = text.substring(number, at);
        skipSpaces();
        if (at >= end) {
            return mistake(FormulaMistake.NOTHING_AFTER_DOT, dot, end);
        }
        adductFrom = at;
        return digits.isEmpty() ? leadingLetter() : multiplier(digits, number);
    }

    private Optional<FormulaTrouble> multiplier(String digits, int from) {
        if (digits.matches("0+")) {
            return Optional.of(new ZeroCount(Optional.empty(), Optional.of(adduct()), from, end));
        }
        return number(digits, from).or(() -> {
            String plain = digits.replaceFirst("^0+", "");
            if (!plain.equals("1")) {
                parts.add(new FormulaPart(Kind.MULTIPLIER, plain));
            }
            return Optional.empty();
        });
    }

    /** A letter in place of the number before a substance: {@code xH2O}. */
    private Optional<FormulaTrouble> leadingLetter() {
        boolean stands = at + 1 < end && isLower(text.charAt(at)) && (isUpper(text.charAt(at + 1))
                || isSpace(text.charAt(at + 1)) || "([".indexOf(text.charAt(at + 1)) >= 0);
        if (!stands || parts.isEmpty() && VARIABLES.indexOf(text.charAt(at)) < 0) {
            return Optional.empty();
        }
        int from = at++;
        skipSpaces();
        adductFrom = at;
        if (lettersAllowed) {
            parts.add(new FormulaPart(Kind.MULTIPLIER, text.substring(from, from + 1)));
            return Optional.empty();
        }
        return Optional.of(new UnresolvedVariable(text.substring(from, from + 1), Optional.of(adduct()), Optional.empty(),
                from, from + 1));
    }

    private Optional<FormulaTrouble> leadingNumber() {
        return isDigit(text.charAt(at)) ? mistake(FormulaMistake.LEADING_NUMBER, at, afterDigits(at)) : Optional.empty();
    }

    private Optional<FormulaTrouble> lowerCase() {
        int last = at;
        while (last < end && isLower(text.charAt(last))) {
            last++;
        }
        return Optional.of(new UnknownElement(text.substring(at, last), List.of(), List.of(), at, last));
    }

    private Optional<FormulaTrouble> charge() {
        if (!open.isEmpty()) {
            return mistake(FormulaMistake.CHARGE_NOT_LAST, at, at + 1);
        }
        if (parts.isEmpty() || parts.get(parts.size() - 1).kind() == Kind.DOT) {
            return mistake(FormulaMistake.STRAY_CHARACTER, at, at + 1);
        }
        int from = at;
        at = end;
        return ChargeReader.read(text, from, end, parts);
    }

    /** Digits and a plain sign: either the last digit or none belongs to the charge. */
    private Optional<FormulaTrouble> ambiguous(int digits) {
        int sign = at;
        if (sign + 1 < end) {
            boolean more = ChargeReader.isPlainSign(text.charAt(sign + 1));
            return mistake(more ? FormulaMistake.CHARGE_ORDER : FormulaMistake.SIGN_INSIDE, sign, more ? end : sign + 1);
        }
        return Optional.of(new AmbiguousCharge(text.substring(digits, end), List.of(), digits, end));
    }

    private Optional<FormulaTrouble> number(String digits, int from) {
        boolean fits = digits.length() <= 4 || digits.matches("0*[0-9]{1,4}");
        return fits ? Optional.empty() : Optional.of(new CountTooLarge(digits, Formula.LARGEST_COUNT, from, from + digits.length()));
    }

    private Optional<FormulaTrouble> unclosed() {
        return open.isEmpty() ? Optional.empty() : bracket(open.peek().at, BracketMismatch.Reason.NEVER_CLOSED);
    }

    /** {@code H20} for water is twenty atoms of hydrogen, which nothing is. */
    private Optional<FormulaTrouble> hydrogenTwenty() {
        int last = parts.size() - 1;
        boolean found = last >= 1 && parts.get(last).equals(new FormulaPart(Kind.SUBSCRIPT, "20"))
                && parts.get(last - 1).text().equals("H") && text.substring(adductFrom, end).matches("H(20|₂₀)");
        return found ? mistake(FormulaMistake.ZERO_FOR_LETTER_O, end - 1, end) : Optional.empty();
    }

    private Optional<FormulaTrouble> tooManyAtoms() {
        return FormulaParts.atoms(parts).isPresent() ? Optional.empty()
                : Optional.of(new CountTooLarge(text.substring(0, end).strip(), Formula.MOST_ATOMS, 0, end));
    }

    private Optional<FormulaTrouble> bracket(int where, BracketMismatch.Reason reason) {
        return Optional.of(new BracketMismatch(text.substring(where, where + 1), reason, where, where + 1));
    }

    private Optional<FormulaTrouble> mistake(FormulaMistake reason, int from, int to) {
        return Optional.of(new BadFormulaSyntax(reason, text.substring(from, to), Optional.empty(), from, to));
    }

    private String adduct() {
        return text.substring(at, end);
    }

    private int afterDigits(int from) {
        int last = from;
        while (last < end && isDigit(text.charAt(last))) {
            last++;
        }
        return last;
    }

    private char afterSpaces() {
        int next = at;
        while (next < end && isSpace(text.charAt(next))) {
            next++;
        }
        return next < end ? text.charAt(next) : ' ';
    }

    private void skipSpaces() {
        while (at < end && isSpace(text.charAt(at))) {
            at++;
        }
    }

    private static String ascii(String digits) {
        StringBuilder plain = new StringBuilder();
        digits.chars().forEach(c -> plain.append((char) (c >= '₀' && c <= '₉' ? c - '₀' + '0' : c)));
        return plain.toString();
    }

    private static boolean isSpace(char c) {
        return SPACES.indexOf(c) >= 0;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isSubscript(char c) {
        return c >= '₀' && c <= '₉';
    }

    private static boolean isLower(char c) {
        return c >= 'a' && c <= 'z';
    }

    private static boolean isUpper(char c) {
        return c >= 'A' && c <= 'Z';
    }
}
