package tarewright.safety;

import tarewright.chemistry.Provenance;

/**
 * A statement of the standard's list.
 *
 * @param code {@code H314}, {@code EUH031}, {@code P305+P351+P338}
 * @param text as the list prints it, with its placeholders
 * @param kind hazard, supplemental or precautionary
 */
public record Statement(String code, String text, Kind kind, Provenance provenance) {
    /** The three lists. */
    public enum Kind {
        HAZARD, SUPPLEMENTAL, PRECAUTIONARY
    }

    /**
     * The text without what the standard leaves to be filled in: the open end of a list ({@code /…}), the brackets of a choice,
     * and the organs and routes between angle brackets.
     */
    public String printed() {
        StringBuilder kept = new StringBuilder();
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '<') {
                depth++;
            } else if (c == '>') {
                depth--;
            } else if (depth == 0 && c != '[' && c != ']') {
                kept.append(c);
            }
        }
        return kept.toString().replace("/\u2026", "").replaceAll(" {2,}", " ").strip();
    }
}
