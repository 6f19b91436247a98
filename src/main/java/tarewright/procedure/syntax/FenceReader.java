package tarewright.procedure.syntax;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.SourceSpan;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.text.SourceText;
import tarewright.text.Span;
import tarewright.text.Spelling;

/** Turns a fenced code block into a {@link TypedBlock}, or into a {@link Part.Literal} if its first word is no type. */
final class FenceReader {
    /** Reads the Markdown inside a {@code key} or {@code prep}. */
    interface Inside {
        List<Part> read(String type, Span typeSpan, Places places, List<String> lines);
    }

    private final Places places;
    private final SourceText source;
    private final Findings findings;
    private final Inside inside;

    FenceReader(Places places, Findings findings, Inside inside) {
        this.places = places;
        this.source = places.source();
        this.findings = findings;
        this.inside = inside;
    }

    /** @param around the typed block that this one stands in, which it must not */
    Part read(FencedCodeBlock block, Optional<BodyReader.Around> around) {
        Piece opening = line(block.getSourceSpans().get(0)).trimmed();
        Piece info = withoutFence(opening);
        Piece type = firstWord(info);
        boolean known = BlockTypes.isKnown(type.text());
        Optional<SyntaxFinding> misplaced = known ? misplaced(block, opening, type, around) : Optional.empty();
        if (misplaced.isPresent()) {
            findings.add(misplaced.get());
        } else if (block.getClosingFenceLength() == null) {
            String fence = block.getFenceCharacter().repeat(block.getOpeningFenceLength());
            findings.add(new SyntaxFinding.FenceNotClosed(fence, opening.span()));
        }
        if (known && around.isEmpty()) {
            return typed(block, type, info, places.of(block));
        }
        if (!known && around.isEmpty()) {
            List<String> nearest = Spelling.nearInAnyCase(type.text(), BlockTypes.ALL);
            if (!nearest.isEmpty()) {
                findings.add(new SyntaxFinding.UnknownBlockType(type.text(), nearest, type.span()));
            }
        }
        return new Part.Literal(block.getLiteral(), places.of(block));
    }

    /** Whether this block stands in another, or another in this one, whose closing fence was forgotten. */
    private Optional<SyntaxFinding> misplaced(FencedCodeBlock block, Piece opening, Piece type,
            Optional<BodyReader.Around> around) {
        if (around.isPresent()) {
            return Optional.of(new SyntaxFinding.BlockInsideBlock(
                    type.text(), around.get().type(), type.span(), around.get().typeSpan()));
        }
        if (BlockTypes.holdsMarkdown(type.text())) {
            return Optional.empty();
        }
        return allContent(block).stream().filter(FenceReader::isOpeningFence).map(Piece::trimmed).findFirst()
                .map(inner -> new SyntaxFinding.BlockInsideBlock(
                        firstWord(withoutFence(inner)).text(), type.text(), inner.span(), opening.span()));
    }

    private TypedBlock typed(FencedCodeBlock block, Piece type, Piece info, Span span) {
        Piece name = info.part(type.text().length(), info.text().length()).trimmed();
        if (name.text().isEmpty() && BlockTypes.needsName(type.text())) {
            findings.add(new SyntaxFinding.NameMissing(type.text(), type.span()));
        }
        Span nameSpan = name.text().isEmpty() ? source.span(type.span().end(), type.span().end()) : name.span();
        Optional<Piece> equation = Optional.empty();
        Fields fields = Fields.NONE;
        List<Part> markdown = List.of();
        if (BlockTypes.holdsMarkdown(type.text())) {
            markdown = markdown(block, type);
        } else {
            List<Piece> lines = FieldLines.toRead(content(block), type.text(), findings);
            if (type.text().equals("reaction")) {
                equation = lines.stream().findFirst();
                if (equation.isEmpty()) {
                    findings.add(new SyntaxFinding.EquationMissing(type.span()));
                }
                lines = lines.subList(Math.min(1, lines.size()), lines.size());
            }
            fields = FieldReader.read(lines, type.text(), findings);
        }
        return new TypedBlock(type.text(), type.span(), Spaces.single(name.text()), nameSpan, equation, fields, markdown, span);
    }

    private List<Part> markdown(FencedCodeBlock block, Piece type) {
        List<String> lines = new ArrayList<>(Arrays.asList(block.getLiteral().split("\n", -1)));
        lines.remove(lines.size() - 1);
        int firstLine = source.lineAt(places.start(block.getSourceSpans().get(0))) + 1;
        return lines.isEmpty() ? List.of()
                : inside.read(type.text(), type.span(), Places.ofLines(source, firstLine, lines), lines);
    }

    /**
     * The lines between the fences. Of a block whose closing fence was forgotten, those before the first blank one or another opening fence: what follows is no field of
     * it, and is not told of line by line. A blank line may be missing among the lines.
     */
    private List<Piece> content(FencedCodeBlock block) {
        List<Piece> all = allContent(block);
        boolean open = block.getClosingFenceLength() == null || all.stream().anyMatch(FenceReader::isOpeningFence);
        List<Piece> lines = new ArrayList<>();
        int next = source.lineAt(places.start(block.getSourceSpans().get(0))) + 1;
        for (Piece line : all) {
            boolean behindBlank = line.trimmed().text().isEmpty() || source.lineAt(line.span().start()) > next;
            if (isOpeningFence(line) || open && behindBlank) {
                break;
            }
            lines.add(line);
            next = source.lineAt(line.span().start()) + 1;
        }
        return lines;
    }

    private List<Piece> allContent(FencedCodeBlock block) {
        List<SourceSpan> spans = block.getSourceSpans();
        int end = block.getClosingFenceLength() == null ? spans.size() : spans.size() - 1;
        return spans.subList(1, Math.max(end, 1)).stream().map(this::line).toList();
    }

    private static boolean isOpeningFence(Piece line) {
        Piece words = line.trimmed();
        return (words.text().startsWith("```") || words.text().startsWith("~~~")) && !withoutFence(words).text().isEmpty();
    }

    private static Piece withoutFence(Piece line) {
        int from = 0;
        while (from < line.text().length() && line.text().charAt(from) == line.text().charAt(0)) {
            from++;
        }
        return line.part(from, line.text().length()).trimmed();
    }

    private Piece line(SourceSpan span) {
        Span place = source.span(places.start(span), places.end(span));
        return new Piece(place.text(), place);
    }

    /** The first word behind the fence of a line of plain code, if that line looks like a fence. */
    static Optional<Piece> typeBehindFence(Piece line) {
        Piece words = line.trimmed();
        return isOpeningFence(words) ? Optional.of(firstWord(withoutFence(words))) : Optional.empty();
    }

    private static Piece firstWord(Piece text) {
        int end = 0;
        while (end < text.text().length() && !Spaces.isSpace(text.text().charAt(end))) {
            end++;
        }
        return text.part(0, end);
    }
}
