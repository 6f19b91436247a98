package tarewright.chemistry;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.FormulaPart.Kind;
import tarewright.chemistry.FormulaTrouble.BadFormulaSyntax;
import tarewright.chemistry.FormulaTrouble.CountTooLarge;

/**
 * Reads the charge at the end of a formula: {@code ^2-}, {@code ²⁻}, {@code (2-)}, {@code +}. The sign stands behind the
 * number, as IUPAC has it (Nomenclature of Inorganic Chemistry 2005, IR-4.3).
 */
final class ChargeReader {
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final Pattern BRACKETED = Pattern.compile("\\(([0-9]*)([-+−–])\\)");
    private static final Pattern CHARGE = Pattern.compile(
            "(?:\\^([0-9]*)|([⁰¹²³⁴⁵⁶⁷⁸⁹]+)|([0-9]+)|)([-+−–⁺⁻])|\\(([0-9]*)([-+−–])\\)");
    private static final Pattern OTHER_ORDER = Pattern.compile("[\\^(]?(?:([-+−–⁺⁻])([0-9⁰¹²³⁴⁵⁶⁷⁸⁹]+)|([-+−–⁺⁻])\\3+)\\)?");

    private ChargeReader() {
    }

    /** Whether a character can only be the start of a charge. */
    static boolean startsCharge(char c) {
        return c == '^' || isPlainSign(c) || c == '⁺' || c == '⁻' || RAISED.indexOf(c) >= 0;
    }

    static boolean isPlainSign(char c) {
        return c == '+' || c == '-' || c == '−' || c == '–';
    }

    /** Whether a charge in round brackets starts here. */
    static boolean isInBrackets(String text, int from, int end) {
        boolean may = from + 1 < end && (FormulaText.isDigit(text.charAt(from + 1)) || isPlainSign(text.charAt(from + 1)));
        return may && BRACKETED.matcher(text).region(from, end).lookingAt();
    }

    /** Reads the charge between two offsets, adding it to the pieces. */
    static Optional<FormulaTrouble> read(String text, int from, int end, List<FormulaPart> parts) {
        Matcher charge = CHARGE.matcher(text).region(from, end);
        if (!charge.lookingAt()) {
            boolean turned = OTHER_ORDER.matcher(text).region(from, end).matches();
            return turned ? mistake(FormulaMistake.CHARGE_ORDER, text, from, end)
                    : mistake(FormulaMistake.CHARGE_WITHOUT_VALUE, text, from, from + 1);
        }
        if (charge.end() < end) {
            return trailing(text, from, charge.end(), end);
        }
        String digits = digits(charge);
        if (FormulaText.isZero(digits)) {
            return mistake(FormulaMistake.CHARGE_ZERO, text, from, end);
        }
        while (digits.startsWith("0")) {
            digits = digits.substring(1);
        }
        if (digits.length() > 2) {
            return Optional.of(new CountTooLarge(digits, Formula.LARGEST_CHARGE, from, end));
        }
        String sign = charge.group(4) == null ? charge.group(6) : charge.group(4);
        boolean positive = sign.equals("+") || sign.equals("⁺");
        parts.add(new FormulaPart(Kind.SUPERSCRIPT, (digits.equals("1") ? "" : digits) + (positive ? "+" : FormulaParts.MINUS)));
        return Optional.empty();
    }

    private static Optional<FormulaTrouble> trailing(String text, int from, int chargeEnd, int end) {
        if (OTHER_ORDER.matcher(text).region(from, end).matches()) {
            return mistake(FormulaMistake.CHARGE_ORDER, text, from, end);
        }
        return isPlainSign(text.charAt(from)) ? mistake(FormulaMistake.SIGN_INSIDE, text, from, from + 1)
                : mistake(FormulaMistake.CHARGE_NOT_LAST, text, from, chargeEnd);
    }

    private static String digits(Matcher charge) {
        StringBuilder digits = new StringBuilder();
        for (int group : new int[] {1, 2, 3, 5}) {
            digits.append(charge.group(group) == null ? "" : charge.group(group));
        }
        return lowered(digits.toString());
    }

    /** Digits with the superscripts among them as plain ones. */
    static String lowered(String digits) {
        StringBuilder plain = new StringBuilder();
        for (char c : digits.toCharArray()) {
            int raised = RAISED.indexOf(c);
            plain.append(raised < 0 ? c : (char) ('0' + raised));
        }
        return plain.toString();
    }

    private static Optional<FormulaTrouble> mistake(FormulaMistake reason, String text, int from, int to) {
        return Optional.of(new BadFormulaSyntax(reason, text.substring(from, to), Optional.empty(), from, to));
    }
}
