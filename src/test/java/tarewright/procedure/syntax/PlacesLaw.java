package tarewright.procedure.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.text.Span;

/**
 * What holds of every tree: each thing says what stands at its place, lies within what it is nested in, behind what
 * precedes it.
 */
final class PlacesLaw {
    private static final Pattern LINE_END = Pattern.compile(" *(\r\n|\r|\n)[ \t>]*");
    private static final Pattern DECODED = Pattern.compile("\\\\([!-/:-@\\[-`{-~])|&(amp|lt|middot|deg|#176|#xB0);");
    private static final Map<String, String> ENTITIES = Map.of("amp", "&", "lt", "<", "middot", "·", "deg", "°", "#176", "°",
            "#xB0", "°");

    private PlacesLaw() {
    }

    static void holds(Found<SourceFile> found) {
        SourceFile file = found.value();
        for (Finding finding : found.findings()) {
            assertTrue(finding.at().source() == file.text(), () -> finding.id() + " is told of another text");
            assertTrue(finding.also().stream().allMatch(also -> also.source() == file.text()), finding::id);
        }
        fields(file.front());
        Span whole = file.text().span(0, file.text().content().length());
        assertTrue(within(file.frontSpan(), whole));
        parts(file.body(), whole);
    }

    private static boolean within(Span inner, Span outer) {
        return inner.source() == outer.source() && inner.start() >= outer.start() && inner.end() <= outer.end();
    }

    private static void fields(Fields fields) {
        int end = 0;
        for (Fields.Field field : fields.all()) {
            assertEquals(field.key(), FieldReader.folded(field.keySpan().text()));
            assertTrue(within(field.keySpan(), field.span()), field::key);
            assertTrue(within(field.valueSpan(), field.span()), field::key);
            assertTrue(field.span().start() >= end, field::key);
            end = field.span().end();
            for (Fields.Piece piece : field.lines()) {
                assertEquals(piece.text(), piece.span().text());
                assertEquals(piece.text(), piece.trimmed().text());
                assertTrue(within(piece.span(), field.span()), field::key);
            }
            for (Fields.Piece piece : field.pieces()) {
                assertEquals(piece.text(), piece.span().text());
            }
        }
    }

    private static void parts(List<Part> parts, Span around) {
        int end = around.start();
        for (Part part : parts) {
            assertTrue(within(part.span(), around), () -> part + " is not within " + around.text());
            assertTrue(part.span().start() >= end, () -> part + " starts before the end of what precedes it");
            end = part.span().end();
            if (part instanceof TypedBlock block) {
                block(block);
            } else if (part instanceof Part.Table table) {
                table.head().forEach(cell -> cell(cell, table.span()));
                table.rows().forEach(row -> row.forEach(cell -> cell(cell, table.span())));
                table.rows().forEach(row -> assertEquals(table.head().size(), row.size()));
                assertEquals(table.head().size(), table.alignments().size());
            } else if (part instanceof Part.Items items) {
                items.items().forEach(item -> assertTrue(within(item.span(), items.span())));
                items.items().forEach(item -> parts(item.parts(), item.span()));
            } else {
                inlines(part.inlines(), part.span(), false);
                parts(part.parts(), part.span());
            }
        }
    }

    private static void block(TypedBlock block) {
        assertEquals(block.type(), block.typeSpan().text());
        assertEquals(block.name(), Spaces.single(block.nameSpan().text()));
        assertTrue(within(block.typeSpan(), block.span()));
        assertTrue(within(block.nameSpan(), block.span()));
        block.equation().ifPresent(equation -> assertEquals(equation.text(), equation.span().text()));
        fields(block.fields());
        assertTrue(block.fields().all().stream().allMatch(field -> within(field.span(), block.span())));
        parts(block.markdown(), block.span());
    }

    private static void cell(Part.Cell cell, Span table) {
        assertTrue(within(cell.span(), table));
        inlines(cell.inlines(), cell.span(), true);
    }

    private static void inlines(List<Inline> inlines, Span around, boolean inCell) {
        int end = around.start();
        for (Inline inline : inlines) {
            Span span = inline.span();
            assertTrue(within(span, around), () -> inline + " is not within " + around.text());
            assertTrue(span.start() >= end, () -> inline + " starts before the end of what precedes it");
            end = span.end();
            // GFM 4.10: a bar in a cell is escaped whatever it stands in, and that escape is undone first of all.
            String stands = inCell ? span.text().replace("\\|", "|") : span.text();
            if (inline instanceof Inline.Words words) {
                if (!holdsMarkup(words.text(), stands)) {
                    assertSays(words.text(), decoded(stands), span);
                }
                assertTrue(!words.text().isEmpty());
            } else if (inline instanceof Inline.Reference reference) {
                assertEquals('{', span.text().charAt(0));
                assertSays(reference.text(), Spaces.single(onOneLine(stands.substring(1, stands.length() - 1))), span);
                assertEquals('}', span.text().charAt(span.text().length() - 1));
            } else if (inline instanceof Inline.Code code) {
                assertSays(code.text(), code(stands), span);
            }
            inlines(inline.inside(), span, inCell);
        }
    }

    /**
     * CommonMark 6.6: in raw HTML, which is shown as it stands, a backslash and an entity are themselves. Where it begins and ends only the parser knows: behind a {@code <}
     * each of them may have been kept or undone, and nothing else may differ.
     */
    private static boolean holdsMarkup(String says, String stands) {
        int from = stands.indexOf('<');
        if (from < 0) {
            return false;
        }
        StringBuilder either = new StringBuilder(Pattern.quote(bare(decoded(stands.substring(0, from)))));
        String rest = onOneLine(stands.substring(from));
        Matcher escape = DECODED.matcher(rest);
        int at = 0;
        while (escape.find()) {
            either.append(Pattern.quote(bare(rest.substring(at, escape.start())))).append("(?:").append(Pattern.quote(bare(escape.group()))).append('|')
                    .append(Pattern.quote(bare(decoded(escape.group())))).append(')');
            at = escape.end();
        }
        return Pattern.matches(either + Pattern.quote(bare(rest.substring(at))), bare(onOneLine(says)));
    }

    private static String bare(String text) {
        return text.replaceAll("[ \t>]", "");
    }

    /**
     * On one line to the letter. Over several lines but for spaces and {@code >}, since only the parser knows which
     * {@code >} at the start of a line is a quote's.
     */
    private static void assertSays(String says, String stands, Span span) {
        boolean oneLine = span.text().indexOf('\n') < 0 && span.text().indexOf('\r') < 0;
        assertEquals(oneLine ? stands : stands.replaceAll("[ \t>]", ""), oneLine ? says : says.replaceAll("[ \t>]", ""),
                span::text);
    }

    private static String onOneLine(String text) {
        return LINE_END.matcher(text).replaceAll(" ");
    }

    private static String decoded(String text) {
        return DECODED.matcher(onOneLine(text)).replaceAll(match -> Matcher.quoteReplacement(
                match.group(1) != null ? match.group(1) : ENTITIES.get(match.group(2))));
    }

    /** What a code span says, by section 6.1 of the CommonMark specification 0.31.2; a bar in a table's cell may be escaped. */
    private static String code(String text) {
        int ticks = 0;
        while (text.charAt(ticks) == '`') {
            ticks++;
        }
        String inside = text.substring(ticks, text.length() - ticks).replaceAll("(\r\n|\r|\n)[ \t>]*", " ");
        boolean padded = inside.startsWith(" ") && inside.endsWith(" ") && !inside.isBlank();
        return padded ? inside.substring(1, inside.length() - 1) : inside;
    }
}
