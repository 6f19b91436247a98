package tarewright.print;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/**
 * Where a line may end: at a space, and after a hyphen or a dash between letters. The usual rules also break {@code g/mol} at its
 * stroke, {@code −5 °C} behind its sign and {@code 2-methylpropan-2-ol} behind a figure.
 */
final class LineBreaks implements FSTextBreaker {
    private final BreakIterator usual = BreakIterator.getLineInstance(Locale.ROOT);
    private String text = "";

    @Override
    public void setText(String next) {
        text = next;
        usual.setText(next);
    }

    @Override
    public int next() {
        int at = usual.next();
        while (at != BreakIterator.DONE && !allowed(at)) {
            at = usual.next();
        }
        return at;
    }

    private boolean allowed(int at) {
        if (at <= 0 || at >= text.length()) {
            return true;
        }
        int before = text.codePointBefore(at);
        int after = text.codePointAt(at);
        if (Character.isWhitespace(before) || before == '\u200B' || before == '\u00AD') {
            return true;
        }
        if (before == '-' || before == '\u2010' || before == '\u2013' || before == '\u2014') {
            return at >= 2 && Character.isLetter(text.codePointBefore(at - 1)) && Character.isLetter(after);
        }
        return Character.isIdeographic(before) || Character.isIdeographic(after);
    }
}
