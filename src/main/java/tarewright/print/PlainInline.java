package tarewright.print;

import java.util.List;
import tarewright.document.Text;

/** Runs of text without markup, either bare or with marks that tell a golden file what was bold, blank or filled. */
enum PlainInline {
    BARE, MARKED;

    private static final String HIGH = "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻";
    private static final String LOW = "₀₁₂₃₄₅₆₇₈₉₊₋";
    private static final String FLAT = "0123456789+-";

    String of(List<Text> texts) {
        StringBuilder out = new StringBuilder();
        texts.forEach(text -> add(text, out));
        return out.toString();
    }

    private void add(Text text, StringBuilder out) {
        if (text instanceof Text.Words t) {
            out.append(t.text());
        } else if (text instanceof Text.Strong t) {
            out.append(marked("**", of(t.inside()), "**"));
        } else if (text instanceof Text.Emphasis t) {
            out.append(marked("*", of(t.inside()), "*"));
        } else if (text instanceof Text.Code t) {
            out.append(marked("`", t.text(), "`"));
        } else if (text instanceof Text.Symbol t) {
            out.append(t.letter());
        } else if (text instanceof Text.Subscript t) {
            out.append(shifted(t.text(), LOW, "_"));
        } else if (text instanceof Text.Superscript t) {
            out.append(shifted(t.text(), HIGH, "^"));
        } else if (text instanceof Text.Chemical t) {
            out.append(of(t.pieces()));
        } else if (text instanceof Text.Quantity t) {
            out.append(marked("«", t.shown(), "»"));
        } else if (text instanceof Text.Blank t) {
            out.append(marked("[", "____", " " + t.says() + "]"));
        } else if (text instanceof Text.Filled t) {
            out.append(marked("[=", t.shown(), "]"));
        } else if (text instanceof Text.Arrow t) {
            out.append(t.over().isEmpty() ? "" : "(" + of(t.over()) + ")").append(t.sign());
        } else if (text instanceof Text.Fraction t) {
            out.append(grouped(of(t.above()))).append(" / ").append(grouped(of(t.below())));
        } else if (text instanceof Text.Struck t) {
            out.append(marked("~", of(t.inside()), "~"));
        } else if (text instanceof Text.Break) {
            out.append(this == MARKED ? "\n" : " ");
        } else {
            throw new IllegalStateException("text without plain words: " + text.getClass());
        }
    }

    private String marked(String before, String inside, String after) {
        return this == MARKED ? before + inside + after : inside;
    }

    /** Brackets where the stroke of a fraction would otherwise take hold of the wrong part. */
    private static String grouped(String part) {
        return part.matches(".*[ +−×·/\u2009\u202F\u00A0].*") ? "(" + part + ")" : part;
    }

    private static String shifted(String text, String alphabet, String otherwise) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            int at = FLAT.indexOf(text.charAt(i) == '−' ? '-' : text.charAt(i));
            if (at < 0) {
                return text.length() == 1 ? otherwise + text : otherwise + "(" + text + ")";
            }
            out.append(alphabet.charAt(at));
        }
        return out.toString();
    }
}
