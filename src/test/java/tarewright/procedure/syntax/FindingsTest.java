package tarewright.procedure.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.text.SourceText;
import tarewright.text.Span;

/**
 * Each finding with the place it points at. In a text, «…» stands around the place of the next finding and ‹…› around
 * the cause that it also points at; ¦ is a line end.
 */
class FindingsTest {
    /** @param fields as printed, or empty where there are none */
    record Case(String text, String id, String fields) {
        @Override
        public String toString() {
            return id + " in " + text.substring(0, Math.min(60, text.length()));
        }
    }

    static Stream<Case> cases() {
        return Stream.of(
                new Case("«\u0000»x\u0000", "control-character", "{character=U+0000, times=2}"),
                new Case("a «\uD83E» b", "control-character", "{character=U+D83E, times=1}"),
                new Case("a «\uDDEA» b", "control-character", "{character=U+DDEA, times=1}"),
                new Case("a «\u0085» b", "control-character", "{character=U+0085, times=1}"),
                new Case("«---»¦title: x¦¦Text.", "front-matter-not-closed", "{}"),
                new Case("«---»¦title: x¦```caution¦hazard: x¦```¦¦---¦", "front-matter-not-closed", "{}"),
                new Case("---¦title: x¦«and more»¦---¦", "not-a-field", "{where=front matter}"),
                new Case("---¦  «: x»¦---¦", "not-a-field", "{where=front matter}"),
                new Case("```solid a¦mass 2 g¦```".replace("mass 2 g", "«mass 2 g»"), "not-a-field", "{where=solid}"),
                new Case("```solid a¦<!-- x --> «mass: 2 g»¦```", "not-a-field", "{where=solid}"),
                new Case("---¦‹Title›: x¦code: y¦«title»: z¦  more¦---¦", "key-given-twice", "{key=title}"),
                new Case("- x¦¦  ```solid a¦  ‹weigh with›: b¦  «Weigh  with» : b¦  ```¦", "key-given-twice", "{key=weigh with}"),
                new Case("---¦" + numbered("k%d: v¦", Limits.FIELDS) + "«one: more»¦---¦", "too-many-fields",
                        "{where=front matter, limit=500}"),
                new Case("---¦«aims»:¦" + "  measure it¦".repeat(2000) + "code: x¦---¦", "value-too-long",
                        "{key=aims, limit=20000}"),
                new Case("```«soluton» acid¦```", "unknown-block-type", "{type=soluton, nearest=[solution]}"),
                new Case("~~~ «Solution» acid¦~~~", "unknown-block-type", "{type=Solution, nearest=[solution]}"),
                new Case("```«solution:» acid¦```", "unknown-block-type", "{type=solution:, nearest=[solution]}"),
                new Case("> ```«naswer»¦> ```", "unknown-block-type", "{type=naswer, nearest=[answer]}"),
                new Case("```«solid»¦mass: 1 g¦```", "name-missing", "{type=solid}"),
                new Case("```solid ‹my  acid›¦```¦¦1. x¦¦   ```gas «my acid»¦   ```", "name-given-twice", "{name=my acid}"),
                new Case("```«reaction» r¦¦```", "equation-missing", "{}"),
                new Case("‹```solid a›¦mass: 1 g¦«```liquid b»¦volume: 2 mL¦```¦", "block-inside-block",
                        "{inner=liquid, outer=solid}"),
                new Case("````‹key›¦text¦```«answer»¦value: x¦```¦````", "block-inside-block", "{inner=answer, outer=key}"),
                new Case("Text¦¦«```caution»¦hazard: x", "fence-not-closed", "{fence=```}"),
                new Case("«```caution»¦hazard: x¦¦1. Do this.¦2. Do that.¦", "fence-not-closed", "{fence=```}"),
                new Case("1. x¦¦   «~~~~ text»¦   y¦¦z", "fence-not-closed", "{fence=~~~~}"),
                new Case("1. x¦¦       ```«answer»¦       value: y¦       ```", "block-indented-too-far", "{type=answer}"),
                new Case("Use «{»acid now", "brace-not-closed", "{}"),
                new Case("Use «{»acid¦¦now}", "brace-not-closed", "{}"),
                new Case("Use «{»a {acid}", "brace-not-closed", "{}"),
                new Case("Use «{»" + "acid ".repeat(100), "brace-not-closed", "{}"),
                new Case("| {acid} | b |¦|---|---|¦| a «{»b | c |", "brace-not-closed", "{}"),
                new Case("Use acid«}» now", "brace-not-opened", "{}"),
                new Case("# Use \\{acid«}»", "brace-not-opened", "{}"),
                new Case("- Use **«{ }»** now", "reference-empty", "{}"),
                new Case("Text «<!--» not closed", "comment-not-closed", "{}"),
                new Case("Text¦¦«<!-- not closed¦¦```solid a¦```»", "comment-not-closed", "{}"),
                new Case("```solid a¦«<!-- x»¦mass: 1 g¦```", "comment-not-closed", "{}"),
                new Case("H«<sub>»2</sub>O and <b>more</b>", "html-shown-as-text", "{html=<sub>}"),
                new Case("«<div¦class=\"x\">»¦  {acid}¦</div>", "html-shown-as-text", "{html=<div class=\"x\">}"),
                new Case("«[H+]: 0.1»¦¦Text.", "definition-not-used", "{label=H+}"),
                new Case("> ".repeat(20) + "«> text»¦", "nested-too-deep", "{limit=20}"),
                new Case("- ".repeat(20) + "«- text»¦", "nested-too-deep", "{limit=20}"),
                new Case("Text¦¦| a | b |¦«|---|---|»¦" + "| 1 | 2 |¦".repeat(2500), "table-too-large", "{limit=5000}"),
                new Case("| a | b |¦|---|---|¦| 1 | 2 | «3 | 4 |»¦", "cell-left-over", "{columns=2}"));
    }

    private static String numbered(String pattern, int times) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < times; i++) {
            text.append(String.format(Locale.ROOT, pattern, i));
        }
        return text.toString();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void pointsAtTheSmallestPlaceThatShowsIt(Case with) {
        String marked = with.text().replace('¦', '\n');
        Found<SourceFile> found = read(marked.replaceAll("[«»‹›]", ""));
        assertEquals(List.of(with.id()), found.findings().stream().map(Finding::id).toList());
        Finding finding = found.findings().get(0);
        assertEquals(with.fields(), finding.fields().toString());
        assertEquals(List.of(place(marked, '«', '»')), List.of(place(finding.at())));
        List<String> causes = marked.indexOf('‹') < 0 ? List.of() : List.of(place(marked, '‹', '›'));
        assertEquals(causes, finding.also().stream().map(FindingsTest::place).toList());
    }

    private static Found<SourceFile> read(String text) {
        return Reader.read(new SourceText("case.md", text));
    }

    private static String place(Span span) {
        return span.start() + "-" + span.end();
    }

    private static String place(String marked, char open, char close) {
        int start = marked.indexOf(open);
        int end = marked.indexOf(close);
        return (start - marksBefore(marked, start)) + "-" + (end - marksBefore(marked, end));
    }

    private static long marksBefore(String marked, int offset) {
        return marked.substring(0, offset).chars().filter(c -> "«»‹›".indexOf(c) >= 0).count();
    }

    @Test
    void aFileOverTheLimitIsNotRead() {
        String most = "a".repeat(Limits.FILE);
        assertEquals(List.of(), read(most).findings());
        Found<SourceFile> found = read(most + "{");
        assertEquals("1:1-1:1 ERROR file-too-large {length=1048577, limit=1048576}\n", TreeText.of(found.findings()));
        assertEquals("front [1:1-1:1]\n", TreeText.of(found.value()));
    }

    /** What is past a limit is pointed at where it begins, and nothing is read of a file with too much in it. */
    @Test
    void whatIsTooMuchIsToldOnce() {
        Found<SourceFile> blocks = read(numbered("```value v%d\nis: 1 g\n```\n\n", Limits.BLOCKS + 2));
        assertEquals(List.of("too-many-blocks"), blocks.findings().stream().map(Finding::id).toList());
        assertEquals(4 * Limits.BLOCKS + 1, blocks.findings().get(0).at().line());
        assertEquals(List.of(), blocks.value().blocks());
        Found<SourceFile> references = read("{a}\n".repeat(Limits.REFERENCES + 1));
        assertEquals(List.of("too-many-references"), references.findings().stream().map(Finding::id).toList());
        assertEquals(Limits.REFERENCES + 1, references.findings().get(0).at().line());
        Found<SourceFile> braces = read("a } b\n\n".repeat(Limits.FINDINGS + 7));
        assertEquals(Limits.FINDINGS + 1, braces.findings().size());
        Finding more = braces.findings().get(Limits.FINDINGS);
        assertEquals("and-more {told=200, more=7, worst=ERROR}", more.id() + " " + more.fields());
        assertEquals(2 * Limits.FINDINGS + 1, more.at().line());
    }

    @Test
    void eachKindOfFindingIsAmongTheCases() {
        Set<String> seen = cases().map(Case::id).collect(Collectors.toCollection(HashSet::new));
        seen.addAll(List.of("file-too-large", "too-many-blocks", "too-many-references", "and-more"));
        assertEquals(ids(), seen);
    }

    private static Set<String> ids() {
        return Arrays.stream(SyntaxFinding.class.getPermittedSubclasses()).map(FindingsTest::idOf).collect(Collectors.toSet());
    }

    /** The id as the name of its record gives it. */
    private static String idOf(Class<?> kind) {
        return kind.getSimpleName().replaceAll("(?<!^)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }

    @Test
    void eachKindOfFindingHasWordsWhoseBlanksItFills() throws IOException {
        Properties words = new Properties();
        try (InputStream in = SyntaxFinding.class.getResourceAsStream("/tarewright/words/findings_en.properties")) {
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        for (Class<?> kind : SyntaxFinding.class.getPermittedSubclasses()) {
            String id = idOf(kind);
            assertTrue(words.containsKey(id + ".says"), id);
            Set<String> components = Arrays.stream(kind.getRecordComponents()).map(RecordComponent::getName)
                    .collect(Collectors.toSet());
            for (String key : words.stringPropertyNames()) {
                if (key.startsWith(id + ".")) {
                    Matcher blank = Pattern.compile("\\{(\\w+)}").matcher(words.getProperty(key));
                    while (blank.find()) {
                        assertTrue(components.contains(blank.group(1)), key + " has a blank " + blank.group(1));
                    }
                }
            }
        }
    }

    @Test
    void findingsComeInSourceOrder() {
        Found<SourceFile> found = read("---\ntitle: x\ntitle: y\n---\n{\n\n```soluton x\n```\n\n```solid\nx\n```\n");
        List<Integer> starts = found.findings().stream().map(f -> f.at().start()).toList();
        assertEquals(List.of("key-given-twice", "brace-not-closed", "unknown-block-type", "name-missing", "not-a-field"),
                found.findings().stream().map(Finding::id).toList());
        List<Integer> sorted = new ArrayList<>(starts);
        sorted.sort(null);
        assertEquals(sorted, starts);
    }

    @Test
    void ordinaryCodeAndMarkdownGiveNone() {
        for (String text : List.of("```\ncode {x}\n```", "```python\nprint(\"{}\")\n```", "```text\nmass 2 g\n```",
                "``` json\n{}\n```\n",
                "`{x}` and \\{x\\} and `` } ``", "[a]\n\n[a]: b", "a < b > c, 5 <!- 6", "--- \n---\n", "", "\uFEFF",
                        "\uFEFF---\na: b\n---\n",
                "```key\n```\n```key\n```\n", "```apparatus\nbalance: balance\n```",
                        "```caution\n<!-- a\n b: c\n-->\nhazard: x\n```")) {
            assertTrue(read(text).findings().isEmpty(), () -> text + " gave " + read(text).findings());
        }
    }
}
