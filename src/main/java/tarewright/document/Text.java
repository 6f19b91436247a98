package tarewright.document;

import java.util.List;

/** A run of text on a page, already worded and formatted. */
public sealed interface Text {
    /** Plain words. Narrow no-break spaces (U+202F) already stand between numbers and units. */
    record Words(String text) implements Text {
    }

    record Strong(List<Text> inside) implements Text {
        public Strong {
            inside = List.copyOf(inside);
        }
    }

    record Emphasis(List<Text> inside) implements Text {
        public Emphasis {
            inside = List.copyOf(inside);
        }
    }

    record Code(String text) implements Text {
    }

    /** A symbol of a physical quantity, set in italics: n, V, p. */
    record Symbol(String letter) implements Text {
    }

    record Subscript(String text) implements Text {
    }

    record Superscript(String text) implements Text {
    }

    /**
     * A chemical formula or equation.
     *
     * @param pieces words, subscripts, superscripts, arrows
     * @param spoken how a person would say it, the text alternative
     */
    record Chemical(List<Text> pieces, String spoken) implements Text {
        public Chemical {
            pieces = List.copyOf(pieces);
        }
    }

    /** An amount that the reader measures out: bold, never broken between number and unit. */
    record Quantity(String shown) implements Text {
    }

    /** A ruled space to write in, so many characters wide. @param says what goes there, for a screen reader */
    record Blank(int width, String says) implements Text {
    }

    /** What stands in a blank of the key: the expected value, set apart from print. */
    record Filled(String shown) implements Text {
    }

    /** A reaction arrow. @param over what stands over it (a catalyst), often empty; @param sign the arrow itself */
    record Arrow(String sign, List<Text> over) implements Text {
        public Arrow {
            over = List.copyOf(over);
        }
    }

    /** A fraction with a bar. */
    record Fraction(List<Text> above, List<Text> below) implements Text {
        public Fraction {
            above = List.copyOf(above);
            below = List.copyOf(below);
        }
    }

    /** A unit struck through because it cancels. */
    record Struck(List<Text> inside) implements Text {
        public Struck {
            inside = List.copyOf(inside);
        }
    }

    record Break() implements Text {
    }

    static List<Text> words(String text) {
        return List.of(new Words(text));
    }
}
