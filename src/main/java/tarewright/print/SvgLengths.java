package tarewright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers and lengths as SVG writes them, in user units; a CSS inch has 96. */
final class SvgLengths {
    static final double MILLIMETRES = 25.4 / 96;
    /** Farther than this from anything that is seen; keeps numbers from overflowing. */
    private static final double FARTHEST = 1e7;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:[0-9]{1,30}(?:\\.[0-9]{0,30})?|\\.[0-9]{1,30})(?:[eE][+-]?[0-9]{1,2})?");
    private static final Pattern LENGTH = Pattern.compile("(" + NUMBER.pattern() + ")\\s*(px|pt|pc|mm|cm|in|em|%)?");
    private static final Map<String, Double> UNITS = Map.of("px", 1.0, "pt", 96 / 72.0, "pc", 16.0, "mm", 96 / 25.4, "cm", 96 / 2.54, "in", 96.0);

    private SvgLengths() {
    }

    /** @param em what {@code 1em} is @param whole what {@code 100%} is */
    static Optional<Double> length(String text, double em, double whole) {
        Matcher matcher = LENGTH.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(matcher.group(1));
        String unit = matcher.group(2);
        double by = unit == null ? 1 : unit.equals("em") ? em : unit.equals("%") ? whole / 100 : UNITS.get(unit);
        return Optional.of(value * by).filter(v -> Math.abs(v) <= FARTHEST);
    }

    /** Numbers with commas or spaces between them; empty where anything else stands there. */
    static Optional<List<Double>> numbers(String text) {
        List<Double> numbers = new ArrayList<>();
        Matcher matcher = NUMBER.matcher(text);
        int at = 0;
        while (matcher.find()) {
            double value = Double.parseDouble(matcher.group());
            if (!text.substring(at, matcher.start()).matches("[\\s,]*") || Math.abs(value) > FARTHEST) {
                return Optional.empty();
            }
            numbers.add(value);
            at = matcher.end();
        }
        return text.substring(at).matches("[\\s,]*") ? Optional.of(numbers) : Optional.empty();
    }

    static boolean near(double value) {
        return Math.abs(value) <= FARTHEST;
    }
}
