package tarewright.procedure.syntax;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.finding.Found;
import tarewright.text.SourceText;
import tarewright.text.Span;

/** Reads one file of the notation. */
public final class Reader {
    private Reader() {
    }

    /**
     * The tree of what could be read, with what is wrong in the notation, in source order. Any text at all is read, in a
     * time that grows with its length only; a file over 2²⁰ UTF-16 units gives an empty tree.
     *
     * <p>A text with control characters or halves of surrogate pairs in it is replaced by one that has U+FFFD in their
     * places; all spans are then places in that one, which is the {@link SourceFile#text()}.
     */
    public static Found<SourceFile> read(SourceText text) {
        Findings findings = new Findings();
        int length = text.content().length();
        if (length > Limits.FILE) {
            Span start = text.span(0, 0);
            findings.add(new SyntaxFinding.FileTooLarge(length, Limits.FILE, start));
            return new Found<>(new SourceFile(text, Fields.NONE, start, List.of()), findings.inOrder());
        }
        SourceText clean = CleanText.of(text, findings);
        FrontMatter front = FrontMatter.of(clean, findings);
        List<Part> body = BodyReader.read(clean, front.nextLine(), findings);
        SourceFile file = new SourceFile(clean, front.fields(), front.span(), body);
        Optional<SyntaxFinding> tooMuch = tooMuch(file);
        if (tooMuch.isPresent()) {
            findings.add(tooMuch.get());
            return new Found<>(new SourceFile(clean, front.fields(), front.span(), List.of()), findings.inOrder());
        }
        tellNamesGivenTwice(file, findings);
        return new Found<>(file, findings.inOrder());
    }

    private static Optional<SyntaxFinding> tooMuch(SourceFile file) {
        List<TypedBlock> blocks = file.blocks();
        if (blocks.size() > Limits.BLOCKS) {
            return Optional.of(new SyntaxFinding.TooManyBlocks(Limits.BLOCKS, blocks.get(Limits.BLOCKS).typeSpan()));
        }
        List<Inline.Reference> references = file.references();
        return references.size() > Limits.REFERENCES
                ? Optional.of(new SyntaxFinding.TooManyReferences(Limits.REFERENCES, references.get(Limits.REFERENCES).span())) : Optional.empty();
    }

    private static void tellNamesGivenTwice(SourceFile file, Findings findings) {
        Map<String, Span> first = new HashMap<>();
        for (TypedBlock block : file.blocks()) {
            Span before = block.name().isEmpty() ? null : first.putIfAbsent(block.name(), block.nameSpan());
            if (before != null) {
                findings.add(new SyntaxFinding.NameGivenTwice(block.name(), block.nameSpan(), before));
            }
        }
    }
}
