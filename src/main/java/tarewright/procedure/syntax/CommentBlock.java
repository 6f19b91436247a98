package tarewright.procedure.syntax;

import org.commonmark.node.Block;
import org.commonmark.node.CustomBlock;
import org.commonmark.parser.block.AbstractBlockParser;
import org.commonmark.parser.block.BlockContinue;
import org.commonmark.parser.block.BlockParserFactory;
import org.commonmark.parser.block.BlockStart;
import org.commonmark.parser.block.MatchedBlockParser;
import org.commonmark.parser.block.ParserState;

/**
 * A comment that starts a line and is alone on it, or goes on over several lines, blank ones too. What stands behind its
 * end is read as if it began there: it is inside this block in the tree and is no part of the comment. A comment that
 * ends in its first line with words behind it is left to {@link CommentParser}.
 */
final class CommentBlock extends AbstractBlockParser {
    private static final String OPEN = "<!--";
    private static final String CLOSE = "-->";

    /** The comment, with what stood behind it as its children. */
    static final class Comment extends CustomBlock {
        private boolean closed;

        boolean closed() {
            return closed;
        }
    }

    static final class Factory implements BlockParserFactory {
        @Override
        public BlockStart tryStart(ParserState state, MatchedBlockParser matched) {
            String line = state.getLine().getContent().toString();
            int open = state.getNextNonSpaceIndex();
            if (state.getIndent() > 3 || !line.startsWith(OPEN, open)) {
                return BlockStart.none();
            }
            boolean empty = line.startsWith(OPEN + ">", open) || line.startsWith(OPEN + "->", open);
            int close = line.indexOf(CLOSE, open + (empty ? 2 : OPEN.length()));
            if (close >= 0 && !line.substring(close + CLOSE.length()).isBlank()) {
                return BlockStart.none();
            }
            CommentBlock block = new CommentBlock();
            block.comment.closed = close >= 0;
            return BlockStart.of(block).atIndex(line.length());
        }
    }

    private final Comment comment = new Comment();

    @Override
    public Block getBlock() {
        return comment;
    }

    @Override
    public boolean isContainer() {
        return true;
    }

    @Override
    public boolean canContain(Block child) {
        return true;
    }

    @Override
    public BlockContinue tryContinue(ParserState state) {
        if (comment.closed) {
            return BlockContinue.none();
        }
        String line = state.getLine().getContent().toString();
        int close = line.indexOf(CLOSE, state.getIndex());
        if (close < 0) {
            return BlockContinue.atIndex(line.length());
        }
        comment.closed = true;
        int behind = close + CLOSE.length();
        while (behind < line.length() && Character.isWhitespace(line.charAt(behind))) {
            behind++;
        }
        return BlockContinue.atIndex(behind);
    }
}
