package tarewright.print;

import java.util.ArrayList;
import java.util.List;
import tarewright.document.Text;

/**
 * The right side of a worked line, cut before each relation sign, so that a long line goes on at the next of them. A relation
 * too long for one line is cut before its operators as well.
 */
final class Relations {
    private static final String SIGNS = "=≈≤≥<>→";
    private static final String OPERATORS = "×·/+−";

    /** In letters; about what a line takes beside a left side of middling width. */
    private static final int LONGEST = 56;

    private Relations() {
    }

    /** The pieces in order, none of them empty; the first need not start with a sign. */
    static List<List<Text>> of(List<Text> right) {
        List<List<Text>> relations = new ArrayList<>();
        for (List<Text> relation : cut(right, SIGNS)) {
            if (length(relation) <= LONGEST) {
                relations.add(relation);
            } else {
                relations.addAll(filled(cut(relation, OPERATORS)));
            }
        }
        return relations.stream().map(Relations::trimmed).filter(r -> !r.isEmpty()).toList();
    }

    /** Joins short pieces again as long as they fit on one line. */
    private static List<List<Text>> filled(List<List<Text>> pieces) {
        List<List<Text>> lines = new ArrayList<>();
        for (List<Text> piece : pieces) {
            int last = lines.size() - 1;
            if (last >= 0 && length(lines.get(last)) + length(piece) <= LONGEST) {
                List<Text> joined = new ArrayList<>(lines.remove(last));
                joined.addAll(piece);
                lines.add(joined);
            } else {
                lines.add(piece);
            }
        }
        return lines;
    }

    private static List<List<Text>> cut(List<Text> texts, String before) {
        List<List<Text>> pieces = new ArrayList<>();
        List<Text> open = new ArrayList<>();
        for (Text text : texts) {
            if (!(text instanceof Text.Words words)) {
                open.add(text);
                continue;
            }
            int from = 0;
            for (int at = 0; at < words.text().length(); at++) {
                if (standsAlone(words.text(), at, before)) {
                    addWords(open, words.text().substring(from, at));
                    close(pieces, open);
                    from = at;
                }
            }
            addWords(open, words.text().substring(from));
        }
        close(pieces, open);
        return pieces;
    }

    /** A sign with a space or an end on both sides; others belong to a formula, a unit or a code. */
    private static boolean standsAlone(String text, int at, String signs) {
        return signs.indexOf(text.charAt(at)) >= 0 && (at == 0 || text.charAt(at - 1) == ' ') && (at + 1 == text.length()
                || text.charAt(at + 1) == ' ');
    }

    private static void addWords(List<Text> open, String words) {
        if (!words.isEmpty()) {
            open.add(new Text.Words(words));
        }
    }

    private static void close(List<List<Text>> pieces, List<Text> open) {
        if (!open.isEmpty()) {
            pieces.add(List.copyOf(open));
        }
        open.clear();
    }

    /**
     * A space at the end is not counted in the width that the layout engine gives to a piece, and would push its last word out.
     */
    private static List<Text> trimmed(List<Text> piece) {
        List<Text> kept = new ArrayList<>(piece);
        while (!kept.isEmpty() && kept.get(kept.size() - 1) instanceof Text.Words words) {
            kept.remove(kept.size() - 1);
            if (!words.text().isBlank()) {
                kept.add(new Text.Words(words.text().stripTrailing()));
                break;
            }
        }
        return kept;
    }

    private static int length(List<Text> piece) {
        return PlainText.bare(piece).length();
    }
}
