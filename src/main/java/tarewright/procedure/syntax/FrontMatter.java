package tarewright.procedure.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.text.SourceText;
import tarewright.text.Span;

/**
 * The fields between two {@code ---} lines at the very top of a file.
 *
 * @param span from the first to the second {@code ---}
 * @param nextLine the line, from 1, on which the body starts
 */
record FrontMatter(Fields fields, Span span, int nextLine) {
    private static final String NAME = "front matter";
    private static final String MARK = "---";
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    /** Empty, with the body from line 1 on, if the first line is no {@code ---}. */
    static FrontMatter of(SourceText text, Findings findings) {
        int start = firstOffset(text);
        Span opening = text.span(start, text.endOfLine(1));
        if (!opening.text().stripTrailing().equals(MARK)) {
            return new FrontMatter(Fields.NONE, text.span(start, start), 1);
        }
        Optional<Integer> closing = closingLine(text);
        if (closing.isEmpty()) {
            findings.add(new SyntaxFinding.FrontMatterNotClosed(opening));
        }
        int end = closing.orElseGet(() -> firstLineOfBody(text));
        List<Piece> lines = new ArrayList<>();
        for (int line = 2; line < end; line++) {
            lines.add(piece(text, line));
        }
        Fields fields = FieldReader.read(FieldLines.toRead(lines, NAME, findings), NAME, findings);
        int lastLine = closing.isPresent() ? end : end - 1;
        return new FrontMatter(fields, text.span(start, Math.max(opening.end(), text.endOfLine(lastLine))), lastLine + 1);
    }

    /** Where the text starts: behind the byte order mark if there is one. */
    static int firstOffset(SourceText text) {
        return text.content().indexOf(BYTE_ORDER_MARK) == 0 ? 1 : 0;
    }

    /** The next {@code ---}, unless a block starts before it: then that is a rule in the body. */
    private static Optional<Integer> closingLine(SourceText text) {
        for (int line = 2; line <= text.lines(); line++) {
            String words = text.line(line).stripTrailing();
            if (words.equals(MARK)) {
                return Optional.of(line);
            }
            if (isFence(words)) {
                break;
            }
        }
        return Optional.empty();
    }

    /** Where front matter that nothing closes is taken to end: at the first blank line or block. */
    private static int firstLineOfBody(SourceText text) {
        int line = 2;
        while (line <= text.lines() && !text.line(line).isBlank() && !isFence(text.line(line))) {
            line++;
        }
        return line;
    }

    private static boolean isFence(String line) {
        return line.startsWith("```") || line.startsWith("~~~");
    }

    private static Piece piece(SourceText text, int line) {
        return new Piece(text.line(line), text.span(text.startOfLine(line), text.endOfLine(line)));
    }
}
