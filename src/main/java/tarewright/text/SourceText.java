package tarewright.text;

import java.util.ArrayList;
import java.util.List;

/**
 * The text of one file as the author wrote it, with the start of each line known.
 *
 * <p>Line ends may be LF, CRLF or a lone CR; offsets count UTF-16 units of {@code content} from 0.
 */
public final class SourceText {
    private final String name;
    private final String content;
    private final int[] lineStarts;

    /**
     * @param name the file's name as a person would want to see it in a message
     * @param content the whole text
     */
    public SourceText(String name, String content) {
        this.name = name;
        this.content = content;
        List<Integer> starts = new ArrayList<>(List.of(0));
        for (int i = 0; i < content.length(); i++) {
            char c = content.charAt(i);
            boolean lineEnd = c == '\n' || c == '\r' && !(i + 1 < content.length() && content.charAt(i + 1) == '\n');
            if (lineEnd) {
                starts.add(i + 1);
            }
        }
        this.lineStarts = starts.stream().mapToInt(Integer::intValue).toArray();
    }

    public String name() {
        return name;
    }

    public String content() {
        return content;
    }

    /** How many lines there are, at least 1. */
    public int lines() {
        return lineStarts.length;
    }

    /** The offset at which a line starts; lines count from 1. */
    public int startOfLine(int line) {
        return lineStarts[line - 1];
    }

    /** The number of the line, from 1, that holds an offset. */
    public int lineAt(int offset) {
        int at = java.util.Arrays.binarySearch(lineStarts, offset);
        return at >= 0 ? at + 1 : -at - 1;
    }

    /** The offset behind a line's last character, before its line end; lines count from 1. */
    public int endOfLine(int line) {
        int start = lineStarts[line - 1];
        int end = line < lineStarts.length ? lineStarts[line] : content.length();
        while (end > start && (content.charAt(end - 1) == '\n' || content.charAt(end - 1) == '\r')) {
            end--;
        }
        return end;
    }

    /** A line's text without its line end; lines count from 1. */
    public String line(int line) {
        return content.substring(startOfLine(line), endOfLine(line));
    }

    /** A place in this text. */
    public Span span(int start, int end) {
        return new Span(this, start, end);
    }

    @Override
    public String toString() {
        return name;
    }
}
