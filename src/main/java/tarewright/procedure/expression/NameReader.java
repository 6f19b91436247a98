package tarewright.procedure.expression;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a name: a run of words. A hyphen, a full stop or a formula's brackets inside a word belong to it; a sign with a blank at
 * either side does not.
 */
final class NameReader {
    private static final int DEEPEST = 8;
    /** What stands behind the dot of an addition compound: {@code 5H2O}, {@code xH2O}, {@code 6NH3}. */
    private static final Pattern BEHIND_DOT = Pattern.compile("(?:[0-9]+|[xn])?(?=[A-Za-z]*[0-9\u2080-\u2089])[A-Z]");
    private static final Pattern CHARGE = Pattern.compile("\\^[0-9]*[-+\u2212](?![\\p{L}\\p{N}(\\[])");
    private static final String IN_BRACKETS = ".\u00B7+-\u2212^";

    private final String text;
    private int at;

    private NameReader(String text, int at) {
        this.text = text;
        this.at = at;
    }

    /** Whether a name can start here. */
    static boolean startsAt(String text, int at) {
        return at < text.length() && Letters.isWord(text.charAt(at));
    }

    /** The name that starts at {@code from}. */
    static Token.Name read(String text, int from) {
        NameReader reader = new NameReader(text, from);
        StringBuilder name = new StringBuilder();
        int end = from;
        boolean behindOf = false;
        while (startsAt(text, reader.at) || behindOf && reader.bracketEnd(reader.at, 0) > 0) {
            int start = reader.at;
            reader.word();
            String word = text.substring(start, reader.at);
            name.append(name.isEmpty() ? "" : " ").append(word);
            end = reader.at;
            behindOf = word.equals("of");
            reader.at = Letters.skipBlanks(text, reader.at);
        }
        return new Token.Name(name.toString(), from, end);
    }

    private void word() {
        int start = at;
        while (at < text.length()) {
            char c = text.charAt(at);
            int bracket = bracketEnd(at, 0);
            if (Letters.isWord(c)) {
                at++;
            } else if (bracket > 0) {
                at = bracket;
            } else if (joins(c, start)) {
                at++;
            } else {
                Matcher charge = CHARGE.matcher(text).region(at, text.length()).useTransparentBounds(true);
                if (c == '^' && looksLikeFormula(start) && charge.lookingAt()) {
                    at = charge.end();
                }
                return;
            }
        }
    }

    private boolean joins(char c, int start) {
        boolean wordFollows = at > start && at + 1 < text.length() && Letters.isWord(text.charAt(at + 1));
        return wordFollows && (Letters.isHyphen(c) || c == '.' || c == '\u00B7' && looksLikeFormula(start)
                && BEHIND_DOT.matcher(text).region(at + 1, text.length()).lookingAt());
    }

    private boolean looksLikeFormula(int start) {
        char first = text.charAt(start);
        return first >= 'A' && first <= 'Z' || first == '[' || first == '(' || Letters.isDigit(first);
    }

    /** Where the bracket of a chemical formula or of an oxidation number ends that opens at {@code from}; 0 if none does. */
    private int bracketEnd(int from, int depth) {
        char open = from < text.length() ? text.charAt(from) : ' ';
        if (open != '(' && open != '[' || depth > DEEPEST) {
            return 0;
        }
        int i = from + 1;
        char first = i < text.length() ? text.charAt(i) : ' ';
        if (!(first >= 'A' && first <= 'Z' || Letters.isDigit(first) || first == '(' || first == '[')) {
            return 0;
        }
        while (i < text.length()) {
            char c = text.charAt(i);
            if (c == (open == '(' ? ')' : ']')) {
                return i + 1;
            }
            int inner = bracketEnd(i, depth + 1);
            if (inner > 0) {
                i = inner;
            } else if (Letters.isWord(c) || IN_BRACKETS.indexOf(c) >= 0) {
                i++;
            } else {
                return 0;
            }
        }
        return 0;
    }
}
