package tarewright.document;

import java.util.List;

/**
 * Running text without its typesetting, for comparing and for names that are only text; digits below and above the line as
 * Unicode has them.
 */
final class Plain {
    private static final String LINE = "0123456789+−";
    private static final String BELOW = "₀₁₂₃₄₅₆₇₈₉₊₋";
    private static final String ABOVE = "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻";

    private Plain() {
    }

    static String of(List<Text> texts) {
        StringBuilder plain = new StringBuilder();
        texts.forEach(t -> plain.append(of(t)));
        return plain.toString();
    }

    private static String of(Text text) {
        if (text instanceof Text.Words t) {
            return t.text();
        } else if (text instanceof Text.Strong t) {
            return of(t.inside());
        } else if (text instanceof Text.Emphasis t) {
            return of(t.inside());
        } else if (text instanceof Text.Code t) {
            return t.text();
        } else if (text instanceof Text.Symbol t) {
            return t.letter();
        } else if (text instanceof Text.Subscript t) {
            return moved(t.text(), BELOW);
        } else if (text instanceof Text.Superscript t) {
            return moved(t.text(), ABOVE);
        } else if (text instanceof Text.Chemical t) {
            return of(t.pieces());
        } else if (text instanceof Text.Quantity t) {
            return t.shown();
        } else if (text instanceof Text.Filled t) {
            return t.shown();
        } else if (text instanceof Text.Arrow t) {
            return t.sign();
        } else if (text instanceof Text.Fraction t) {
            return of(t.above()) + "/" + of(t.below());
        } else if (text instanceof Text.Struck t) {
            return of(t.inside());
        } else if (text instanceof Text.Blank) {
            return "____";
        }
        return " ";
    }

    private static String moved(String text, String to) {
        StringBuilder moved = new StringBuilder();
        for (char c : text.toCharArray()) {
            int at = LINE.indexOf(c);
            moved.append(at < 0 ? c : to.charAt(at));
        }
        return moved.toString();
    }
}
