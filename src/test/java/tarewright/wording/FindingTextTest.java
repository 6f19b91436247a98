package tarewright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.expression.QuantityFinding;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.text.Columns;
import tarewright.text.SourceText;
import tarewright.text.Span;

/** Findings as a person reads them. */
class FindingTextTest {
    private final FindingText text = FindingText.in("en");

    private record Tried(String id, Severity severity, Span at, List<Span> also, Map<String, Object> fields) implements Finding {
    }

    private static Finding unit(String name, String content, String quantity) {
        SourceText source = new SourceText(name, content);
        int start = content.indexOf(quantity);
        QuantityResult.Bad bad = (QuantityResult.Bad) QuantityText.parse(quantity);
        return QuantityFinding.in(source.span(start, start + quantity.length()), bad.trouble());
    }

    private static Finding at(String content, String stretch, Severity severity) {
        int start = content.indexOf(stretch);
        Span span = new SourceText("a.md", content).span(start, start + stretch.length());
        return new Tried("not-positive", severity, span, List.of(), Map.of("text", stretch));
    }

    @Test
    void theLongForm() {
        Finding finding = unit("magnesium.md", "---\n---\n\n```solution acid\nvolume: 25.0 Ml\n```\n", "25.0 Ml");
        assertEquals("""
                magnesium.md:5:14: error: `Ml` is not a unit
                    volume: 25.0 Ml
                                 ^^
                    write instead: `mL` for millilitres (with a capital M it would be a million litres)
                    finding: unknown-unit""", text.full(finding));
        assertEquals("magnesium.md:5:14: error: `Ml` is not a unit", text.line(finding));
    }

    @Test
    void theCaretStandsUnderWhatTheEyeSees() {
        assertEquals(List.of("a 水 b", "     ^"), lines(at("\ta 水 b", "b", Severity.ERROR)));
        assertEquals(List.of("a   b", "    ^"), lines(at("a\tb", "b", Severity.ERROR)));
        assertEquals(List.of("e\u0301 b", "  ^"), lines(at("e\u0301 b", "b", Severity.ERROR)));
        assertEquals(List.of("水水", "^^^^"), lines(at("水水", "水水", Severity.ERROR)));
        assertEquals(List.of("a \uFFFD b", "    ^"), lines(at("a \u001B b", "b", Severity.ERROR)));
        assertEquals(List.of("ab", "^"), lines(at("ab", "", Severity.ERROR)));
        assertEquals(List.of("one", "^^^"), lines(at("one\ntwo", "one\ntwo", Severity.ERROR)));
    }

    @Test
    void aLongLineIsCutAroundTheCaret() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 500; i++) {
            String before = "abcdefgh ".repeat(random.nextInt(60)) + "|";
            String content = before + "HERE" + "| ijklmnop".repeat(random.nextInt(60));
            List<String> lines = lines(at(content, "HERE", Severity.ERROR));
            String shown = lines.get(0);
            assertTrue(Columns.width(shown, 0) <= 102, shown);
            int caret = lines.get(1).indexOf('^');
            assertEquals("HERE", shown.substring(caret, caret + 4));
            assertEquals("^^^^", lines.get(1).strip());
            assertEquals(content.length() > 100, shown.contains("…"), content);
        }
    }

    private List<String> lines(Finding finding) {
        return text.full(finding).lines().skip(1).limit(2).map(line -> line.substring(4)).toList();
    }

    @Test
    void secondPlacesAreShownByTheirLines() {
        SourceText source = new SourceText("a.md", "one: 1 g\n\n    two: 2 g\nthree: 3 g\n");
        Span first = source.span(0, 3);
        Finding finding = new Tried("not-positive", Severity.WARNING, first,
                List.of(source.span(5, 6), source.span(14, 17), source.span(19, 20)), Map.of("text", "1 g"));
        assertEquals("""
                a.md:1:1: warning: `1 g` should be more than zero
                    one: 1 g
                    ^^^
                    see also a.md:3: two: 2 g
                    finding: not-positive""", text.full(finding));
    }

    @Test
    void whatElseIsKnownStandsInItsLines() {
        Span span = new SourceText("a.md", "is: a + b").span(4, 9);
        Finding finding = new Tried("dimensions-differ", Severity.ERROR, span, List.of(),
                Map.of("left", "a", "leftKind", "volume", "leftUnit", Optional.of("mL"), "right", "b", "rightKind", "number",
                        "rightUnit", Optional.empty()));
        assertEquals("""
                a.md:1:5: error: `a` and `b` are different kinds of quantity and cannot be added or subtracted
                    is: a + b
                        ^^^^^
                    left: `a`, volume in `mL`
                    right: `b`, number without a unit
                    finding: dimensions-differ""", text.full(finding));
    }

    @Test
    void theReportIsInSourceOrderWithACount() {
        String content = "x: 1\ny: 2\nz: 3\n";
        Finding last = at(content, "z", Severity.ERROR);
        Finding first = at(content, "x", Severity.ERROR);
        Finding middle = at(content, "y", Severity.WARNING);
        String report = text.report(List.of(last, middle, first, middle));
        assertTrue(report.matches("(?s)a.md:1:1.*a.md:2:1.*a.md:3:1.*"), report);
        assertTrue(report.endsWith("\n\n2 errors, 1 warning\n"), report);
        Finding note = at(content, "y", Severity.NOTE);
        assertEquals("1 error, 2 notes", text.count(List.of(first, note, note)));
        assertEquals("", text.report(List.of()));
    }

    @Test
    void theFieldsForAProgram() {
        Finding finding = unit("a.md", "mass: 5 Ml", "5 Ml");
        Map<String, Object> fields = text.fields(finding);
        assertEquals(List.of("id", "severity", "line", "column", "message", "mend"), List.copyOf(fields.keySet()));
        assertEquals("unknown-unit", fields.get("id"));
        assertEquals("error", fields.get("severity"));
        assertEquals(1, fields.get("line"));
        assertEquals(9, fields.get("column"));
        assertEquals("`Ml` is not a unit", fields.get("message"));
    }

    @Test
    void listsAndMissingValues() {
        FindingWords words = FindingWords.in("en");
        assertEquals(List.of("`a`, `b` or `c`"), words.words("unknown-column",
                Map.of("column", "x", "suggestions", List.of("a", "b", "c"), "columns", List.of())).mend());
        assertEquals(List.of("one of `d` or `e`"), words.words("unknown-column",
                Map.of("column", "x", "suggestions", List.of(), "columns", List.of("d", "e"))).mend());
        assertEquals("`p`, `q` and `r`: each needs the next, in a circle, so that none can be worked out first",
                words.words("circular", Map.of("circle", List.of("p", "q", "r"))).headline());
        assertEquals("`x` is not a column of this table", words.words("unknown-column", Map.of("column", "x")).headline());
        assertEquals(List.of(), words.words("unknown-column", Map.of("column", "x")).mend());
    }

    @Test
    void whatTheAuthorTypedCannotSteerATerminal() {
        String typed = "a\u001B[31m\nb\u202Ec" + "x".repeat(500);
        String headline = FindingWords.in("en").words("not-positive", Map.of("text", typed)).headline();
        assertFalse(headline.chars().anyMatch(c -> c == 0x1B || c == '\n' || c == 0x202E), headline);
        assertTrue(headline.length() < 200, headline);
    }

    @Test
    void aLanguageWithoutWordsIsEnglish() {
        assertEquals(text.full(unit("a.md", "5 Ml", "5 Ml")), FindingText.in("tlh").full(unit("a.md", "5 Ml", "5 Ml")));
        assertEquals(text.full(unit("a.md", "5 Ml", "5 Ml")), FindingText.in("not a tag").full(unit("a.md", "5 Ml", "5 Ml")));
    }
}
