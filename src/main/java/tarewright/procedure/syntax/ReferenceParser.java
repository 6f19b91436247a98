package tarewright.procedure.syntax;

import java.util.Set;
import org.commonmark.node.CustomNode;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;

/**
 * Reads {@code {…}} in running text before the parser can take its letters for emphasis. Escaped braces and those in code
 * never come here.
 */
final class ReferenceParser implements InlineContentParser {
    /** What stands between two braces, untouched. */
    static final class Braced extends CustomNode {
        private final String inside;

        private Braced(String inside) {
            this.inside = inside;
        }

        String inside() {
            return inside;
        }
    }

    /** A brace without its partner. */
    static final class Stray extends CustomNode {
        private final char brace;

        private Stray(char brace) {
            this.brace = brace;
        }

        char brace() {
            return brace;
        }
    }

    static final class Factory implements InlineContentParserFactory {
        @Override
        public Set<Character> getTriggerCharacters() {
            return Set.of('{', '}');
        }

        @Override
        public InlineContentParser create() {
            return new ReferenceParser();
        }
    }

    @Override
    public ParsedInline tryParse(InlineParserState state) {
        Scanner scanner = state.scanner();
        char brace = scanner.peek();
        scanner.next();
        Position inside = scanner.position();
        if (brace == '{') {
            for (int length = 0; length <= Limits.REFERENCE; length++) {
                char c = scanner.peek();
                if (c == '}') {
                    String text = scanner.getSource(inside, scanner.position()).getContent();
                    scanner.next();
                    return ParsedInline.of(new Braced(text), scanner.position());
                }
                if (c == '{' || c == Scanner.END) {
                    break;
                }
                scanner.next();
            }
        }
        return ParsedInline.of(new Stray(brace), inside);
    }
}
