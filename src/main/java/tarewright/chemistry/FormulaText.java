package tarewright.chemistry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.chemistry.FormulaPart.Kind;
import tarewright.chemistry.FormulaTrouble.BadFormulaSyntax;
import tarewright.chemistry.FormulaTrouble.CountTooLarge;

/** The text of a formula, how far it is read, and the pieces read so far: what the readers of its parts share. */
final class FormulaText {
    private static final String SPACES = " \t\u00a0\u2009\u202f";

    final String text;
    final int start;
    final int end;
    /** Whether a letter may stand for a count. */
    final boolean lettersAllowed;
    final List<FormulaPart> parts = new ArrayList<>();
    /** Where the next character stands. */
    int at;

    /** The text without the spaces around it. */
    FormulaText(String text, boolean lettersAllowed) {
        this.text = text;
        this.lettersAllowed = lettersAllowed;
        int last = text.length();
        while (last > 0 && isSpace(text.charAt(last - 1))) {
            last--;
        }
        this.end = last;
        skipSpaces();
        this.start = at;
    }

    boolean atEnd() {
        return at >= end;
    }

    char next() {
        return text.charAt(at);
    }

    /** The next character that is no space, or a space at the end. */
    char nextBehindSpaces() {
        int next = at;
        while (next < end && isSpace(text.charAt(next))) {
            next++;
        }
        return next < end ? text.charAt(next) : ' ';
    }

    void skipSpaces() {
        while (at < end && isSpace(text.charAt(at))) {
            at++;
        }
    }

    int behindDigits(int from) {
        int last = from;
        while (last < end && isDigit(text.charAt(last))) {
            last++;
        }
        return last;
    }

    int behindLowerCase(int from) {
        int last = from;
        while (last < end && isLower(text.charAt(last))) {
            last++;
        }
        return last;
    }

    /** What is still to be read. */
    String rest() {
        return text.substring(at, end);
    }

    void add(Kind kind, String piece) {
        parts.add(new FormulaPart(kind, piece));
    }

    /** Adds a number, which is left out if it is 1, or says that it is too large. */
    Optional<FormulaTrouble> addCount(Kind kind, String digits, int from) {
        String plain = withoutLeadingZeros(digits);
        if (plain.length() > String.valueOf(Formula.LARGEST_COUNT).length()) {
            return Optional.of(new CountTooLarge(digits, Formula.LARGEST_COUNT, from, from + digits.length()));
        }
        if (!plain.equals("1")) {
            add(kind, plain);
        }
        return Optional.empty();
    }

    /** One zero of many stays. */
    private static String withoutLeadingZeros(String digits) {
        int first = 0;
        while (first < digits.length() - 1 && digits.charAt(first) == '0') {
            first++;
        }
        return digits.substring(first);
    }

    /** Whether there are zeros and nothing else. */
    static boolean isZero(String digits) {
        for (int i = 0; i < digits.length(); i++) {
            if (digits.charAt(i) != '0') {
                return false;
            }
        }
        return !digits.isEmpty();
    }

    Optional<FormulaTrouble> mistake(FormulaMistake reason, int from, int to) {
        return Optional.of(new BadFormulaSyntax(reason, text.substring(from, to), Optional.empty(), from, to));
    }

    static boolean isSpace(char c) {
        return SPACES.indexOf(c) >= 0;
    }

    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    static boolean isSubscript(char c) {
        return c >= '₀' && c <= '₉';
    }

    static boolean isLower(char c) {
        return c >= 'a' && c <= 'z';
    }

    static boolean isUpper(char c) {
        return c >= 'A' && c <= 'Z';
    }
}
