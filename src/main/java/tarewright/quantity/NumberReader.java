package tarewright.quantity;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one decimal number from a place in a text. */
final class NumberReader {
    private static final int MOST_DIGITS = 40;
    private static final int LONGEST_EXPONENT = 4;
    private static final BigDecimal GREATEST = new BigDecimal("1e30");
    private static final BigDecimal LEAST = new BigDecimal("1e-30");
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final String RAISED = "\\^([-+\\u2212]?[0-9]++)|([\\u207B\\u207A]?[" + SUPERSCRIPTS + "]++)";

    /** Groups: sign; digits with marks, in threes or not; exponent behind e; exponent of ten behind a caret, and raised. */
    private static final Pattern NUMBER = Pattern.compile(
            "([-+\\u2212\\u2013]?)"
            + "((?:[0-9]{1,3}(?:" + Blanks.ONE + "[0-9]{3})+(?![0-9])|[0-9]++)(?:[.,][0-9]++)*+[.,]?+|[.,][0-9]++)"
            + "(?:[eE]([-+\\u2212]?[0-9]++)|"
            + Blanks.ONE + "?[\\u00D7xX*\\u00B7\\u22C5]" + Blanks.ONE + "?10(?:" + RAISED + "))?+");
    /** What makes the bare ten in front of it a power of ten. */
    private static final Pattern POWER = Pattern.compile(RAISED);

    private NumberReader() {
    }

    /**
     * A number and where it ends, or a trouble.
     *
     * @param number as typed, with an ASCII sign, a point and an {@code e}
     */
    record Read(String number, double value, int decimals, int significant, int end, Optional<NumberTrouble> trouble) {
    }

    static Read read(String text, int from) {
        Matcher matcher = NUMBER.matcher(text).region(from, text.length());
        if (!matcher.lookingAt()) {
            return notANumber(text, from);
        }
        int to = matcher.end();
        String digits = matcher.group(2).replaceAll(Blanks.ONE, "");
        if (digits.length() > MOST_DIGITS + 1) {
            return tooLarge(text, from, to);
        }
        String sign = matcher.group(1).isEmpty() || matcher.group(1).equals("+") ? "" : "-";
        List<String> readings = readings(digits);
        if (readings.size() == 1 && digits.chars().filter(c -> c == '.' || c == ',').count() > 1) {
            return failed(new NumberTrouble.ThousandsMarked(matcher.group(), sign + readings.get(0), from, to));
        }
        if (readings.size() != 1) {
            return failed(new NumberTrouble.Ambiguous(matcher.group(), readings.stream().map(reading -> sign + reading).toList(),
                    from, to));
        }
        String exponent = exponent(matcher, 3);
        String mantissa = readings.get(0);
        Matcher power = POWER.matcher(text).region(to, text.length());
        if (digits.equals("10") && exponent.isEmpty() && power.lookingAt()) {
            mantissa = "1";
            exponent = exponent(power, 1);
            to = power.end();
        }
        if (exponent.length() > LONGEST_EXPONENT) {
            return tooLarge(text, from, to);
        }
        String number = sign + mantissa + (exponent.isEmpty() ? "" : "e" + exponent);
        BigDecimal value = new BigDecimal(number);
        boolean reckonable = value.signum() == 0 || value.abs().compareTo(GREATEST) <= 0 && value.abs().compareTo(LEAST) >= 0;
        return reckonable
                ? new Read(number, value.doubleValue(), value.scale(), Digits.significantOf(number), to, Optional.empty())
                : tooLarge(text, from, to);
    }

    /** The numbers that digits with marks may be: a single comma before three digits may part thousands or decimals. */
    private static List<String> readings(String digits) {
        int last = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','));
        if (last < 0) {
            return List.of(digits);
        }
        String whole = digits.substring(0, last).replaceAll("[.,]", "");
        String rest = digits.substring(last + 1);
        if (digits.indexOf(digits.charAt(last)) < last) {
            // The same mark twice cannot part decimals.
            return List.of(whole + rest);
        }
        String decimal = whole + "." + rest;
        return digits.matches("[1-9][0-9]{0,2},[0-9]{3}") ? List.of(whole + rest, decimal) : List.of(decimal);
    }

    /** The exponent in the first of the groups that matched, with ASCII digits and sign; empty where there is none. */
    private static String exponent(Matcher matcher, int firstGroup) {
        StringBuilder plain = new StringBuilder();
        for (int group = firstGroup; group <= matcher.groupCount(); group++) {
            String raised = matcher.group(group) == null ? "" : matcher.group(group);
            raised.chars().forEach(c -> plain.append(ascii((char) c)));
        }
        return plain.toString();
    }

    private static char ascii(char c) {
        int raised = SUPERSCRIPTS.indexOf(c);
        return raised >= 0 ? (char) ('0' + raised) : c == '\u2212' || c == '\u207B' ? '-' : c == '\u207A' ? '+' : c;
    }

    private static Read notANumber(String text, int from) {
        int end = from;
        while (end < text.length() && !Blanks.is(text.charAt(end)) && end - from < MOST_DIGITS) {
            end++;
        }
        return failed(new NumberTrouble.NotANumber(text.substring(from, end), Optional.empty(), from, end));
    }

    private static Read tooLarge(String text, int from, int to) {
        return failed(new NumberTrouble.TooLarge(text.substring(from, Math.min(to, from + MOST_DIGITS)), from, to));
    }

    private static Read failed(NumberTrouble trouble) {
        return new Read("", 0, 0, 1, trouble.to(), Optional.of(trouble));
    }
}
