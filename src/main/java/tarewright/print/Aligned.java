package tarewright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.document.Text;

/**
 * The cells of a column that is set flush right, so that their decimal signs stand under each other: behind the shorter ones goes the room of the digits that they have not.
 * Figures of our typeface are all as wide as a figure space (U+2007), its point and comma as two narrow ones (U+202F). Only for numbers without a unit: between a number and its
 * unit the room would be read out, and copied.
 */
final class Aligned {
    private static final Pattern NUMBER = Pattern.compile("[−-]?[0-9]+(?:\u202F[0-9]{3})*(?:[.,]([0-9]+))?");
    private static final String DIGIT = "\u2007";
    private static final String POINT = "\u202F\u202F";

    private final int most;

    private Aligned(int most) {
        this.most = most;
    }

    /** Nothing where the column holds other things than numbers, or numbers with equally many decimals. */
    static Optional<Aligned> of(List<List<Text>> column) {
        List<Integer> decimals = new ArrayList<>();
        for (List<Text> cell : column) {
            Optional<Matcher> number = number(cell);
            if (number.isEmpty() && !cell.isEmpty()) {
                return Optional.empty();
            }
            number.ifPresent(m -> decimals.add(decimals(m)));
        }
        int most = decimals.stream().mapToInt(Integer::intValue).max().orElse(0);
        return decimals.stream().distinct().count() > 1 ? Optional.of(new Aligned(most)) : Optional.empty();
    }

    List<Text> cell(List<Text> cell) {
        return number(cell).map(m -> {
            int fewer = most - decimals(m);
            return Text.words(m.group() + (decimals(m) == 0 && fewer > 0 ? POINT : "") + DIGIT.repeat(fewer));
        }).orElse(cell);
    }

    private static Optional<Matcher> number(List<Text> cell) {
        if (cell.size() != 1 || !(cell.get(0) instanceof Text.Words words)) {
            return Optional.empty();
        }
        return Optional.of(NUMBER.matcher(words.text())).filter(Matcher::matches);
    }

    private static int decimals(Matcher number) {
        return number.group(1) == null ? 0 : number.group(1).length();
    }
}
