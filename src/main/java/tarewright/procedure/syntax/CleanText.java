package tarewright.procedure.syntax;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import tarewright.text.SourceText;

/** Text in which every control character and every half of a surrogate pair is U+FFFD, each offset as before. */
final class CleanText {
    private static final char REPLACEMENT = '\uFFFD';

    private CleanText() {
    }

    static SourceText of(SourceText text, Findings findings) {
        String content = text.content();
        char[] clean = null;
        Map<Character, int[]> firstAndTimes = new LinkedHashMap<>();
        for (int i = 0; i < content.length(); i++) {
            char c = content.charAt(i);
            if (Character.isHighSurrogate(c) && i + 1 < content.length() && Character.isLowSurrogate(content.charAt(i + 1))) {
                i++;
            } else if (isUnfit(c)) {
                clean = clean == null ? content.toCharArray() : clean;
                clean[i] = REPLACEMENT;
                int at = i;
                firstAndTimes.computeIfAbsent(c, k -> new int[] {at, 0})[1]++;
            }
        }
        if (clean == null) {
            return text;
        }
        SourceText cleaned = new SourceText(text.name(), new String(clean));
        firstAndTimes.forEach((c, seen) -> findings.add(new SyntaxFinding.ControlCharacter(
                String.format(Locale.ROOT, "U+%04X", (int) c), seen[1], cleaned.span(seen[0], seen[0] + 1))));
        return cleaned;
    }

    private static boolean isUnfit(char c) {
        boolean layout = c == '\t' || c == '\n' || c == '\r';
        return Character.isSurrogate(c) || Character.isISOControl(c) && !layout;
    }
}
