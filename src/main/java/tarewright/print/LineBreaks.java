package tarewright.print;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;
import java.util.Set;

/**
 * Where a line may end: at a space, behind a hyphen or a dash between letters, at a mark for it (U+200B, U+00AD), and beside an
 * ideograph where the usual rules allow it. Elsewhere those rules are too free for chemistry: they break {@code g/mol} at its
 * stroke, {@code −5 °C} behind its sign and {@code 2-methylpropan-2-ol} behind a figure.
 */
final class LineBreaks implements FSTextBreaker {
    private static final Set<String> UNITS = Set.of("mL", "L", "g", "mg", "kg", "mm", "cm", "m", "mol", "mmol", "mol/L", "g/mol",
            "g/L", "g/mL", "kPa", "Pa", "min", "s", "h", "K", "°C", "%", "M", "V", "J", "kJ");

    private final BreakIterator usual = BreakIterator.getLineInstance(Locale.ROOT);
    private String text = "";
    private boolean usualKnows;
    private int at;

    @Override
    public void setText(String next) {
        text = next;
        usualKnows = false;
        at = 0;
    }

    @Override
    public int next() {
        if (at >= text.length()) {
            return BreakIterator.DONE;
        }
        do {
            at += Character.charCount(text.codePointAt(at));
        } while (at < text.length() && !allowed(at));
        return at;
    }

    private boolean allowed(int place) {
        int before = text.codePointBefore(place);
        int after = text.codePointAt(place);
        if (Character.isWhitespace(before)) {
            return !Character.isWhitespace(after) && !(after == '/' && place + 1 < text.length() && text.charAt(place + 1) == ' ') && !(place >= 2 && holdsUnit(text.charAt(place - 2)) && unitAt(place));
        }
        if (before == '\u200B' || before == '\u00AD') {
            return true;
        }
        if (before == '-' || before == '\u2010' || before == '\u2013' || before == '\u2014') {
            return place >= 2 && Character.isLetter(text.codePointBefore(place - 1)) && Character.isLetter(after);
        }
        return (Character.isIdeographic(before) || Character.isIdeographic(after)) && usually(place);
    }

    /** A number, or the stroke in the head of a column. */
    private static boolean holdsUnit(char before) {
        return Character.isDigit(before) || before == '/';
    }

    /** A unit stays with its number (SI brochure, 9th edition, 5.4.3: the space between them is not a place to break). */
    private boolean unitAt(int place) {
        int end = place;
        while (end < text.length() && (Character.isLetter(text.charAt(end)) || "°%/".indexOf(text.charAt(end)) >= 0)) {
            end++;
        }
        return UNITS.contains(text.substring(place, end));
    }

    private boolean usually(int place) {
        if (!usualKnows) {
            usual.setText(text);
            usualKnows = true;
        }
        return usual.isBoundary(place);
    }
}
