package tarewright.procedure.prepare;

import java.time.Period;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How long a solution keeps, out of the author's own words: {@code one year}, {@code two weeks in the dark}, {@code dos semanas}. */
public final class Keeps {
    private static final List<String> ENGLISH = List.of("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");
    private static final List<String> SPANISH = List.of("un", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez", "once", "doce");
    private static final List<String> ONE = List.of("a", "an", "una");
    /** Of the calendar; hours are no whole day. */
    private static final Map<String, Period> UNITS = Map.of("hour", Period.ZERO, "day", Period.ofDays(1), "week", Period.ofWeeks(1), "month", Period.ofMonths(1), "year", Period.ofYears(1),
            "hora", Period.ZERO, "día", Period.ofDays(1), "semana", Period.ofWeeks(1), "mes", Period.ofMonths(1), "año", Period.ofYears(1));
    private static final Pattern TIME = Pattern.compile("(?<![\\p{L}\\p{N}.,])(\\p{L}+|[0-9]{1,3})\\s+(hour|day|week|month|year|hora|día|semana|mes|año)(?:e?s)?(?!\\p{L})");

    private static final Pattern WORD = Pattern.compile("\\p{L}+|[0-9]{1,9}");

    private Keeps() {
    }

    /** Whether it is made on the day of the class: it keeps for a day or less. */
    public static boolean onTheDay(String words) {
        return of(words).filter(p -> p.toTotalMonths() == 0 && p.getDays() <= 1).isPresent();
    }

    /** In days and months of the calendar, nothing for hours; empty where the words do not tell one time. */
    static Optional<Period> of(String words) {
        Matcher times = TIME.matcher(words.toLowerCase(Locale.ROOT));
        if (!times.find()) {
            return Optional.empty();
        }
        int number = number(times.group(1));
        // "two to three weeks", "a week or two" are no one time.
        long others = WORD.matcher(words.toLowerCase(Locale.ROOT)).results().map(w -> w.group()).filter(w -> !ONE.contains(w) && number(w) > 0).count()
                - (ONE.contains(times.group(1)) ? 0 : 1);
        if (number < 1 || others > 0) {
            return Optional.empty();
        }
        Period period = UNITS.get(times.group(2)).multipliedBy(number);
        return times.find() ? Optional.empty() : Optional.of(period);
    }

    private static int number(String word) {
        if (ONE.contains(word)) {
            return 1;
        }
        int spelt = Math.max(ENGLISH.indexOf(word), SPANISH.indexOf(word)) + 1;
        return word.matches("[0-9]+") ? Integer.parseInt(word) : spelt;
    }
}
