package tarewright.procedure.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tarewright.finding.Found;
import tarewright.text.SourceText;

/** What each part of the notation is read as. */
class ReaderTest {
    private static SourceFile read(String... lines) {
        Found<SourceFile> found = Reader.read(new SourceText("test.md", String.join("\n", lines)));
        assertEquals("", TreeText.of(found.findings()));
        return found.value();
    }

    private static SourceFile readWithFindings(String text) {
        return Reader.read(new SourceText("test.md", text)).value();
    }

    /** Running text in one line: references in braces, strong in ** and so on, a hard break as a stroke. */
    private static String shown(List<Inline> inlines) {
        return inlines.stream().map(inline -> {
            if (inline instanceof Inline.Words w) {
                return w.text();
            } else if (inline instanceof Inline.Reference r) {
                return "{" + r.text() + "}";
            } else if (inline instanceof Inline.Code c) {
                return "`" + c.text() + "`";
            } else if (inline instanceof Inline.HardBreak) {
                return "/";
            } else if (inline instanceof Inline.Link l) {
                return "[" + shown(l.inside()) + "](" + l.destination() + ")";
            } else if (inline instanceof Inline.Picture p) {
                return "![" + p.alternative() + "](" + p.destination() + ")";
            }
            String mark = inline instanceof Inline.Strong ? "**" : "*";
            return mark + shown(inline.inside()) + mark;
        }).collect(Collectors.joining());
    }

    private static String shown(String text) {
        return read(text).body().stream().map(part -> shown(part.inlines())).collect(Collectors.joining("¶"));
    }

    @Test
    void aFieldIsVerbatim() {
        Fields front = read("---", "Title:  # 5 % [no]: {x} *y* \"z\"  ", "group   Size : 2", "empty:", "---", "text").front();
        assertEquals("# 5 % [no]: {x} *y* \"z\"", front.get("title").orElseThrow().value());
        assertEquals("2", front.get("group size").orElseThrow().value());
        assertEquals("", front.get("empty").orElseThrow().value());
        assertEquals(List.of(), front.get("empty").orElseThrow().pieces());
        assertEquals("group   Size", front.get("group size").orElseThrow().keySpan().text());
    }

    @Test
    void keysFoldAlikeInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertTrue(read("---", "TITLE: x", "---").front().has("title"));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void indentedLinesGoOnWithTheValueAndPiecesStandBetweenSemicolons() {
        Fields.Field field = read("---", "vary: 0.5 g; 1.0 g", "   ", "    1.5 g:", "\tlast; ;", "---").front().get("vary")
                .orElseThrow();
        assertEquals("0.5 g; 1.0 g 1.5 g: last; ;", field.value());
        assertEquals(List.of("0.5 g", "1.0 g", "1.5 g:", "last"), field.pieces().stream().map(Fields.Piece::text).toList());
        assertEquals(List.of("0.5 g", "1.0 g", "1.5 g:", "last"), field.pieces().stream().map(p -> p.span().text()).toList());
    }

    @Test
    void withinABlockIndentationCountsFromItsFirstLine() {
        TypedBlock block = read("1. Ask", "", "   ```answer", "     value: x", "       y", "     marks: 2", "   lines: 3",
                "   ```").blocks().get(0);
        assertEquals(List.of("value", "marks", "lines"), block.fields().all().stream().map(Fields.Field::key).toList());
        assertEquals("x y", block.fields().get("value").orElseThrow().value());
    }

    @Test
    void aReactionStartsWithItsEquation() {
        TypedBlock block = read("```reaction  burning\tin  air", "", "<!-- not balanced -->", "  Mg + O2 -> MgO  ",
                "goes to: 85 %", "```").blocks().get(0);
        assertEquals("burning in air", block.name());
        assertEquals("Mg + O2 -> MgO", block.equation().orElseThrow().text());
        assertEquals("85 %", block.fields().get("goes to").orElseThrow().value());
    }

    @Test
    void markdownInsideAKeyIsReadWithItsReferences() {
        SourceFile file = read("- x", "", "  ````key", "  | a |", "  |---|", "  | {b} |", "", "      code {c}", "",
                "  1. {d}", "  ````", "", "{e}");
        TypedBlock key = file.blocks().get(0);
        assertEquals(List.of("Table", "Literal", "Items"), key.markdown().stream().map(p -> p.getClass().getSimpleName())
                .toList());
        assertEquals(List.of("{b}", "{d}", "{e}"), file.references().stream().map(r -> r.span().text()).toList());
        assertEquals(Fields.NONE, key.fields());
    }

    @Test
    void codeThatIsNoTypeStaysCode() {
        Part part = read("> ```python x", "> mass = {a}", ">", ">   y", "> ```").body().get(0).parts().get(0);
        assertEquals("mass = {a}\n\n  y\n", ((Part.Literal) part).text());
        assertEquals("a\n", ((Part.Literal) read("~~~~", "a", "~~~~").body().get(0)).text());
    }

    @Test
    void anItemThatHoldsAnAnswerIsAQuestion() {
        SourceFile file = read("4. Why?", "", "   ```answer", "   words: so", "   ```", "", "5. Parts", "   1. a", "",
                "      ```answer", "      value: b", "      ```",
                "", "6. A step");
        Part.Items items = (Part.Items) file.body().get(0);
        assertEquals(4, items.start());
        assertTrue(items.ordered());
        assertEquals(List.of(true, true, false), items.items().stream().map(Part.Item::isQuestion).toList());
        assertEquals(List.of(1, 0, 0), items.items().stream().map(i -> i.answers().size()).toList());
    }

    @Test
    void aTableKeepsItsShape() {
        Part.Table table = (Part.Table) read("a | b | c | d", ":-- | :-: | --: | ---", "1", "2 | {x} \\| `\\|` | *3*").body()
                .get(0);
        assertEquals(List.of(Part.Alignment.LEFT, Part.Alignment.CENTRE, Part.Alignment.RIGHT, Part.Alignment.NONE),
                table.alignments());
        assertEquals(List.of(List.of("1", "", "", ""), List.of("2", "{x} | `|`", "*3*", "")),
                table.rows().stream().map(row -> row.stream().map(cell -> shown(cell.inlines())).toList()).toList());
        assertEquals("{x}", table.inlines().stream().filter(i -> i instanceof Inline.Reference).findFirst()
                .orElseThrow().span().text());
    }

    @Test
    void referencesInRunningText() {
        assertEquals("Cut {length of ribbon} now", shown("Cut { length  of\n\tribbon } now"));
        assertEquals("{heat_of_x} and {y*z*} *{a_b}*", shown("{heat_of_x} and {y*z*} *{a_b}*"));
        assertEquals("{x} `{y}` {z}", shown("\\{x} `{y}` {z}".replace("{x}", "{x\\}")));
        assertEquals("**{a}** [{b}](u) {c}/{d}", shown("**{a}** [{b}](u) {c}  \n{d}"));
        assertEquals("![the {acid} here](p.png)", shown("![the *{acid}* here](p.png)"));
        assertEquals(List.of("acid"), read("# ![{acid}](p.png)").references().stream().map(Inline.Reference::text).toList());
        assertEquals("\\{a}", shown("\\\\{a}"));
        assertEquals("{[a} b", shown("{[a} b"));
    }

    @Test
    void aBraceWithoutPartnerIsText() {
        assertEquals("a { b } c", shown(readWithFindings("a { b\n\nc").body().get(0).inlines()) + " } c");
        assertEquals("a {b {c}", shown(readWithFindings("a {b {c}").body().get(0).inlines()));
    }

    @Test
    void softBreaksAreSpacesAndEntitiesAreDecoded() {
        assertEquals("one two **three** four", shown("one\ntwo\n**three**\nfour"));
        assertEquals("25 °C & 3 < 5 · x*y*", shown("25&nbsp;&deg;C &amp; 3 &lt; 5 &middot; x\\*y\\*").replace('\u00a0', ' '));
        assertEquals("± H₂O e\u0301 𝛥 🧪", shown("± H₂O e\u0301 𝛥 🧪"));
    }

    @Test
    void commentsPrintNowhere() {
        assertEquals("a b¶c¶d e", shown("a <!-- x --> b\n<!-- y\n\n{z}\n```solid q\n-->\nc\n\n<!-- - --> d <!----> <!--> e"));
        assertEquals("Heat it {a}", shown("<!-- x --> Heat it {a} <!-- y -->"));
        assertEquals("after", shown("<!--\n- x\n--> after"));
        assertEquals("", shown("<!-- only -->"));
        assertEquals("a", shown("> <!-- x\n> y -->\n\na").replace("¶", ""));
        assertEquals("`<!-- x -->` <!-- y", shown("`<!-- x -->` \\<!-- y"));
    }

    @Test
    void otherHtmlIsText() {
        assertEquals("H<sub>2</sub>O", shown(readWithFindings("H<sub>2</sub>O").body().get(0).inlines()));
        assertEquals("<div> {a} </div>", shown(readWithFindings("<div>\n{a}\n</div>").body().get(0).inlines()));
    }

    @Test
    void linksKeepTheirDestinations() {
        assertEquals("[a](x) [b](https://example.org/) [c](d)", shown("[a](x \"t\") <https://example.org/> [c][l]\n\n[l]: d")
                .replace("[https://example.org/]", "[b]"));
    }

    @Test
    void otherParts() {
        SourceFile file = read("Title", "=====", "", "***", "", "    code", "", "- x", "- y", "", "> z");
        assertEquals(List.of("Heading", "Rule", "Literal", "Items", "Quote"), file.body().stream().map(p -> p.getClass()
                .getSimpleName()).toList());
        assertEquals(1, ((Part.Heading) file.body().get(0)).level());
    }

    @Test
    void frontMatterStandsOnlyAtTheVeryTop() {
        assertEquals(Fields.NONE, readWithFindings("\n---\na: b\n---\n").front());
        SourceFile marked = read("\uFEFF---", "a: b", "--- ", "{c}");
        assertTrue(marked.front().has("a"));
        assertEquals("---\na: b\n--- ", marked.frontSpan().text());
        assertEquals("c", marked.references().get(0).text());
        assertEquals("a", shown("\uFEFFa"));
        assertEquals("{c}", read("\uFEFF{c}").references().get(0).span().text());
        assertTrue(read("---", "---").front().all().isEmpty());
    }

    @Test
    void frontMatterThatIsNotClosedEndsAtABlankLine() {
        SourceFile file = readWithFindings("---\na: b\nc: d\n\n{e}\n");
        assertEquals(List.of("a", "c"), file.front().all().stream().map(Fields.Field::key).toList());
        assertEquals("e", file.references().get(0).text());
    }

    @Test
    void aCleanTextIsTheFilesText() {
        SourceText text = new SourceText("clean.md", "a 🧪\tb\r\n");
        assertSame(text, Reader.read(text).value().text());
        SourceFile unclean = readWithFindings("a\u0007{b\u0000}\uD800");
        assertEquals("a\uFFFD{b\uFFFD}\uFFFD", unclean.text().content());
        assertEquals("b\uFFFD", unclean.references().get(0).text());
    }
}
