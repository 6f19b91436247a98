package tarewright.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads one unit or compound of units, such as {@code J/(g K)}. */
final class UnitReader {
    private static final int LONGEST = 60;
    private static final int MOST_TERMS = 8;
    private static final int HIGHEST_POWER = 9;
    private static final BigDecimal GREATEST = new BigDecimal("1e60");
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final String JOINS = " \u00A0\u202F\u2009\u00B7\u22C5*";
    private static final String BRACKETS = "/()^";
    private static final String MINUS = "-\u2212\u207B";
    private static final List<String> MULTIPLES = List.of("1000", "100", "10");

    private final String text;
    private final List<Term> terms = new ArrayList<>();
    private int at;
    private int multiple = 1;

    UnitReader(String text) {
        this.text = text;
    }

    /** One unit to a power, which stands in the denominator where the power is below zero. */
    private record Term(UnitTable.Entry entry, int power) {
    }

    /** Ends the reading at the first trouble; it never leaves this class. */
    private static final class Stop extends Exception {
        private static final long serialVersionUID = 1;
        private final transient UnitTrouble trouble;

        Stop(UnitTrouble trouble) {
            super(null, null, false, false);
            this.trouble = trouble;
        }
    }

    UnitResult read() {
        String whole = text.strip();
        if (whole.isEmpty() || whole.length() > LONGEST) {
            return new UnitResult.Bad(badSyntax(Optional.empty()));
        }
        Optional<Unit> simple = Units.symbol(whole);
        if (simple.isPresent()) {
            return new UnitResult.Ok(simple.get());
        }
        int from = text.indexOf(whole);
        if (NearUnits.isKnownMistake(whole)) {
            return new UnitResult.Bad(unknown(whole, from));
        }
        try {
            at = from;
            compound();
            return new UnitResult.Ok(unit());
        } catch (Stop stop) {
            return new UnitResult.Bad(stop.trouble);
        }
    }

    private void compound() throws Stop {
        if (peek() == '1' && text.substring(at + 1).stripLeading().startsWith("/")) {
            at++;
        } else {
            product(1);
        }
        if (peek() == '/') {
            at++;
            skipJoins();
            multiple = multiple();
            skipJoins();
            denominator();
        }
        if (at < text.length()) {
            throw new Stop(badSyntax(Optional.empty()));
        }
    }

    private void denominator() throws Stop {
        if (peek() == '(') {
            at++;
            product(-1);
            if (peek() != ')') {
                throw new Stop(badSyntax(Optional.empty()));
            }
            at++;
            skipJoins();
            return;
        }
        term(-1);
        skipJoins();
        if (at < text.length() && peek() != ')' && peek() != '(' && peek() != '^') {
            // A second stroke, or a product behind a stroke without brackets: what is below the line is not certain.
            while (at < text.length()) {
                at += peek() == '/' ? 1 : 0;
                product(-1);
                if (peek() == '(' || peek() == ')' || peek() == '^') {
                    throw new Stop(badSyntax(Optional.empty()));
                }
            }
            throw new Stop(badSyntax(Optional.of(symbol())));
        }
    }

    /** Terms up to a stroke, a bracket or the end; at least one. */
    private void product(int sign) throws Stop {
        do {
            skipJoins();
            term(sign);
            skipJoins();
        } while (at < text.length() && BRACKETS.indexOf(peek()) < 0);
    }

    private void term(int sign) throws Stop {
        int from = at;
        while (at < text.length() && !endsName(peek())) {
            at++;
        }
        String name = text.substring(from, at);
        if (name.isEmpty() || terms.size() >= MOST_TERMS) {
            throw new Stop(badSyntax(Optional.empty()));
        }
        UnitTable.Entry entry = UnitTable.spellings().get(name);
        if (entry == null) {
            throw new Stop(unknown(name, from));
        }
        int power = sign * power();
        int stroke = entry.unit().symbol().indexOf('/');
        if (stroke < 0) {
            terms.add(new Term(entry, power));
        } else {
            // M is mol/L: inside a compound its two parts stand by themselves.
            String symbol = entry.unit().symbol();
            terms.add(new Term(UnitTable.spellings().get(symbol.substring(0, stroke)), power));
            terms.add(new Term(UnitTable.spellings().get(symbol.substring(stroke + 1)), -power));
        }
    }

    /** {@code ^-1}, {@code ^2}, {@code -1}, {@code 3}, {@code ⁻¹}; 1 where nothing stands. */
    private int power() throws Stop {
        boolean caret = peek() == '^';
        at += caret ? 1 : 0;
        boolean minus = at < text.length() && MINUS.indexOf(peek()) >= 0;
        at += minus ? 1 : 0;
        int from = at;
        int power = 0;
        while (at < text.length() && digit(peek()) >= 0 && at - from < 2) {
            power = power * 10 + digit(peek());
            at++;
        }
        if (at == from && !caret && !minus) {
            return 1;
        }
        if (at == from || power == 0 || power > HIGHEST_POWER) {
            throw new Stop(badSyntax(Optional.empty()));
        }
        return minus ? -power : power;
    }

    private int multiple() {
        for (String number : MULTIPLES) {
            if (text.startsWith(number, at) && digit(at + number.length() < text.length()
                    ? text.charAt(at + number.length()) : ' ') < 0) {
                at += number.length();
                return Integer.parseInt(number);
            }
        }
        return 1;
    }

    private Unit unit() throws Stop {
        Dimension dimension = Dimension.NONE;
        BigDecimal factor = BigDecimal.ONE.divide(BigDecimal.valueOf(multiple), UnitTable.DIGITS);
        for (Term term : terms) {
            dimension = dimension.times(term.entry.unit().dimension().power(term.power));
            factor = factor.multiply(term.entry.factor().pow(term.power, UnitTable.DIGITS), UnitTable.DIGITS);
        }
        if (factor.compareTo(GREATEST) > 0 || BigDecimal.ONE.divide(factor, UnitTable.DIGITS).compareTo(GREATEST) > 0) {
            throw new Stop(badSyntax(Optional.empty()));
        }
        return new Unit(symbol(), dimension, factor.doubleValue());
    }

    /** The compound as it is printed: {@code J/(g K)}, {@code g/100 mL}, {@code 1/s}. */
    private String symbol() {
        List<String> above = printed(1);
        List<String> below = printed(-1);
        String head = above.isEmpty() ? "1" : String.join(" ", above);
        if (below.isEmpty()) {
            return head;
        }
        String number = multiple == 1 ? "" : multiple + " ";
        return head + "/" + number + (below.size() == 1 ? below.get(0) : "(" + String.join(" ", below) + ")");
    }

    private List<String> printed(int sign) {
        return terms.stream().filter(term -> term.power * sign > 0).map(term -> {
            int power = Math.abs(term.power);
            return term.entry.unit().symbol() + (power == 1 ? "" : SUPERSCRIPTS.charAt(power));
        }).collect(Collectors.toList());
    }

    private void skipJoins() {
        while (at < text.length() && JOINS.indexOf(peek()) >= 0) {
            at++;
        }
    }

    private char peek() {
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private static boolean endsName(char c) {
        return JOINS.indexOf(c) >= 0 || BRACKETS.indexOf(c) >= 0 || MINUS.indexOf(c) >= 0 || digit(c) >= 0;
    }

    private static int digit(char c) {
        return c >= '0' && c <= '9' ? c - '0' : SUPERSCRIPTS.indexOf(c);
    }

    private UnitTrouble badSyntax(Optional<String> suggestion) {
        String shown = text.strip();
        return new UnitTrouble.BadSyntax(shown.length() > LONGEST ? shown.substring(0, LONGEST) : shown, suggestion, 0,
                text.length());
    }

    private static UnitTrouble unknown(String name, int from) {
        List<NearUnit> near = NearUnits.find(Optional.empty(), name);
        return new UnitTrouble.Unknown(name, near.stream().map(NearUnit::symbol).toList(),
                near.stream().findFirst().map(NearUnit::reason), from, from + name.length());
    }
}
