package tarewright.procedure.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.finding.Found;
import tarewright.text.SourceText;

/** Texts made to cost time, memory or stack. Each is long enough to overflow a recursion or to show a square. */
class HostileTextTest {
    private static final int LONG = 50_000;

    private static Found<SourceFile> read(String text) {
        return Reader.read(new SourceText("hostile.md", text));
    }

    static Stream<String> scraps() {
        return Stream.of("*", "_", "[", "![", "{", "}", "`", "<", "<!--", "\\", "&#", "**a ", "*a **b", "[a](", "![a](b ",
                "> ", "- ", "1. ", "#",
                "|", "a|", "```\n", "```solid\n", "\n", "\t", "\r", "- a\n", "[a]: b\n", "x:\n", "{}", "[a][b]", "<!-- \n\n",
                        "<?", "\u00a0\n");
    }

    @ParameterizedTest
    @MethodSource("scraps")
    void oneScrapOverAndOver(String scrap) {
        Found<SourceFile> found = read(scrap.repeat(LONG / scrap.length()));
        PlacesLaw.holds(found);
        assertTrue(deepestPart(found.value().body()) <= Limits.NESTING + 1);
    }

    private static int deepestPart(List<Part> parts) {
        return parts.stream().mapToInt(part -> 1 + deepestPart(part.parts())).max().orElse(0);
    }

    private static int deepest(List<Inline> inlines) {
        return inlines.stream().mapToInt(inline -> 1 + deepest(inline.inside())).max().orElse(0);
    }

    static Stream<String> nested() {
        return Stream.of(400, 20_000).flatMap(n -> Stream.of("*a ".repeat(n) + "b* ".repeat(n), "**a *b ".repeat(n)
                + "c* d** ".repeat(n),
                "![".repeat(n) + "a" + "](b)".repeat(n), "_a *b ".repeat(n) + "c* d_ ".repeat(n)));
    }

    @ParameterizedTest
    @MethodSource("nested")
    void marksDeepInOneAnotherStayTextBeyondALimit(String text) {
        Found<SourceFile> found = read(text);
        assertEquals(List.of(), found.findings());
        int deepest = deepest(found.value().body().get(0).inlines());
        boolean withinMarks = text.chars().filter(c -> c == '*' || c == '_').count() <= Limits.MARKS;
        assertTrue(deepest <= Limits.INLINE_NESTING + 1, () -> "deepest " + deepest);
        assertTrue(deepest > 10 || !withinMarks, () -> "deepest " + deepest);
    }

    @Test
    void marksBeyondTheLimitOfOneParagraphAreText() {
        String text = "*a* ".repeat(Limits.MARKS);
        List<Inline> inlines = read(text + "\n\n*b*").value().body().get(0).inlines();
        long emphasised = inlines.stream().filter(i -> i instanceof Inline.Emphasis).count();
        assertEquals(Limits.MARKS / 2, emphasised);
        assertTrue(inlines.get(inlines.size() - 1) instanceof Inline.Words words && words.text().endsWith("*a* *a*"));
        assertTrue(read(text + "\n\n*b*").value().body().get(1).inlines().get(0) instanceof Inline.Emphasis);
    }

    @Test
    void whatIsNestedTooDeepIsKeptAsItStands() {
        Found<SourceFile> found = read("> ".repeat(25) + "a {b}\n\nafter {c}\n");
        assertEquals(1, found.findings().size());
        assertEquals(List.of("c"), found.value().references().stream().map(Inline.Reference::text).toList());
        Part deepest = found.value().body().get(0);
        for (int i = 1; i < Limits.NESTING; i++) {
            deepest = deepest.parts().get(0);
        }
        assertEquals("> > > > > a {b}", ((Part.Literal) deepest.parts().get(0)).text());
    }

    @Test
    void twentyDeepIsReadWhole() {
        assertEquals(List.of(), read("> ".repeat(20) + "a").findings());
        assertEquals(List.of(), read("1. ".repeat(20) + "a").findings());
        assertEquals("a", read("- > ".repeat(10) + "{a}").value().references().get(0).text());
    }

    @Test
    void theRestOfATextWithAHugeTableIsStillRead() {
        String wide = "a|".repeat(3000) + "\n" + "-|".repeat(3000) + "\n" + "x|\n".repeat(3000);
        Found<SourceFile> found = read("| a |\n|---|\n| {b} |\n\n" + wide + "\n```solid c\nmass: 1 g\n```\n");
        assertEquals(List.of("table-too-large"), found.findings().stream().map(f -> f.id()).toList());
        assertEquals(6, found.findings().get(0).at().line());
        assertEquals("b", found.value().references().get(0).text());
        assertEquals("c", found.value().blocks().get(0).name());
    }

    @Test
    void aTableOfFiveThousandCellsIsATable() {
        Part table = read("| a | b |\n|---|---|\n" + "| 1 | 2 |\n".repeat(2499)).value().body().get(0);
        assertEquals(2499, ((Part.Table) table).rows().size());
    }

    @Test
    void manyEscapedBarsKeepTheirPlaces() {
        Found<SourceFile> found = read("a|b\n-|-\n" + "\\|{a}".repeat(2_000) + "|c\n");
        PlacesLaw.holds(found);
        assertEquals(2_000, found.value().references().size());
    }

    @Test
    void aValueThatIsTooLongIsCutAndAFieldTooManyLeftOut() {
        Fields front = read("---\nk: v\n" + "  v\n".repeat(LONG) + "---\n").value().front();
        assertTrue(front.all().get(0).value().length() <= Limits.VALUE);
        StringBuilder many = new StringBuilder("---\n");
        for (int i = 0; i < 2000; i++) {
            many.append('k').append(i).append(": v\n");
        }
        assertEquals(Limits.FIELDS, read(many + "---\n").value().front().all().size());
    }

    /** Found by the fuzzer: a declaration, which is raw HTML, with a backslash in it. */
    @ParameterizedTest
    @ValueSource(strings = {"<!o see how \\--\nit goes\n-->", "Text <!o \\-- & &amp; x> more", "x <a title=\"\\*\"> y", "< a \\* b"})
    void rawMarkupIsShownAsItStands(String text) {
        PlacesLaw.holds(Reader.read(new SourceText("markup.md", text)));
    }
}
