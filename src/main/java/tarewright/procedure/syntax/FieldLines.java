package tarewright.procedure.syntax;

import java.util.ArrayList;
import java.util.List;
import tarewright.procedure.syntax.Fields.Piece;

/** Takes from the lines of a block what is there to be read: each trimmed, without blank lines and comments. */
final class FieldLines {
    private static final String OPEN = "<!--";
    private static final String CLOSE = "-->";

    private FieldLines() {
    }

    /**
     * A comment starts a line and may go on over several; nothing may stand behind its end.
     *
     * @param where what a finding calls the place: a block's type, or {@code front matter}
     */
    static List<Piece> toRead(List<Piece> lines, String where, Findings findings) {
        List<Piece> kept = new ArrayList<>();
        Piece comment = null;
        for (Piece line : lines) {
            Piece words = line.trimmed();
            boolean opens = comment == null && words.text().startsWith(OPEN);
            if (opens) {
                comment = words;
            }
            if (comment == null) {
                if (!words.text().isEmpty()) {
                    kept.add(words);
                }
                continue;
            }
            int close = words.text().indexOf(CLOSE, opens ? OPEN.length() : 0);
            if (close >= 0) {
                comment = null;
                Piece behind = words.part(close + CLOSE.length(), words.text().length()).trimmed();
                if (!behind.text().isEmpty()) {
                    findings.add(new SyntaxFinding.NotAField(where, behind.span()));
                }
            }
        }
        if (comment != null) {
            findings.add(new SyntaxFinding.CommentNotClosed(comment.span()));
        }
        return kept;
    }
}
