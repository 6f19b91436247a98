package tarewright.procedure.syntax;

import java.util.Set;
import org.commonmark.node.CustomNode;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;

/** Reads {@code <!-- … -->} in running text. */
final class CommentParser implements InlineContentParser {
    /** A comment with its marks. */
    static final class Comment extends CustomNode {
    }

    /** The opening mark of a comment that does not end in its paragraph. */
    static final class Unclosed extends CustomNode {
    }

    static final class Factory implements InlineContentParserFactory {
        @Override
        public Set<Character> getTriggerCharacters() {
            return Set.of('<');
        }

        @Override
        public InlineContentParser create() {
            return new CommentParser();
        }
    }

    /** One parser reads one paragraph from front to back: an end once missed is not there for what follows either. */
    private boolean noEndAhead;

    @Override
    public ParsedInline tryParse(InlineParserState state) {
        Scanner scanner = state.scanner();
        if (!scanner.next("<!--")) {
            return ParsedInline.none();
        }
        Position behindMark = scanner.position();
        if (scanner.next(">") || scanner.next("->")) {
            return ParsedInline.of(new Comment(), scanner.position());
        }
        while (!noEndAhead) {
            if (scanner.find('-') < 0) {
                noEndAhead = true;
            } else if (scanner.next("-->")) {
                return ParsedInline.of(new Comment(), scanner.position());
            } else {
                scanner.next();
            }
        }
        return ParsedInline.of(new Unclosed(), behindMark);
    }
}
