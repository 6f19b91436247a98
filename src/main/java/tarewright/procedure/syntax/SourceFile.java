package tarewright.procedure.syntax;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import tarewright.text.SourceText;
import tarewright.text.Span;

/**
 * One file of the notation: a procedure, a term or a stock list.
 *
 * @param text the source
 * @param front the fields between the two {@code ---} lines, none if there are none
 * @param frontSpan where the front matter stands, or the empty span at the start of the file
 * @param body what follows, in order
 * @param pictures the picture files that it names, as far as they were read, by their destinations as written
 */
public record SourceFile(SourceText text, Fields front, Span frontSpan, List<Part> body, Map<String, PictureFile> pictures) {
    public SourceFile {
        body = List.copyOf(body);
        pictures = Map.copyOf(pictures);
    }

    /** A file whose pictures have not been read. */
    public SourceFile(SourceText text, Fields front, Span frontSpan, List<Part> body) {
        this(text, front, frontSpan, body, Map.of());
    }

    public SourceFile withPictures(Map<String, PictureFile> files) {
        return new SourceFile(text, front, frontSpan, body, files);
    }

    /** The file of a picture; empty where it was not read. */
    public Optional<PictureFile> file(Inline.Picture picture) {
        return Optional.ofNullable(pictures.get(picture.destination()));
    }

    /** Every typed block in source order, wherever it is nested. */
    public List<TypedBlock> blocks() {
        List<TypedBlock> found = new java.util.ArrayList<>();
        Part.walk(body, part -> {
            if (part instanceof TypedBlock block) {
                found.add(block);
            }
        });
        return found;
    }

    /** Every reference in running text, in source order. */
    public List<Inline.Reference> references() {
        List<Inline.Reference> found = new java.util.ArrayList<>();
        Consumer<Inline> collect = inline -> {
            if (inline instanceof Inline.Reference reference) {
                found.add(reference);
            }
        };
        Part.walk(body, part -> part.inlines().forEach(i -> Inline.walk(i, collect)));
        return found;
    }
}
