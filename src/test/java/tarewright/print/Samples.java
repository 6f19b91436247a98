package tarewright.print;

import java.util.List;
import tarewright.document.Piece;
import tarewright.document.Text;

/** Short names for the pieces of a sample. */
final class Samples {
    private Samples() {
    }

    static Text w(String words) {
        return new Text.Words(words);
    }

    static List<Text> t(String words) {
        return Text.words(words);
    }

    static Text sub(String text) {
        return new Text.Subscript(text);
    }

    static Text sup(String text) {
        return new Text.Superscript(text);
    }

    static Text arrow(String sign) {
        return new Text.Arrow(sign, List.of());
    }

    static Text chem(String spoken, Text... pieces) {
        return new Text.Chemical(List.of(pieces), spoken);
    }

    static Text q(String amount) {
        return new Text.Quantity(amount.replace(' ', '\u202F'));
    }

    static Text blank(int width, String says) {
        return new Text.Blank(width, says);
    }

    static Text filled(String shown) {
        return new Text.Filled(shown);
    }

    static Piece h(int level, String words) {
        return new Piece.Heading(level, t(words));
    }

    static Piece p(Text... texts) {
        return new Piece.Paragraph(List.of(texts));
    }

    static Piece p(List<Text> texts) {
        return new Piece.Paragraph(texts);
    }

    static Piece caution(String word, int level, String hazard, String consequence, String avoid) {
        return new Piece.Caution(word, level, t(hazard), t(consequence), t(avoid));
    }
}
