package tarewright.procedure.syntax;

import java.util.List;
import java.util.Optional;
import tarewright.text.Span;

/**
 * A fenced code block whose info string starts with one of the language's types.
 *
 * @param type the type word, lower case
 * @param typeSpan where it stands
 * @param name the rest of the info string, runs of white space made one; empty if there is none
 * @param nameSpan where the name stands, or an empty span behind the type
 * @param equation for a {@code reaction}: its first line that is not empty; for others none
 * @param fields its fields; none for {@code key} and {@code prep}
 * @param markdown for {@code key} and {@code prep}: the Markdown inside, with places in the same source; for others none
 * @param span the whole block with its fences
 */
public record TypedBlock(String type, Span typeSpan, String name, Span nameSpan, Optional<Fields.Piece> equation, Fields fields,
        List<Part> markdown, Span span) implements Part {
    public TypedBlock {
        markdown = List.copyOf(markdown);
    }

    /** The Markdown inside counts as nested, so that references in it are found. */
    @Override
    public List<Part> parts() {
        return markdown;
    }
}
