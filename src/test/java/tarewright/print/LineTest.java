package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static tarewright.print.Samples.chem;
import static tarewright.print.Samples.sub;
import static tarewright.print.Samples.t;
import static tarewright.print.Samples.w;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.document.Text;

/** What may part at the end of a line, and what clings together. Where no source is named: common practice, no source. */
class LineTest {
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "put it in; put |it |in",
        "24.305 g/mol; 24.305 g/mol",
        "at −5 °C; at |−5 °C",
        "well-known method; well-|known |method",
        "2-methylpropan-2-ol; 2-methylpropan-2-ol",
        "5-10 mL; 5-10 mL",
        "acid–base pair; acid–|base |pair",
        "a  b; a  |b",
        "10\u00A0mL of; 10\u00A0mL |of",
        "10\u202FmL; 10\u202FmL",
        "abc\u200Bdef; abc\u200B|def",
        "水素水素; 水|素|水|素",
        "Ca(OH)2; Ca(OH)2"})
    void lineEnds(String text, String expected) {
        LineBreaks breaks = new LineBreaks();
        breaks.setText(text);
        StringBuilder found = new StringBuilder();
        int last = 0;
        for (int at = breaks.next(); at != BreakIterator.DONE; at = breaks.next()) {
            found.append(text, last, at).append('|');
            last = at;
        }
        assertEquals(expected + "|", found.toString());
    }

    private static String glued(Text... texts) {
        StringBuilder out = new StringBuilder();
        for (Object part : Glue.of(List.of(texts))) {
            out.append(part instanceof Glue.Whole whole ? "{" + PlainInline.MARKED.of(whole.inside()) + "}"
                    : PlainInline.MARKED.of(List.of((Text) part)));
        }
        return out.toString();
    }

    @Test
    @DisplayName("what has no space between clings together, whatever its style")
    void glue() {
        assertEquals("take {«5 g»,} then", glued(w("take "), new Text.Quantity("5 g"), w(", then")));
        assertEquals("the {(H₂O)} here", glued(w("the ("), chem("water", w("H"), sub("2"), w("O")), w(") here")));
        assertEquals("**splash **{**goggles**.}", glued(new Text.Strong(t("splash goggles")), w(".")));
        assertEquals("{*a***b**} **c**", glued(new Text.Emphasis(t("a")), new Text.Strong(t("b")), w(" "),
                new Text.Strong(t("c"))));
        assertEquals("plain words", glued(w("plain words")));
        assertEquals("`two words`.", glued(new Text.Code("two words"), w(".")));
        assertEquals("{`one`.}", glued(new Text.Code("one"), w(".")));
        assertEquals("", glued());
    }

    @Test
    @DisplayName("nothing is lost or moved by gluing, nor by cutting at relation signs, over random lines")
    void nothingLost() {
        SplittableRandom random = new SplittableRandom(11);
        String[] scraps = {"a", " ", "b c", " d ", "= ", " = ", "=", "×", " × ", ", ", "", "\u202F", "e  f"};
        for (int round = 0; round < 3_000; round++) {
            List<Text> texts = new ArrayList<>();
            int size = random.nextInt(9);
            for (int i = 0; i < size; i++) {
                String scrap = scraps[random.nextInt(scraps.length)];
                texts.add(switch (random.nextInt(5)) {
                    case 0 -> new Text.Strong(t(scrap));
                    case 1 -> new Text.Quantity(scrap);
                    case 2 -> new Text.Emphasis(List.of(new Text.Strong(t(scrap)), w(scrap)));
                    default -> w(scrap);
                });
            }
            List<Text> flat = new ArrayList<>();
            Glue.of(texts).forEach(part -> flat.addAll(part instanceof Glue.Whole whole ? whole.inside() : List.of((Text) part)));
            assertEquals(PlainText.bare(texts), PlainText.bare(flat));
            StringBuilder cut = new StringBuilder();
            Relations.of(texts).forEach(relation -> cut.append(PlainText.bare(relation)));
            assertEquals(PlainText.bare(texts).replaceAll("\\s", ""), cut.toString().replaceAll("\\s", ""));
        }
    }

    @Test
    @DisplayName("a worked line is cut before its relation signs only, a very long relation before its operators too")
    void relations() {
        assertEquals("[= m / M, = 3 g / (4 g/mol), ≈ 0.75 mol]", relations("= m / M = 3 g / (4 g/mol) ≈ 0.75 mol"));
        assertEquals("[= c(H=1)]", relations("= c(H=1)"));
        assertEquals("[3.2 = x]".replace(" = ", ", = "), relations("3.2 = x"));
        assertEquals("[= 3.25 mmol × 8.314 kPa L/(mol K) × 293.15 K, / (101.3 kPa − 2.3 kPa), = 80.0 mL]",
                relations("= 3.25 mmol × 8.314 kPa L/(mol K) × 293.15 K / (101.3 kPa − 2.3 kPa) = 80.0 mL"));
    }

    private static String relations(String right) {
        return Relations.of(t(right)).stream().map(PlainText::bare).toList().toString();
    }
}
