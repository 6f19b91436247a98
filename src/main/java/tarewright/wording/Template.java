package tarewright.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence with named places: {@code `{text}` is not a unit}. Several members of a list are joined with "or", at a place like
 * {@code {contents+}} with "and". Braces around anything else stand for themselves.
 */
final class Template {
    private static final Pattern PLACE = Pattern.compile("\\{([a-z][A-Za-z0-9]*)(\\+?)\\}");

    private final String words;

    Template(String words) {
        this.words = words;
    }

    /** The names of its places, each as often as it stands there. */
    List<String> places() {
        List<String> names = new ArrayList<>();
        Matcher place = PLACE.matcher(words);
        while (place.find()) {
            names.add(place.group(1));
        }
        return names;
    }

    /**
     * The sentence; empty if a place has no value.
     *
     * @param values the words of each member of a list; one member for what is no list, none where there is no value
     * @param or the word before the last of several members
     * @param and the word there at a place that asks for all of them
     */
    Optional<String> filled(Function<String, List<String>> values, String or, String and) {
        StringBuilder filled = new StringBuilder();
        Matcher place = PLACE.matcher(words);
        int from = 0;
        while (place.find()) {
            List<String> members = values.apply(place.group(1));
            if (members.isEmpty()) {
                return Optional.empty();
            }
            filled.append(words, from, place.start());
            // Between two back-ticks of its own, each member of a list is code by itself.
            boolean code = isTick(place.start() - 1) && isTick(place.end());
            filled.append(joined(members, place.group(2).isEmpty() ? or : and, code ? "`" : ""));
            from = place.end();
        }
        return Optional.of(filled.append(words.substring(from)).toString());
    }

    private boolean isTick(int at) {
        return at >= 0 && at < words.length() && words.charAt(at) == '`';
    }

    private static String joined(List<String> members, String word, String tick) {
        int last = members.size() - 1;
        String between = tick + ", " + tick;
        return last == 0 ? members.get(0)
                : String.join(between, members.subList(0, last)) + tick + " " + word + " " + tick + members.get(last);
    }
}
