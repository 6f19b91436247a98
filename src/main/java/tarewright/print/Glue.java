package tarewright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import tarewright.document.Text;

/**
 * Keeps on one line what has no space in it: the layout engine would end a line at any change of style, between {@code H} and
 * its subscript or between a bold amount and the comma behind it. Such neighbours are put into one {@link Whole}.
 */
final class Glue {
    /** Neighbours without a space between them, at least two. */
    record Whole(List<Text> inside) {
        Whole {
            inside = List.copyOf(inside);
        }
    }

    private final List<Object> done = new ArrayList<>();
    private final List<Text> open = new ArrayList<>();

    private Glue() {
    }

    /** The same texts in order, as {@link Text} and {@link Whole}. */
    static List<Object> of(List<Text> texts) {
        Glue glue = new Glue();
        texts.forEach(text -> glue.add(text, same -> same));
        glue.close();
        return glue.done;
    }

    /** @param dress puts back the styles that the text stood in */
    private void add(Text text, UnaryOperator<Text> dress) {
        if (text instanceof Text.Words words) {
            addWords(words.text(), dress);
        } else if (text instanceof Text.Strong strong) {
            strong.inside().forEach(t -> add(t, in -> dress.apply(new Text.Strong(List.of(in)))));
        } else if (text instanceof Text.Emphasis emphasis) {
            emphasis.inside().forEach(t -> add(t, in -> dress.apply(new Text.Emphasis(List.of(in)))));
        } else if (mayBreak(text)) {
            close();
            done.add(dress.apply(text));
        } else {
            open.add(dress.apply(text));
        }
    }

    private static boolean mayBreak(Text text) {
        return text instanceof Text.Break || text instanceof Text.Code code && code.text().contains(" ");
    }

    /** The first word clings to what stands before it, the last to what follows; what lies between is free. */
    private void addWords(String text, UnaryOperator<Text> dress) {
        int first = space(text, 0, 1);
        if (first < 0) {
            addIfAny(open, text, dress);
            return;
        }
        int last = space(text, text.length() - 1, -1);
        if (open.isEmpty()) {
            first = 0;
        }
        addIfAny(open, text.substring(0, first), dress);
        close();
        addIfAny(done, text.substring(first, last + 1), dress);
        addIfAny(open, text.substring(last + 1), dress);
    }

    private static int space(String text, int from, int step) {
        for (int at = from; at >= 0 && at < text.length(); at += step) {
            if (Character.isWhitespace(text.charAt(at))) {
                return at;
            }
        }
        return -1;
    }

    private static void addIfAny(List<? super Text> to, String words, UnaryOperator<Text> dress) {
        if (!words.isEmpty()) {
            to.add(dress.apply(new Text.Words(words)));
        }
    }

    private void close() {
        if (open.size() == 1) {
            done.add(open.get(0));
        } else if (!open.isEmpty()) {
            done.add(new Whole(open));
        }
        open.clear();
    }
}
