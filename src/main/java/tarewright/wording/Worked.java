package tarewright.wording;

import java.util.List;
import java.util.stream.Collectors;
import tarewright.derivation.Symbol;

/** A piece of a worked line, symbols, numbers and signs apart, so that it can be typeset. */
public sealed interface Worked {
    /** On one line of plain text, with ordinary spaces. */
    String plain();

    /** Pieces one after the other, plain. */
    static String plain(List<Worked> pieces) {
        boolean negative = !pieces.isEmpty() && pieces.get(0).equals(Sign.MINUS);
        String rest = pieces.stream().skip(negative ? 1 : 0).map(Worked::plain).collect(Collectors.joining(" "));
        return negative ? Sign.MINUS.sign() + rest : rest;
    }

    /**
     * A symbol.
     *
     * @param letter of the quantity, or words
     * @param of what it belongs to; empty where it need not be said
     * @param kind how both are set
     */
    record Name(String letter, String of, Symbol.Kind kind) implements Worked {
        static Name of(Symbol symbol) {
            return new Name(symbol.letter(), symbol.of(), symbol.kind());
        }

        @Override
        public String plain() {
            return of.isEmpty() ? letter : letter + "(" + of + ")";
        }
    }

    /** A bare number, as printed. */
    record Number(String digits) implements Worked {
        @Override
        public String plain() {
            return spaced(digits);
        }
    }

    /**
     * A value with its unit.
     *
     * @param number as printed
     * @param unit the parts of its unit, in order; none for a plain number
     */
    record Amount(String number, List<UnitPart> unit) implements Worked {
        public Amount {
            unit = List.copyOf(unit);
        }

        @Override
        public String plain() {
            return spaced(unit.isEmpty() ? number : number + " " + UnitPart.plain(unit));
        }
    }

    /** {@code +}, {@code −} or {@code ×} between two pieces, or {@code −} before one. */
    record Sign(String sign) implements Worked {
        static final Sign PLUS = new Sign("+");
        static final Sign MINUS = new Sign("\u2212");
        static final Sign TIMES = new Sign("×");

        boolean isTimes() {
            return equals(TIMES);
        }

        @Override
        public String plain() {
            return sign;
        }
    }

    /** One over the other; above stands at least one piece, if only the number 1. */
    record Fraction(List<Worked> above, List<Worked> below) implements Worked {
        public Fraction {
            above = List.copyOf(above);
            below = List.copyOf(below);
        }

        @Override
        public String plain() {
            boolean sum = above.stream().anyMatch(piece -> piece instanceof Sign sign && !sign.isTimes());
            String over = Worked.plain(above);
            String under = Worked.plain(below);
            // A symbol such as m/l has a stroke of its own.
            boolean stroke = below.get(0) instanceof Name name && name.letter().contains("/");
            return (sum ? "(" + over + ")" : over) + " / " + (below.size() > 1 || stroke ? "(" + under + ")" : under);
        }
    }

    record Bracketed(List<Worked> inside) implements Worked {
        public Bracketed {
            inside = List.copyOf(inside);
        }

        @Override
        public String plain() {
            return "(" + Worked.plain(inside) + ")";
        }
    }

    /** A power. @param exponent 2 or more */
    record Raised(Worked base, int exponent) implements Worked {
        private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

        @Override
        public String plain() {
            StringBuilder raised = new StringBuilder(base instanceof Amount ? "(" + base.plain() + ")" : base.plain());
            Integer.toString(exponent).chars().forEach(c -> raised.append(SUPERSCRIPTS.charAt(c - '0')));
            return raised.toString();
        }
    }

    /** The smallest or the largest of several. @param words {@code smallest of} in the language */
    record Selection(String words, List<List<Worked>> of) implements Worked {
        public Selection {
            of = of.stream().map(List::copyOf).toList();
        }

        @Override
        public String plain() {
            return words + " " + of.stream().map(Worked::plain).collect(Collectors.joining(", "));
        }
    }

    /**
     * A value from a table or an equation that is not spelled out.
     *
     * @param words its name
     * @param at the word before what it is taken at
     */
    record Looked(String words, String at, List<List<Worked>> inputs) implements Worked {
        public Looked {
            inputs = inputs.stream().map(List::copyOf).toList();
        }

        @Override
        public String plain() {
            return inputs.isEmpty() ? words
                    : words + " " + at + " " + inputs.stream().map(Worked::plain).collect(Collectors.joining(", "));
        }
    }

    private static String spaced(String text) {
        return text.replace(Numbers.NARROW_SPACE, ' ');
    }
}
