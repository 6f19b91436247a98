package tarewright.document;

import java.util.Comparator;
import java.util.HexFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.Formula;
import tarewright.text.Digest;

/**
 * The order in which choices are printed: from their words alone, so that it is always the same and tells nothing of which one
 * is right.
 */
final class Options {
    private static final Pattern WORD = Pattern.compile("[^\\s,;:]+(?<![.])");

    private Options() {
    }

    static List<String> printed(List<String> rightFirst) {
        return rightFirst.stream().sorted(Comparator.comparing(Options::hash).thenComparing(Comparator.naturalOrder())).toList();
    }

    private static String hash(String option) {
        return HexFormat.of().formatHex(Digest.of(option.strip()));
    }

    /**
     * The options with every formula in them set as one, whether the procedure uses it or not: were only those of the procedure set, the right
     * one would stand out.
     */
    static List<List<Text>> set(Draft draft, List<String> options) {
        return options.stream().map(o -> set(draft, o)).toList();
    }

    private static List<Text> set(Draft draft, String option) {
        List<Text> set = new ArrayList<>();
        int from = 0;
        Matcher words = WORD.matcher(option);
        while (words.find()) {
            Optional<Formula> formula = Formula.parse(words.group()).value().filter(f -> words.group().matches(".*[0-9(\\[₀-₉⁺⁻].*"));
            if (formula.isPresent()) {
                set.addAll(draft.prose().of(option.substring(from, words.start())));
                set.add(draft.typeset().formula(formula.get()));
                from = words.end();
            }
        }
        set.addAll(draft.prose().of(option.substring(from)));
        return set;
    }
}
