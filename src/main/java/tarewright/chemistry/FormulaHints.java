package tarewright.chemistry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.FormulaTrouble.AmbiguousCharge;
import tarewright.chemistry.FormulaTrouble.BadFormulaSyntax;
import tarewright.chemistry.FormulaTrouble.UnknownElement;

/** What the author may have meant: only what is a formula indeed. */
final class FormulaHints {
    private static final int MOST_SYMBOLS = 3;
    private static final Pattern WRITTEN_CHARGE = Pattern.compile("[\\^(]?([-+−–⁺⁻]+)([0-9⁰¹²³⁴⁵⁶⁷⁸⁹]*)\\)?");
    private static final List<String> ROMAN = List.of("I", "II", "III", "IV", "V", "VI", "VII", "VIII");

    private FormulaHints() {
    }

    /** The same trouble with its suggestions filled in. */
    static FormulaTrouble improve(FormulaTrouble trouble, String text) {
        if (trouble instanceof UnknownElement unknown) {
            List<String> formulas = Capitals.alternatives(text.strip());
            List<String> symbols = formulas.isEmpty() ? nearest(unknown.symbol()) : List.of();
            return new UnknownElement(unknown.symbol(), formulas, symbols, unknown.from(), unknown.to());
        }
        if (trouble instanceof AmbiguousCharge ambiguous) {
            return new AmbiguousCharge(ambiguous.piece(), readings(text.strip(), ambiguous.piece()),
                    ambiguous.from(), ambiguous.to());
        }
        if (trouble instanceof BadFormulaSyntax bad) {
            Optional<String> instead = instead(bad, text).map(String::strip).filter(FormulaReader::isFormula);
            return new BadFormulaSyntax(bad.reason(), bad.piece(), instead, bad.from(), bad.to());
        }
        return trouble;
    }

    private static List<String> nearest(String symbol) {
        List<String> found = new ArrayList<>();
        for (int pass = 0; pass < 2; pass++) {
            for (String known : Symbols.ALL) {
                boolean sameStart = known.charAt(0) == symbol.charAt(0);
                boolean sameEnd = symbol.length() == 2 && known.endsWith(symbol.substring(1)) && known.length() == 2;
                if (found.size() < MOST_SYMBOLS && !found.contains(known) && symbol.length() <= 2
                        && (pass == 0 ? sameStart : sameEnd)) {
                    found.add(known);
                }
            }
        }
        return found;
    }

    private static List<String> readings(String text, String piece) {
        String before = text.substring(0, text.length() - piece.length());
        String digits = piece.substring(0, piece.length() - 1);
        String last = digits.substring(digits.length() - 1);
        String sign = sign(piece.substring(piece.length() - 1));
        String counted = before + digits.substring(0, digits.length() - 1);
        String manyCharges = counted + "^" + (last.equals("1") ? "" : last) + sign;
        String oneCharge = before + digits + "^" + sign;
        boolean manyLikelier = digits.length() > 1 || Symbols.isElement(before) || before.endsWith("]");
        List<String> readings = manyLikelier ? List.of(manyCharges, oneCharge) : List.of(oneCharge, manyCharges);
        return readings.stream().filter(FormulaReader::isFormula).toList();
    }

    private static Optional<String> instead(BadFormulaSyntax bad, String text) {
        String before = text.substring(0, bad.from());
        String behind = text.substring(bad.to());
        return switch (bad.reason()) {
            case ZERO_FOR_LETTER_O -> Optional.of(before + "O" + text.substring(bad.from() + 1));
            case CHARGE_ORDER -> charge(bad.piece()).map(charge -> before + charge);
            case LEADING_NUMBER -> Optional.of(multiple(bad.piece(), behind.strip()));
            case OXIDATION_NUMBER -> behind.isBlank()
                    ? Optional.of(before + "^" + (1 + ROMAN.indexOf(bad.piece().replaceAll("[()]", ""))) + "+")
                    : Optional.of(before + behind);
            case STATE -> Optional.of(before + behind);
            default -> Optional.empty();
        };
    }

    private static Optional<String> charge(String piece) {
        Matcher written = WRITTEN_CHARGE.matcher(piece);
        if (!written.matches()) {
            return Optional.empty();
        }
        String signs = written.group(1);
        int repeated = signs.length();
        String size = written.group(2).isEmpty() ? String.valueOf(repeated) : ChargeReader.lowered(written.group(2));
        return Optional.of("^" + (size.equals("1") ? "" : size) + sign(signs.substring(0, 1)));
    }

    private static String sign(String written) {
        return written.equals("+") || written.equals("⁺") ? "+" : "-";
    }

    /** {@code 3CdSO4.8H2O} as {@code (CdSO4)3.8H2O}; a number before a formula without a dot is left out. */
    private static String multiple(String number, String formula) {
        int dot = formula.indexOf('.') >= 0 ? formula.indexOf('.') : formula.indexOf('·');
        return dot < 0 ? formula : "(" + formula.substring(0, dot) + ")" + number + formula.substring(dot);
    }
}
