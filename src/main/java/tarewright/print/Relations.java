package tarewright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tarewright.document.Text;

/** The right side of a worked line, cut before each relation sign, so that a long line wraps there and nowhere else if it can. */
final class Relations {
    private static final Set<Character> SIGNS = Set.of('=', '≈', '≤', '≥', '<', '>');

    private Relations() {
    }

    /** The pieces in order, none of them empty; the first need not start with a sign. */
    static List<List<Text>> of(List<Text> right) {
        List<List<Text>> relations = new ArrayList<>();
        List<Text> open = new ArrayList<>();
        for (Text text : right) {
            if (!(text instanceof Text.Words words)) {
                open.add(text);
                continue;
            }
            int from = 0;
            for (int at = 0; at < words.text().length(); at++) {
                if (startsRelation(words.text(), at)) {
                    addWords(open, words.text().substring(from, at));
                    close(relations, open);
                    from = at;
                }
            }
            addWords(open, words.text().substring(from));
        }
        close(relations, open);
        return relations;
    }

    /** A sign with a space or an end on both sides; others belong to a formula or a code. */
    private static boolean startsRelation(String text, int at) {
        return SIGNS.contains(text.charAt(at)) && (at == 0 || Character.isSpaceChar(text.charAt(at - 1)))
                && (at + 1 == text.length() || Character.isSpaceChar(text.charAt(at + 1)));
    }

    private static void addWords(List<Text> open, String words) {
        if (!words.isEmpty()) {
            open.add(new Text.Words(words));
        }
    }

    private static void close(List<List<Text>> relations, List<Text> open) {
        trimEnd(open);
        if (!open.isEmpty()) {
            relations.add(List.copyOf(open));
        }
        open.clear();
    }

    /** A space at the end is not counted in the width that the layout engine gives to a piece, and would push its last word out. */
    private static void trimEnd(List<Text> open) {
        while (!open.isEmpty() && open.get(open.size() - 1) instanceof Text.Words words) {
            String trimmed = words.text().stripTrailing();
            open.remove(open.size() - 1);
            if (!trimmed.isEmpty()) {
                open.add(new Text.Words(trimmed));
                return;
            }
        }
    }
}
