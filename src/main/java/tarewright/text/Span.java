package tarewright.text;

/**
 * A stretch of a source text: where something stands, so that a message can point at it.
 *
 * @param source the text
 * @param start offset of its first UTF-16 unit
 * @param end offset behind its last; equal to {@code start} for a place between two characters
 */
public record Span(SourceText source, int start, int end) {
    public Span {
        if (start < 0 || end < start || end > source.content().length()) {
            throw new IllegalArgumentException("no such span: " + start + ".." + end);
        }
    }

    /** The text that stands there. */
    public String text() {
        return source.content().substring(start, end);
    }

    /** The line, from 1. */
    public int line() {
        return source.lineAt(start);
    }

    /** The column as the eye counts it, from 1: see {@link Columns}. */
    public int column() {
        int line = line();
        return 1 + Columns.width(source.content().substring(source.startOfLine(line), start), 0);
    }

    /** A part of this span, by offsets from its start, kept inside it. */
    public Span part(int from, int to) {
        int first = Math.min(start + Math.max(from, 0), end);
        return new Span(source, first, Math.max(first, Math.min(start + to, end)));
    }

    /** From the start of this to the end of another. */
    public Span to(Span other) {
        return new Span(source, start, Math.max(end, other.end));
    }

    @Override
    public String toString() {
        return source.name() + ":" + line() + ":" + column();
    }
}
