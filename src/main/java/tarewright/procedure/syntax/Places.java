package tarewright.procedure.syntax;

import java.util.List;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import tarewright.text.SourceText;
import tarewright.text.Span;

/**
 * Translates places in the text that the Markdown parser was given to places in the file. They differ where that text is
 * only a part of the file, or a block whose indentation was taken off.
 */
final class Places implements InlinePlaces {
    private final SourceText source;
    /** For each line of the parser's text where it would start in the file; may lie before the true start of the line. */
    private final int[] starts;
    private final int firstLine;

    private Places(SourceText source, int[] starts, int firstLine) {
        this.source = source;
        this.starts = starts;
        this.firstLine = firstLine;
    }

    /** For the text from the start of a line, counted from 1, to the end of the file; a byte order mark is passed over. */
    static Places from(SourceText source, int firstLine) {
        int[] starts = new int[Math.max(source.lines() - firstLine + 1, 0)];
        for (int i = 0; i < starts.length; i++) {
            starts[i] = source.startOfLine(firstLine + i);
        }
        if (firstLine == 1) {
            starts[0] = FrontMatter.firstOffset(source);
        }
        return new Places(source, starts, firstLine);
    }

    /** For lines of which only the start was changed, from a line of the file on. */
    static Places ofLines(SourceText source, int firstLine, List<String> lines) {
        int[] starts = new int[lines.size()];
        for (int i = 0; i < starts.length; i++) {
            int line = firstLine + i;
            starts[i] = source.endOfLine(line) - lines.get(i).length();
        }
        return new Places(source, starts, firstLine);
    }

    SourceText source() {
        return source;
    }

    @Override
    public int start(SourceSpan span) {
        return within(span.getLineIndex(), span.getColumnIndex());
    }

    @Override
    public int end(SourceSpan span) {
        return within(span.getLineIndex(), span.getColumnIndex() + span.getLength());
    }

    /** From the first to the last place of a node that has any. */
    Span of(Node node) {
        List<SourceSpan> spans = node.getSourceSpans();
        return source.span(start(spans.get(0)), end(spans.get(spans.size() - 1)));
    }

    /** The text of a line of the parser's text, counted from 0, where it stands in the file. */
    Span line(int line) {
        return source.span(within(line, 0), source.endOfLine(firstLine + line));
    }

    private int within(int line, int column) {
        int number = firstLine + line;
        return Math.max(source.startOfLine(number), Math.min(starts[line] + column, source.endOfLine(number)));
    }
}
