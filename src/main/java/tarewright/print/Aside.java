package tarewright.print;

import java.util.List;
import java.util.Optional;
import tarewright.document.Piece;

/** What finds room beside something else, so that a leaf keeps within its two sides. In letters, measured generously. */
final class Aside {
    private static final int HEAD_LINE = 12;
    private static final int LONGEST_HEAD = 24;
    private static final int PROSE_LINE = 60;
    private static final int LONGEST_OPTION = 27;
    private static final int SIGN_LINE = 28;

    private Aside() {
    }

    /** Whether a heading finds room beside what it heads: what takes one line has no room for a heading of two. */
    static boolean fits(Piece.Heading heading, Optional<?> next) {
        String words = PlainText.bare(heading.text());
        boolean narrow = words.chars().allMatch(c -> c < 0x2000) && longestWord(words) <= HEAD_LINE;
        return narrow && (words.length() <= HEAD_LINE || words.length() <= LONGEST_HEAD && next.filter(Aside::isTall)
                .isPresent());
    }

    private static int longestWord(String words) {
        return List.of(words.split(" ")).stream().mapToInt(String::length).max().orElse(0);
    }

    private static boolean isTall(Object next) {
        if (next instanceof Piece.Paragraph paragraph) {
            return PlainText.bare(paragraph.text()).length() > PROSE_LINE;
        }
        return !(next instanceof Piece.Display || next instanceof Piece.Heading || next instanceof Piece.NewPage || next instanceof Piece.NextSheet
                || next instanceof Piece.Bullets bullets && bullets.items().size() < 2
                || next instanceof Piece.Steps steps && steps.steps().size() < 2);
    }

    /** Whether two choices stand beside each other. */
    static boolean isShort(Piece.Choices choices) {
        return choices.options().stream().allMatch(o -> PlainText.bare(o).length() <= LONGEST_OPTION);
    }

    /** Signs in two columns of about the same height, in their order. */
    static List<List<Piece.Sign>> columns(Piece.Signs signs) {
        List<Piece.Sign> all = signs.signs();
        int lines = all.stream().mapToInt(Aside::height).sum();
        int left = 0;
        int count = 0;
        while (count < all.size() && left < (lines + 1) / 2) {
            left += height(all.get(count++));
        }
        return count == all.size() ? List.of(all) : List.of(all.subList(0, count), all.subList(count, all.size()));
    }

    /** In half lines; a sign itself takes a line and a half. */
    private static int height(Piece.Sign sign) {
        return Math.max(3, 2 * ((sign.words().length() + SIGN_LINE - 1) / SIGN_LINE));
    }
}
