package tarewright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.document.Text;

/**
 * The cells of a column that is set flush right, so that their decimal signs stand under each other: behind the shorter ones goes the room of the digits that they have not.
 * Figures of our typeface are all as wide as a figure space (U+2007), its point and comma as two narrow ones (U+202F).
 */
final class Aligned {
    private static final Pattern NUMBER = Pattern.compile("([−-]?[0-9]+(?:\u202F[0-9]{3})*)(?:[.,]([0-9]+))?((?:[\u202F\u00A0 ]\\P{Nd}*)?)");
    private static final String DIGIT = "\u2007";
    private static final String POINT = "\u202F\u202F";

    private final String unit;
    private final int most;

    private Aligned(String unit, int most) {
        this.unit = unit;
        this.most = most;
    }

    /** Nothing where the column holds no numbers, those of several units, or numbers with equally many decimals. */
    static Optional<Aligned> of(List<List<Text>> column) {
        List<Matcher> numbers = new ArrayList<>();
        column.forEach(cell -> number(cell).ifPresent(numbers::add));
        List<String> units = numbers.stream().map(m -> m.group(3)).distinct().toList();
        List<Integer> decimals = numbers.stream().map(Aligned::decimals).distinct().sorted().toList();
        return units.size() == 1 && decimals.size() > 1 ? Optional.of(new Aligned(units.get(0), decimals.get(decimals.size() - 1))) : Optional.empty();
    }

    List<Text> cell(List<Text> cell) {
        return number(cell).map(m -> {
            int fewer = most - decimals(m);
            String room = (decimals(m) == 0 && fewer > 0 ? POINT : "") + DIGIT.repeat(fewer);
            String words = m.group();
            return Text.words(words.substring(0, words.length() - unit.length()) + room + unit);
        }).orElse(cell);
    }

    private static Optional<Matcher> number(List<Text> cell) {
        if (cell.size() != 1 || !(cell.get(0) instanceof Text.Words words)) {
            return Optional.empty();
        }
        return Optional.of(NUMBER.matcher(words.text())).filter(Matcher::matches);
    }

    private static int decimals(Matcher number) {
        return number.group(2) == null ? 0 : number.group(2).length();
    }
}
