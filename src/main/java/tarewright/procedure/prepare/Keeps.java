package tarewright.procedure.prepare;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How long a solution keeps, out of the author's own words: {@code one year}, {@code two weeks in the dark}, {@code dos semanas}. */
final class Keeps {
    private static final List<String> ENGLISH = List.of("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");
    private static final List<String> SPANISH = List.of("un", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez", "once", "doce");
    private static final List<String> ONE = List.of("a", "an", "una");
    /** In days, a month and a year on the short side. */
    private static final Map<String, Integer> UNITS = Map.of("hour", 0, "day", 1, "week", 7, "month", 28, "year", 360, "hora", 0, "día", 1, "semana", 7, "mes", 28, "año", 360);
    private static final Pattern TIME = Pattern.compile("(?<![\\p{L}\\p{N}.,])(\\p{L}+|[0-9]{1,3})\\s+(hour|day|week|month|year|hora|día|semana|mes|año)(?:e?s)?(?!\\p{L})");

    private static final Pattern WORD = Pattern.compile("\\p{L}+|[0-9]{1,9}");

    private Keeps() {
    }

    /** In days, rounded down; empty where the words do not tell one time. */
    static OptionalInt days(String words) {
        Matcher times = TIME.matcher(words.toLowerCase(Locale.ROOT));
        if (!times.find()) {
            return OptionalInt.empty();
        }
        int number = number(times.group(1));
        int days = number * UNITS.get(times.group(2));
        // "two to three weeks", "a week or two" are no one time.
        long others = WORD.matcher(words.toLowerCase(Locale.ROOT)).results().map(w -> w.group()).filter(w -> !ONE.contains(w) && number(w) > 0).count()
                - (ONE.contains(times.group(1)) ? 0 : 1);
        return number < 1 || others > 0 || times.find() ? OptionalInt.empty() : OptionalInt.of(days);
    }

    private static int number(String word) {
        if (ONE.contains(word)) {
            return 1;
        }
        int spelt = Math.max(ENGLISH.indexOf(word), SPANISH.indexOf(word)) + 1;
        return word.matches("[0-9]+") ? Integer.parseInt(word) : spelt;
    }
}
