package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import tarewright.document.Piece;
import tarewright.document.Sheet;
import tarewright.document.Text;

/**
 * The page for a browser, without a browser: what WCAG 2.1 (W3C Recommendation, 5 June 2018) asks of its structure. Success criteria are named by
 * their numbers. A rule engine in a real browser goes over the same pages in the profile {@code accessibility}.
 */
class WebTest {
    private static final WebPrinter PRINTER = new WebPrinter(Templates.packed());
    private static final Set<String> FIELDS = Set.of("input", "textarea");

    static List<Sheet> sheets() {
        return SampleSheets.all(Sheet.Paper.A4);
    }

    private static String source(Sheet sheet) {
        return new String(PRINTER.print(sheet), StandardCharsets.UTF_8);
    }

    private static Document page(Sheet sheet) throws Exception {
        String source = source(sheet);
        assertTrue(source.startsWith("<!DOCTYPE html>"));
        return new SafeXml().read(source.substring("<!DOCTYPE html>".length()));
    }

    private static List<Element> all(Document page) {
        NodeList nodes = page.getElementsByTagName("*");
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static List<Element> named(Document page, String... names) {
        return all(page).stream().filter(e -> Arrays.asList(names).contains(e.getLocalName())).toList();
    }

    private static boolean hidden(Element element) {
        for (org.w3c.dom.Node at = element; at instanceof Element e; at = at.getParentNode()) {
            if (e.getAttribute("aria-hidden").equals("true")) {
                return true;
            }
        }
        return false;
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void thePageSaysItsLanguageTitleAndMainPart(Sheet sheet) throws Exception {
        Document page = page(sheet);
        assertEquals(sheet.language(), page.getDocumentElement().getAttribute("lang"), "3.1.1");
        assertTrue(named(page, "title").get(0).getTextContent().contains(sheet.title()), "2.4.2");
        assertEquals(1, named(page, "main").size(), "1.3.1");
        assertEquals(1, named(page, "h1").size(), "1.3.1");
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void headingsSkipNoLevelAndAreNeverEmpty(Sheet sheet) throws Exception {
        int last = 0;
        for (Element heading : named(page(sheet), "h1", "h2", "h3", "h4", "h5", "h6")) {
            int level = heading.getLocalName().charAt(1) - '0';
            assertTrue(level <= last + 1, () -> "1.3.1: a level is skipped before " + heading.getTextContent());
            assertFalse(heading.getTextContent().isBlank(), "2.4.6");
            last = level;
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everyPictureHasWordsOrIsLeftOut(Sheet sheet) throws Exception {
        for (Element picture : named(page(sheet), "svg")) {
            boolean spoken = picture.getAttribute("role").equals("img") && !picture.getAttribute("aria-label").isBlank();
            assertTrue(spoken || hidden(picture), "1.1.1");
        }
        for (Element picture : named(page(sheet), "img")) {
            assertFalse(picture.getAttribute("alt").isBlank(), "1.1.1");
            assertTrue(picture.getAttribute("src").startsWith("data:image/png;base64,"), "self-contained");
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everyFieldHasAName(Sheet sheet) throws Exception {
        Document page = page(sheet);
        Map<String, Element> ids = new HashMap<>();
        all(page).stream().filter(e -> e.hasAttribute("id")).forEach(e -> ids.put(e.getAttribute("id"), e));
        for (Element field : all(page).stream().filter(e -> FIELDS.contains(e.getLocalName())).toList()) {
            Optional<Element> pointed = Optional.ofNullable(ids.get(field.getAttribute("aria-labelledby")));
            boolean inLabel = field.getParentNode() instanceof Element parent && parent.getLocalName().equals("label") && !parent.getTextContent().isBlank();
            assertTrue(inLabel || !field.getAttribute("aria-label").isBlank() || pointed.filter(e -> !e.getTextContent().isBlank()).isPresent(), "4.1.2");
            assertFalse(hidden(field), "4.1.2: a field inside what is not read out");
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void idsAreUniqueAndWhatPointsToOneFindsIt(Sheet sheet) throws Exception {
        Document page = page(sheet);
        Set<String> seen = new HashSet<>();
        for (Element element : all(page)) {
            assertTrue(!element.hasAttribute("id") || seen.add(element.getAttribute("id")), () -> "twice: " + element.getAttribute("id"));
        }
        for (Element element : all(page)) {
            for (String pointer : List.of("aria-labelledby", "aria-describedby", "for")) {
                assertTrue(!element.hasAttribute(pointer) || seen.contains(element.getAttribute(pointer)), () -> pointer + " points nowhere");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void tableHeadsSayWhatTheyHead(Sheet sheet) throws Exception {
        for (Element head : named(page(sheet), "th")) {
            assertTrue(Set.of("col", "row").contains(head.getAttribute("scope")), "1.3.1");
            assertFalse(head.getTextContent().isBlank(), "1.3.1");
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void aFormulaIsReadOutInWordsAndItsSignsAreNot(Sheet sheet) throws Exception {
        int formulas = 0;
        for (Element seen : all(page(sheet)).stream().filter(e -> e.getAttribute("class").equals("seen")).toList()) {
            assertTrue(hidden(seen), "1.1.1");
            Element next = (Element) seen.getNextSibling();
            assertEquals("spoken", next.getAttribute("class"));
            assertFalse(next.getTextContent().isBlank());
            formulas++;
        }
        assertTrue(formulas > 0 || !source(sheet).contains("<sub>"), "a subscript outside of any formula");
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void nothingRunsAndNothingIsFetched(Sheet sheet) throws Exception {
        Document page = page(sheet);
        assertEquals(List.of(), named(page, "script", "iframe", "object", "embed", "link", "video", "audio", "base", "form", "image", "use"));
        for (Element element : all(page)) {
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                String name = element.getAttributes().item(i).getNodeName();
                boolean carried = element.getLocalName().equals("img") && name.equals("src") && element.getAttribute(name).startsWith("data:image/png;base64,");
                assertFalse(name.startsWith("on") || !carried && Set.of("src", "srcset", "action", "data", "xlink:href").contains(name), name);
            }
            assertTrue(!element.hasAttribute("href") || element.getAttribute("href").startsWith("#"));
        }
        String css = css(page);
        assertFalse(css.contains("url(") || css.contains("@import"), css);
    }

    @Test
    void theSameSheetGivesTheSameBytes() {
        for (Sheet sheet : sheets()) {
            assertArrayEquals(PRINTER.print(sheet), new WebPrinter(Templates.packed()).print(sheet));
        }
    }

    @Test
    void whatAnAuthorTypesStaysText() throws Exception {
        String evil = "</title><script>alert(1)</script><img src=x onerror=alert(1)> ]]> &amp; \"quoted\" \u0000";
        List<Text> words = Text.words(evil);
        Sheet sheet = SampleSheets.sheet(Sheet.Kind.HANDOUT, evil, Sheet.Paper.A4, List.of(new Piece.Heading(2, words), new Piece.Paragraph(words),
                new Piece.Paragraph(List.of(new Text.Blank(3, evil), new Text.Code(evil), new Text.Chemical(words, evil))), new Piece.RuledLines(2, evil)));
        Document page = page(sheet);
        assertEquals(List.of(), named(page, "script", "img"));
        assertTrue(named(page, "h2").get(0).getTextContent().replace("\u200B", "").contains("<script>alert(1)</script>"));
    }

    /** WCAG 2.1, 1.4.3: 4.5 to 1 between each colour of text and each ground that the style sheet gives it; 1.4.11: 3 to 1 for lines. */
    @Test
    void everyColourStandsOutFromItsGround() throws Exception {
        String css = css(page(sheets().get(0)));
        Set<String> grounds = found(css, "background-color: (#[0-9a-f]{6})");
        grounds.add("#ffffff");
        Set<String> inks = found(css, "[ ;{]color: (#[0-9a-f]{6})");
        assertTrue(inks.size() >= 3 && grounds.size() >= 3, "the colours are no longer read");
        for (String ground : grounds) {
            for (String ink : inks) {
                assertTrue(contrast(ink, ground) >= 4.5, () -> ink + " on " + ground + ": " + contrast(ink, ground));
            }
            for (String line : found(css, "(?:border|border-left|border-bottom|outline|border-color)[a-z-]*: [^;]*(#[0-9a-f]{6})")) {
                assertTrue(contrast(line, ground) >= 3, () -> line + " on " + ground);
            }
        }
        Matcher other = Pattern.compile("(?<!-)color: ([^;]+)").matcher(css);
        while (other.find()) {
            assertTrue(other.group(1).matches("#[0-9a-f]{6}"), () -> "a colour that this test cannot read: " + other.group(1));
        }
    }

    /** The two examples of the definition: black on white is 21 to 1; #767676 on white is 4.54 to 1 (common practice: the lightest grey that passes). */
    @Test
    void contrastIsReckonedAsDefined() {
        assertEquals(21, contrast("#000000", "#ffffff"), 1e-9);
        assertEquals(4.54, contrast("#767676", "#ffffff"), 0.005);
    }

    private static String css(Document page) {
        return named(page, "style").get(0).getTextContent();
    }

    private static Set<String> found(String css, String pattern) {
        Set<String> found = new HashSet<>();
        Matcher matcher = Pattern.compile(pattern).matcher(css);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** Relative luminance as WCAG 2.1 defines it. */
    private static double luminance(String colour) {
        double[] parts = new double[3];
        for (int i = 0; i < 3; i++) {
            double c = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            parts[i] = c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
    }
}
