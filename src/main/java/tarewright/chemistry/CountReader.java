package tarewright.chemistry;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.FormulaPart.Kind;
import tarewright.chemistry.FormulaTrouble.AmbiguousCharge;
import tarewright.chemistry.FormulaTrouble.UnresolvedVariable;
import tarewright.chemistry.FormulaTrouble.ZeroCount;

/** Reads the count behind a symbol or a closing bracket, where there is one. */
final class CountReader {
    /** Letters that stand for a number in a formula; others are the start of a wrong symbol. */
    static final String VARIABLES = "xny";

    private final FormulaText in;

    CountReader(FormulaText in) {
        this.in = in;
    }

    /**
     * Reads a count and adds it to the pieces.
     *
     * @param counted what is counted, as written without brackets
     * @param group whether that stood in brackets
     * @param from where it starts
     */
    Optional<FormulaTrouble> read(String counted, boolean group, int from) {
        int first = in.at;
        boolean lowered = !in.atEnd() && FormulaText.isSubscript(in.next());
        while (!in.atEnd() && (lowered ? FormulaText.isSubscript(in.next()) : FormulaText.isDigit(in.next()))) {
            in.at++;
        }
        if (in.at == first) {
            return letter(counted);
        }
        if (!lowered && !in.atEnd() && ChargeReader.isPlainSign(in.next())) {
            return ambiguous(first);
        }
        String digits = plain(in.text.substring(first, in.at));
        if (FormulaText.isZero(digits)) {
            return Optional.of(new ZeroCount(group ? Optional.empty() : Optional.of(counted),
                    group ? Optional.of(counted) : Optional.empty(), from, in.at));
        }
        return digits.startsWith("0") ? in.mistake(FormulaMistake.ZERO_FOR_LETTER_O, first, in.at)
                : in.addCount(Kind.SUBSCRIPT, digits, first);
    }

    private Optional<FormulaTrouble> letter(String counted) {
        if (in.atEnd()) {
            return Optional.empty();
        }
        boolean last = in.at + 1 == in.end || !FormulaText.isLower(in.text.charAt(in.at + 1));
        boolean stands = in.next() == 'ₙ' || in.next() == 'ₓ' || last && VARIABLES.indexOf(in.next()) >= 0;
        if (!stands) {
            return Optional.empty();
        }
        String letter = String.valueOf(in.next()).replace('ₙ', 'n').replace('ₓ', 'x');
        in.at++;
        if (in.lettersAllowed) {
            in.add(Kind.SUBSCRIPT, letter);
            return Optional.empty();
        }
        return Optional.of(new UnresolvedVariable(letter, Optional.empty(), Optional.of(counted), in.at - 1, in.at));
    }

    /** Digits and then a plain sign: the last digit may count atoms or charges. */
    private Optional<FormulaTrouble> ambiguous(int digits) {
        int sign = in.at;
        if (sign + 1 == in.end) {
            return Optional.of(new AmbiguousCharge(in.text.substring(digits, in.end), List.of(), digits, in.end));
        }
        boolean repeated = ChargeReader.isPlainSign(in.text.charAt(sign + 1));
        return repeated ? in.mistake(FormulaMistake.CHARGE_ORDER, sign, in.end)
                : in.mistake(FormulaMistake.SIGN_INSIDE, sign, sign + 1);
    }

    private static String plain(String digits) {
        StringBuilder plain = new StringBuilder(digits.length());
        for (int i = 0; i < digits.length(); i++) {
            char c = digits.charAt(i);
            plain.append((char) (FormulaText.isSubscript(c) ? c - '₀' + '0' : c));
        }
        return plain.toString();
    }
}
