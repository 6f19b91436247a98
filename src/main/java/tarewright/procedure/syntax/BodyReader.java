package tarewright.procedure.syntax;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.ThematicBreak;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.text.SourceText;
import tarewright.text.Span;

/** Turns Markdown into {@link Part}s: the body of a file, or what stands inside a {@code key} or {@code prep}. */
final class BodyReader {
    /** The typed block whose Markdown is being read. */
    record Around(String type, Span typeSpan) {
    }

    private final Places places;
    private final SourceText source;
    private final Optional<Around> around;
    private final StrayBraces braces;
    private final Findings findings;
    private final List<LinkReferenceDefinition> definitions = new ArrayList<>();

    private BodyReader(Places places, Optional<Around> around, StrayBraces braces, Findings findings) {
        this.places = places;
        this.source = places.source();
        this.around = around;
        this.braces = braces;
        this.findings = findings;
    }

    /** The parts of a file from a line on, counted from 1. */
    static List<Part> read(SourceText source, int firstLine, Findings findings) {
        if (firstLine > source.lines()) {
            return List.of();
        }
        Places places = Places.from(source, firstLine);
        String text = source.content().substring(places.line(0).start());
        return read(text, places, Optional.empty(), new StrayBraces(findings), findings);
    }

    private static List<Part> read(String text, Places places, Optional<Around> around, StrayBraces braces, Findings findings) {
        Optional<Node> document = Markdown.parse(text);
        if (document.isEmpty()) {
            findings.add(new SyntaxFinding.TableTooLarge(Limits.CELLS, LargeTable.in(places, text)));
        }
        Node tree = document.orElseGet(() -> Markdown.parseWithoutTables(text));
        BodyReader reader = new BodyReader(places, around, braces, findings);
        List<Part> parts = reader.parts(tree, 0);
        reader.tellUnusedDefinitions(parts);
        return parts;
    }

    /** A definition prints nowhere; one that no link uses may have been meant as words. */
    private void tellUnusedDefinitions(List<Part> parts) {
        Set<String> used = new HashSet<>();
        Part.walk(parts, part -> part.inlines().forEach(top -> Inline.walk(top, inline -> {
            if (inline instanceof Inline.Link link) {
                used.add(link.destination());
            } else if (inline instanceof Inline.Picture picture) {
                used.add(picture.destination());
            }
        })));
        definitions.stream().filter(definition -> !used.contains(definition.getDestination()))
                .map(definition -> new SyntaxFinding.DefinitionNotUsed(definition.getLabel(), places.of(definition)))
                .forEach(findings::add);
    }

    private List<Part> parts(Node parent, int depth) {
        List<Part> parts = new ArrayList<>();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            add(node, depth, parts);
        }
        return parts;
    }

    private void add(Node node, int depth, List<Part> parts) {
        if (node instanceof CommentBlock.Comment comment) {
            if (!comment.closed()) {
                findings.add(new SyntaxFinding.CommentNotClosed(places.of(comment)));
            }
            parts.addAll(parts(comment, depth));
        } else if (node instanceof Paragraph) {
            List<Inline> inlines = inlines(node);
            if (!inlines.isEmpty()) {
                parts.add(new Part.Paragraph(inlines, places.of(node)));
            }
        } else if (node instanceof LinkReferenceDefinition definition) {
            definitions.add(definition);
        } else {
            parts.add(part(node, depth));
        }
    }

    private Part part(Node node, int depth) {
        Span span = places.of(node);
        if (node instanceof Heading heading) {
            return new Part.Heading(heading.getLevel(), inlines(node), span);
        }
        if (node instanceof FencedCodeBlock fence) {
            return new FenceReader(places, findings, this::inside).read(fence, around);
        }
        if (node instanceof IndentedCodeBlock code) {
            tellIndentedBlock(code);
            return new Part.Literal(code.getLiteral(), span);
        }
        if (node instanceof ThematicBreak) {
            return new Part.Rule(span);
        }
        if (node instanceof TableBlock table) {
            return new TableReader(places, braces, findings).read(table);
        }
        if (depth >= Limits.NESTING) {
            if (!findings.hasAny(SyntaxFinding.NestedTooDeep.class)) {
                findings.add(new SyntaxFinding.NestedTooDeep(Limits.NESTING, firstLineOf(span)));
            }
            return new Part.Literal(span.text(), span);
        }
        if (node instanceof BlockQuote) {
            return new Part.Quote(parts(node, depth + 1), span);
        }
        if (node instanceof ListBlock list) {
            return items(list, span, depth + 1);
        }
        throw new IllegalStateException("no such block: " + node.getClass());
    }

    private Part items(ListBlock list, Span span, int depth) {
        List<Part.Item> items = new ArrayList<>();
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            items.add(new Part.Item(parts(item, depth), places.of(item)));
        }
        Optional<Integer> start = list instanceof OrderedList ordered ? Optional.of(ordered.getMarkerStartNumber())
                : Optional.empty();
        return new Part.Items(start.isPresent(), start.orElse(1), items, span);
    }

    private List<Part> inside(String type, Span typeSpan, Places within, List<String> lines) {
        return read(String.join("\n", lines), within, Optional.of(new Around(type, typeSpan)), braces, findings);
    }

    private List<Inline> inlines(Node node) {
        return new InlineReader(places, source, places.of(node).start(), braces, findings).read(node);
    }

    private void tellIndentedBlock(IndentedCodeBlock code) {
        SourceSpan first = code.getSourceSpans().get(0);
        Span line = source.span(places.start(first), places.end(first));
        FenceReader.typeBehindFence(new Piece(line.text(), line)).filter(type -> BlockTypes.isKnown(type.text())).ifPresent(
                type -> findings.add(new SyntaxFinding.BlockIndentedTooFar(type.text(), type.span())));
    }

    private Span firstLineOf(Span span) {
        return source.span(span.start(), Math.max(span.start(), Math.min(span.end(), source.endOfLine(span.line()))));
    }
}
