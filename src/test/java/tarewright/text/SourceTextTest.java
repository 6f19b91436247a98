package tarewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SourceTextTest {
    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void linesEndInAnyOfThreeWays(String end) {
        SourceText text = new SourceText("a.md", "one" + end + end + "three" + end);
        assertEquals(4, text.lines());
        assertEquals("one", text.line(1));
        assertEquals("", text.line(2));
        assertEquals("three", text.line(3));
        assertEquals("", text.line(4));
        assertEquals(3, text.lineAt(text.startOfLine(3)));
        assertEquals(3, text.lineAt(text.endOfLine(3)));
        assertEquals("three", text.content().substring(text.startOfLine(3), text.endOfLine(3)));
    }

    @Test
    void anEmptyTextHasOneLine() {
        assertEquals(1, new SourceText("a.md", "").lines());
        assertEquals("", new SourceText("a.md", "").line(1));
    }

    @Test
    void columnsCountWhatTheEyeSees() {
        // Widths: Unicode Standard Annex 11 for the wide letters; combining marks have none (general category Mn).
        SourceText text = new SourceText("a.md", "x\te\u0301 H₂O 試 🧪|\n");
        int bar = text.content().indexOf('|');
        assertEquals("a.md:1:" + (1 + 4 + 2 + 4 + 3 + 2), text.span(bar, bar + 1).toString());
        assertEquals(5, text.span(2, 3).column());
    }

    @Test
    void aSpanIsPartOfItsText() {
        SourceText text = new SourceText("a.md", "0.20 g");
        Span span = text.span(0, 6);
        assertEquals("g", span.part(5, 6).text());
        assertEquals("g", span.part(5, 99).text());
        assertEquals("0.20 g", span.part(0, 4).to(span.part(5, 6)).text());
        assertThrows(IllegalArgumentException.class, () -> text.span(3, 7));
        assertThrows(IllegalArgumentException.class, () -> text.span(3, 2));
    }
}
