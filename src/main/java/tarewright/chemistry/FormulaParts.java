package tarewright.chemistry;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.chemistry.FormulaPart.Kind;
import tarewright.exact.Rational;

/** What the pieces of a formula amount to, and how they are written out again. The pieces are taken to be in order. */
final class FormulaParts {
    static final FormulaPart DOT = new FormulaPart(Kind.DOT, "·");
    static final String MINUS = "−";

    private static final String DIGITS = "0123456789+" + MINUS;
    private static final String SUBSCRIPTS = "₀₁₂₃₄₅₆₇₈₉";
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻";

    /** The atoms of so many formula units: of one, unless the formula holds a fraction of an adduct. */
    record Counted(Map<String, Integer> atoms, int units) {
    }

    private FormulaParts() {
    }

    /** What a formula is made of; empty if there are more than {@link Formula#MOST_ATOMS} atoms of an element. */
    static Optional<Counted> count(List<FormulaPart> parts) {
        long units = 1;
        for (FormulaPart part : parts) {
            if (part.kind() == Kind.MULTIPLIER) {
                long denominator = multiplier(part).denominator().longValueExact();
                units = units / greatestCommonDivisor(units, denominator) * denominator;
            }
            if (units > Formula.MOST_ATOMS) {
                return Optional.empty();
            }
        }
        Map<String, Long> whole = new LinkedHashMap<>();
        for (List<FormulaPart> piece : split(parts)) {
            Optional<Map<String, Long>> counted = count(piece, units);
            if (counted.isEmpty() || !add(whole, counted.get(), 1)) {
                return Optional.empty();
            }
        }
        long common = whole.values().stream().reduce(units, FormulaParts::greatestCommonDivisor);
        Map<String, Integer> atoms = new LinkedHashMap<>();
        whole.forEach((symbol, count) -> atoms.put(symbol, Math.toIntExact(count / common)));
        return Optional.of(new Counted(Collections.unmodifiableMap(atoms), (int) (units / common)));
    }

    private static Optional<Map<String, Long>> count(List<FormulaPart> piece, long units) {
        Deque<Map<String, Long>> open = new ArrayDeque<>();
        open.push(new LinkedHashMap<>());
        Optional<Rational> multiplied = Optional.empty();
        for (int i = 0; i < piece.size(); i++) {
            FormulaPart part = piece.get(i);
            Map<String, Long> counted = Map.of();
            switch (part.kind()) {
                case MULTIPLIER -> multiplied = Optional.of(multiplied.orElseGet(() -> Rational.of(units)).times(multiplier(part)));
                case OPEN_BRACKET -> open.push(new LinkedHashMap<>());
                case CLOSE_BRACKET -> counted = open.pop();
                case SYMBOL -> counted = Symbols.isElement(part.text()) ? Map.of(part.text(), 1L) : Map.of();
                default -> { }
            }
            if (!add(open.peek(), counted, countBehind(piece, i))) {
                return Optional.empty();
            }
        }
        Map<String, Long> counted = new LinkedHashMap<>();
        long times = multiplied.map(m -> m.numerator().longValueExact()).orElse(units);
        return add(counted, open.pop(), times) ? Optional.of(counted) : Optional.empty();
    }

    private static Rational multiplier(FormulaPart part) {
        return Fractions.parse(part.text()).orElseThrow();
    }

    private static long greatestCommonDivisor(long one, long other) {
        return other == 0 ? one : greatestCommonDivisor(other, one % other);
    }

    private static long countBehind(List<FormulaPart> piece, int at) {
        boolean counted = at + 1 < piece.size() && piece.get(at + 1).kind() == Kind.SUBSCRIPT;
        return counted ? Long.parseLong(piece.get(at + 1).text()) : 1;
    }

    /** Adds, unless a sum passes the bound: each factor is within it, so that no product overflows. */
    private static boolean add(Map<String, Long> to, Map<String, Long> what, long times) {
        boolean within = true;
        for (Map.Entry<String, Long> each : what.entrySet()) {
            within &= to.merge(each.getKey(), each.getValue() * times, Long::sum) <= Formula.MOST_ATOMS;
        }
        return within;
    }

    static int charge(List<FormulaPart> parts) {
        FormulaPart last = parts.get(parts.size() - 1);
        if (last.kind() != Kind.SUPERSCRIPT) {
            return 0;
        }
        String size = last.text().substring(0, last.text().length() - 1);
        int charge = size.isEmpty() ? 1 : Integer.parseInt(size);
        return last.text().endsWith(MINUS) ? -charge : charge;
    }

    /** The pieces between the dots: the substance first, then its adducts with their counts. */
    static List<List<FormulaPart>> split(List<FormulaPart> parts) {
        List<List<FormulaPart>> pieces = new ArrayList<>(List.of(new ArrayList<>()));
        for (FormulaPart part : parts) {
            if (part.kind() == Kind.DOT) {
                pieces.add(new ArrayList<>());
            } else {
                pieces.get(pieces.size() - 1).add(part);
            }
        }
        return pieces;
    }

    /** How many waters an adduct is; 0 if it is something else. */
    static Rational waters(List<FormulaPart> adduct) {
        Rational times = Rational.ONE;
        StringBuilder written = new StringBuilder();
        for (FormulaPart part : adduct) {
            if (part.kind() == Kind.MULTIPLIER) {
                times = multiplier(part);
            } else if (part.kind() != Kind.SUPERSCRIPT) {
                written.append(part.text());
            }
        }
        return written.toString().equals("H2O") ? times : Rational.ZERO;
    }

    static String plain(List<FormulaPart> parts) {
        StringBuilder text = new StringBuilder();
        for (FormulaPart part : parts) {
            switch (part.kind()) {
                case DOT -> text.append('.');
                case MULTIPLIER -> text.append(Fractions.parse(part.text()).map(Rational::toString).orElse(part.text()));
                case SUPERSCRIPT -> text.append('^').append(part.text().replace(MINUS, "-"));
                default -> text.append(part.text());
            }
        }
        return text.toString();
    }

    static String unicode(List<FormulaPart> parts) {
        StringBuilder text = new StringBuilder();
        for (FormulaPart part : parts) {
            switch (part.kind()) {
                case SUBSCRIPT -> text.append(translated(part.text(), SUBSCRIPTS));
                case SUPERSCRIPT -> text.append(translated(part.text(), SUPERSCRIPTS));
                default -> text.append(part.text());
            }
        }
        return text.toString();
    }

    private static String translated(String text, String into) {
        StringBuilder translated = new StringBuilder();
        for (char c : text.toCharArray()) {
            int at = DIGITS.indexOf(c);
            translated.append(at < 0 ? c : into.charAt(at));
        }
        return translated.toString();
    }
}
