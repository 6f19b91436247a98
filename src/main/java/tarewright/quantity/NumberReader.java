package tarewright.quantity;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one decimal number from a place in a text. */
final class NumberReader {
    static final String SPACES = "[ \\u00A0\\u202F\\u2009\\u2007]";
    private static final int MOST_DIGITS = 40;
    private static final BigDecimal GREATEST = new BigDecimal("1e30");
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /** Groups: sign; digits with marks; exponent behind e; exponent behind × 10; the same as superscripts. */
    private static final Pattern NUMBER = Pattern.compile(
            "([-+\\u2212\\u2013]?)"
            + "((?:[0-9]{1,3}(?:" + SPACES + "[0-9]{3})+(?![0-9])|[0-9]++)(?:[.,][0-9]++)*+[.,]?+|[.,][0-9]++)"
            + "(?:[eE]([-+\\u2212]?[0-9]++)|" + SPACES + "?[\\u00D7xX*\\u00B7\\u22C5]" + SPACES
            + "?10(?:\\^([-+\\u2212]?[0-9]++)|([\\u207B\\u207A]?[" + SUPERSCRIPTS + "]++)))?+");

    private NumberReader() {
    }

    /** Either a number, and where it ends, or a trouble. */
    record Read(String number, double value, int decimals, int significant, int end, Optional<NumberTrouble> trouble) {
        private static Read of(NumberTrouble trouble) {
            return new Read("", 0, 0, 1, trouble.to(), Optional.of(trouble));
        }
    }

    static Read read(String text, int from) {
        Matcher matcher = NUMBER.matcher(text).region(from, text.length());
        if (!matcher.lookingAt()) {
            int end = from;
            while (end < text.length() && !Character.isWhitespace(text.charAt(end)) && end - from < MOST_DIGITS) {
                end++;
            }
            return Read.of(new NumberTrouble.NotANumber(text.substring(from, end), from, Math.max(end, from)));
        }
        int to = matcher.end();
        String typed = matcher.group();
        String digits = matcher.group(2).replaceAll(SPACES, "");
        if (digits.length() > MOST_DIGITS + 1) {
            return Read.of(new NumberTrouble.TooLarge(typed.substring(0, MOST_DIGITS), from, to));
        }
        String sign = matcher.group(1).isEmpty() || matcher.group(1).equals("+") ? "" : "-";
        Optional<List<String>> readings = readings(digits);
        if (readings.isPresent()) {
            return Read.of(new NumberTrouble.Ambiguous(typed, readings.get().stream().map(reading -> sign + reading).toList(),
                    from, to));
        }
        String mantissa = digits.replace(',', '.');
        String exponent = exponent(matcher);
        if (exponent.length() > 4) {
            return Read.of(new NumberTrouble.TooLarge(typed.length() > MOST_DIGITS ? typed.substring(0, MOST_DIGITS) : typed,
                    from, to));
        }
        String number = sign + mantissa + (exponent.isEmpty() ? "" : "e" + exponent);
        BigDecimal value = new BigDecimal(number);
        boolean tooSmall = value.signum() != 0 && BigDecimal.ONE.movePointLeft(30).compareTo(value.abs()) > 0;
        if (value.abs().compareTo(GREATEST) > 0 || tooSmall) {
            return Read.of(new NumberTrouble.TooLarge(typed, from, to));
        }
        return new Read(number, value.doubleValue(), value.scale(), Digits.significantOf(number), to, Optional.empty());
    }

    /** The readings of digits whose marks may part thousands; empty where there is only one reading. */
    private static Optional<List<String>> readings(String digits) {
        long points = digits.chars().filter(c -> c == '.').count();
        long commas = digits.chars().filter(c -> c == ',').count();
        if (points + commas <= 1) {
            boolean both = digits.matches("[1-9][0-9]{0,2},[0-9]{3}");
            return both ? Optional.of(List.of(digits.replace(",", ""), digits.replace(',', '.'))) : Optional.empty();
        }
        int last = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','));
        char mark = digits.charAt(last);
        boolean thousandsOnly = (mark == '.' ? points : commas) > 1;
        String whole = digits.substring(0, last).replaceAll("[.,]", "");
        String rest = digits.substring(last + 1);
        return Optional.of(List.of(thousandsOnly ? whole + rest : whole + "." + rest));
    }

    private static String exponent(Matcher matcher) {
        for (int group = 3; group <= 5; group++) {
            if (matcher.group(group) != null) {
                StringBuilder plain = new StringBuilder();
                for (char c : matcher.group(group).toCharArray()) {
                    int raised = SUPERSCRIPTS.indexOf(c);
                    plain.append(raised >= 0 ? (char) ('0' + raised) : c == '\u2212' || c == '\u207B' ? '-' : c == '\u207A' ? '+' : c);
                }
                return plain.toString();
            }
        }
        return "";
    }
}
