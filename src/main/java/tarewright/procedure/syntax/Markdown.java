package tarewright.procedure.syntax;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.ThematicBreak;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/**
 * CommonMark with tables, references and comments. Blocks of HTML are off: their tags are words of a paragraph, so that
 * a reference among them is found.
 */
final class Markdown {
    /**
     * A list takes two of these and a comment one, so this is more than {@link Limits#NESTING} can fill: what is too deep
     * is always seen to be so.
     */
    private static final int OPEN_BLOCKS = 4 * Limits.NESTING;
    private static final Parser WITH_TABLES = builder().extensions(
            List.of(TablesExtension.builder().maxCells(Limits.CELLS).build())).build();
    private static final Parser WITHOUT_TABLES = builder().build();

    private Markdown() {
    }

    /** The tree of a text; none if a table in it has too many cells. */
    static Optional<Node> parse(String text) {
        try {
            return Optional.of(WITH_TABLES.parse(text));
        } catch (IllegalArgumentException tooManyCells) {
            return Optional.empty();
        }
    }

    static Node parseWithoutTables(String text) {
        return WITHOUT_TABLES.parse(text);
    }

    private static Parser.Builder builder() {
        return Parser.builder()
                .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
                .enabledBlockTypes(Set.of(BlockQuote.class, Heading.class, FencedCodeBlock.class, ThematicBreak.class,
                        ListBlock.class, IndentedCodeBlock.class))
                .maxOpenBlockParsers(OPEN_BLOCKS)
                .maxInlineNesting(Limits.INLINE_NESTING)
                .customBlockParserFactory(new CommentBlock.Factory())
                .customInlineContentParserFactory(new ReferenceParser.Factory())
                .customInlineContentParserFactory(new CommentParser.Factory())
                .customInlineContentParserFactory(new ManyMarks.Factory());
    }
}
