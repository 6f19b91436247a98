package tarewright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads one unit or compound of units. Spaces, dots, full stops and asterisks multiply; one stroke divides, by one unit or by a
 * product in
 * brackets; powers are {@code ^-1}, {@code -1}, {@code 3} or superscripts behind a unit.
 */
final class UnitReader {
    private static final int LONGEST = 60;
    private static final int MOST_TERMS = 8;
    private static final int HIGHEST_POWER = 9;
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    /** Signs between units that multiply. A full stop is the dot of a keyboard without one. */
    private static final String DOTS = "\u00B7\u22C5*.";
    private static final String STROKE_OR_BRACKET = "/()";
    private static final String MINUS = "-\u2212\u207B";
    private static final List<String> MULTIPLES = List.of("1000", "100", "10");
    /** A unit whose symbol holds a space; shorter symbols never do. */
    private static final List<String> OF_TWO_WORDS = List.of("fl oz");

    private final String text;
    private final List<Compound.Term> terms = new ArrayList<>();
    private int at;
    private int multiple = 1;
    /** The first trouble, which ends the reading: nothing behind it is looked at. */
    private Optional<UnitTrouble> trouble = Optional.empty();

    private UnitReader(String text) {
        this.text = text;
    }

    static UnitResult read(String text) {
        return new UnitReader(text).read();
    }

    private UnitResult read() {
        String whole = Blanks.strip(text);
        Optional<Unit> simple = Units.symbol(whole);
        if (simple.isPresent()) {
            return new UnitResult.Ok(simple.get());
        }
        if (whole.isEmpty() || whole.length() > LONGEST) {
            return new UnitResult.Bad(badSyntax(Optional.empty()));
        }
        at = Blanks.skip(text, 0);
        if (NearUnits.isKnownMistake(whole) || whole.endsWith(".")) {
            return new UnitResult.Bad(unknown(whole, at));
        }
        compound();
        if (trouble.isPresent()) {
            return new UnitResult.Bad(trouble.get());
        }
        Optional<Unit> unit = new Compound(terms, multiple).unit();
        return unit.<UnitResult>map(UnitResult.Ok::new).orElseGet(() -> new UnitResult.Bad(badSyntax(Optional.empty())));
    }

    private void compound() {
        if (peek() == '1' && text.substring(at + 1).stripLeading().startsWith("/")) {
            at = Blanks.skip(text, at + 1);
        } else {
            product(1);
        }
        if (going() && peek() == '/') {
            at = Blanks.skip(text, at + 1);
            multiple = multiple();
            at = Blanks.skip(text, at);
            denominator();
        }
        if (going()) {
            fail(Optional.empty());
        }
    }

    private void denominator() {
        if (peek() == '(') {
            at = Blanks.skip(text, at + 1);
            product(-1);
            if (trouble.isEmpty() && peek() != ')') {
                fail(Optional.empty());
            }
            at = Blanks.skip(text, at + 1);
            return;
        }
        term(-1);
        at = Blanks.skip(text, at);
        if (!going()) {
            return;
        }
        // A second stroke, or a product behind a stroke without brackets: what is below the line is not certain.
        while (going()) {
            at = peek() == '/' || DOTS.indexOf(peek()) >= 0 ? Blanks.skip(text, at + 1) : at;
            product(-1);
            if (peek() == '(' || peek() == ')') {
                fail(Optional.empty());
            }
        }
        fail(Optional.of(new Compound(terms, multiple).symbol()));
    }

    /** Terms up to a stroke, a bracket or the end; at least one. */
    private void product(int sign) {
        term(sign);
        at = Blanks.skip(text, at);
        while (going() && STROKE_OR_BRACKET.indexOf(peek()) < 0) {
            at = DOTS.indexOf(peek()) >= 0 ? Blanks.skip(text, at + 1) : at;
            term(sign);
            at = Blanks.skip(text, at);
        }
    }

    private void term(int sign) {
        int from = at;
        Optional<String> words = OF_TWO_WORDS.stream().filter(two -> text.startsWith(two, from)).findFirst();
        at += words.map(String::length).orElse(0);
        while (at < text.length() && !endsName(peek())) {
            at++;
        }
        String name = text.substring(from, at);
        UnitTable.Entry entry = UnitTable.spellings().get(name);
        if (name.isEmpty() || terms.size() >= MOST_TERMS) {
            fail(Optional.empty());
        } else if (entry == null) {
            stop(unknown(name, from));
        } else {
            add(entry.unit().symbol(), sign * power());
        }
    }

    /** {@code M} is mol/L: inside a compound its two parts stand by themselves. */
    private void add(String symbol, int power) {
        int stroke = symbol.indexOf('/');
        String first = stroke < 0 ? symbol : symbol.substring(0, stroke);
        terms.add(new Compound.Term(UnitTable.spellings().get(first), power));
        if (stroke >= 0) {
            terms.add(new Compound.Term(UnitTable.spellings().get(symbol.substring(stroke + 1)), -power));
        }
    }

    /** 1 where no power stands. */
    private int power() {
        boolean caret = peek() == '^';
        at += caret ? 1 : 0;
        boolean minus = MINUS.indexOf(peek()) >= 0;
        at += minus ? 1 : 0;
        int from = at;
        int power = 0;
        while (digit(peek()) >= 0 && power <= HIGHEST_POWER) {
            power = power * 10 + digit(peek());
            at++;
        }
        if (at == from && !caret && !minus) {
            return 1;
        }
        if (power == 0 || power > HIGHEST_POWER) {
            fail(Optional.empty());
            return 1;
        }
        return minus ? -power : power;
    }

    private int multiple() {
        Optional<String> number = MULTIPLES.stream().filter(ten -> text.startsWith(ten, at)).findFirst();
        at += number.map(String::length).orElse(0);
        return number.map(Integer::parseInt).orElse(1);
    }

    private boolean going() {
        return trouble.isEmpty() && at < text.length();
    }

    private void fail(Optional<String> suggestion) {
        stop(badSyntax(suggestion));
    }

    private void stop(UnitTrouble found) {
        if (trouble.isEmpty()) {
            trouble = Optional.of(found);
        }
    }

    private char peek() {
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private static boolean endsName(char c) {
        return Blanks.is(c) || (DOTS + STROKE_OR_BRACKET + MINUS + "^").indexOf(c) >= 0 || digit(c) >= 0;
    }

    private static int digit(char c) {
        return c >= '0' && c <= '9' ? c - '0' : SUPERSCRIPTS.indexOf(c);
    }

    private UnitTrouble badSyntax(Optional<String> suggestion) {
        String shown = Blanks.strip(text);
        return new UnitTrouble.BadSyntax(shown.length() > LONGEST ? shown.substring(0, LONGEST) : shown, suggestion, 0,
                text.length());
    }

    private static UnitTrouble unknown(String name, int from) {
        return UnitTrouble.Unknown.of(name, NearUnits.find(Optional.empty(), name), from);
    }
}
