package tarewright.procedure.syntax;

import java.util.Set;
import org.commonmark.node.Text;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;

/**
 * Leaves emphasis marks to the parser up to {@link Limits#MARKS} in a block and takes the rest as text: its time to pair
 * them may grow with the square of their number.
 */
final class ManyMarks implements InlineContentParser {
    static final class Factory implements InlineContentParserFactory {
        @Override
        public Set<Character> getTriggerCharacters() {
            return Set.of('*', '_');
        }

        @Override
        public InlineContentParser create() {
            return new ManyMarks();
        }
    }

    private int marks;

    @Override
    public ParsedInline tryParse(InlineParserState state) {
        if (marks < Limits.MARKS) {
            marks++;
            return ParsedInline.none();
        }
        Position start = state.scanner().position();
        state.scanner().matchMultiple(state.scanner().peek());
        Position end = state.scanner().position();
        return ParsedInline.of(new Text(state.scanner().getSource(start, end).getContent()), end);
    }
}
