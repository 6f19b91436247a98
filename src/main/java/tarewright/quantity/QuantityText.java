package tarewright.quantity;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.quantity.NumberReader.Read;

/**
 * Reads a quantity: a decimal number, a space and a unit ({@code 0.20 g}), a range ({@code 5 to 10 mL}) or limits
 * ({@code 0.20 ± 0.01 g}). Any text at all is read in bounded time.
 */
public final class QuantityText {
    private static final int LONGEST = 200;
    private static final Pattern SPACE = Pattern.compile("[\\s\\u00A0\\u202F\\u2009\\u2007]*+");
    private static final Pattern LIMITS = Pattern.compile("\\u00B1|\\+/-|\\+-");
    private static final Pattern RANGE = Pattern.compile("to(?![A-Za-z])|\\u2013|\\u2026|\\.\\.\\.?");

    private final String text;
    private int at;

    private QuantityText(String text) {
        this.text = text;
    }

    /** Reads a quantity of any kind. A temperature in °C or °F is held to be one, not a difference. */
    public static QuantityResult parse(String text) {
        return new QuantityText(text).read();
    }

    /** Reads a quantity of the wanted kind, a temperature where {@link Dimension#TEMPERATURE} is wanted. */
    public static QuantityResult parse(String text, Dimension wanted) {
        QuantityResult result = parse(text);
        return result instanceof QuantityResult.Ok ok ? requireDimension(ok.typed(), text, wanted) : result;
    }

    /** Reads a difference of temperatures: in {@code K}, or in {@code °C} or {@code °F}, whose zero then plays no part. */
    public static QuantityResult parseDifference(String text) {
        QuantityText reader = new QuantityText(text);
        reader.difference = true;
        QuantityResult result = reader.read();
        return result instanceof QuantityResult.Ok ok ? requireKind(ok.typed(), text, Dimension.TEMPERATURE) : result;
    }

    /**
     * The quantity, if it is of the wanted kind; else missing-unit, wrong-dimension or, of a temperature of 0 K or less,
     * below-absolute-zero.
     *
     * @param text the text that the quantity was read from, at which a trouble points
     */
    public static QuantityResult requireDimension(Typed typed, String text, Dimension wanted) {
        QuantityResult result = requireKind(typed, text, wanted);
        if (result instanceof QuantityResult.Ok && wanted.equals(Dimension.TEMPERATURE) && typed.si() <= 0) {
            return new QuantityResult.Bad(new QuantityTrouble.BelowAbsoluteZero(text.strip(), celsius(typed), 0, text.length()));
        }
        return result;
    }

    private static QuantityResult requireKind(Typed typed, String text, Dimension wanted) {
        if (typed.dimension().equals(wanted)) {
            return new QuantityResult.Ok(typed);
        }
        if (!typed.explicitUnit()) {
            return new QuantityResult.Bad(new QuantityTrouble.MissingUnit(text.strip(), wanted, Units.of(wanted), 0, text.length()));
        }
        return new QuantityResult.Bad(new QuantityTrouble.WrongDimension(text.strip(), wanted, typed.dimension(),
                typed.unit().symbol(), Units.of(wanted), 0, text.length()));
    }

    private static double celsius(Typed typed) {
        return typed.si() - 273.15;
    }

    private boolean difference;

    private QuantityResult read() {
        if (text.length() > LONGEST) {
            return new QuantityResult.Bad(new NumberTrouble.NotANumber(text.substring(0, LONGEST), 0, text.length()));
        }
        skipSpaces();
        Read first = NumberReader.read(text, at);
        if (first.trouble().isPresent()) {
            return new QuantityResult.Bad(first.trouble().get());
        }
        at = first.end();
        skipSpaces();
        boolean limits = skip(LIMITS);
        boolean range = !limits && skip(RANGE);
        Read second = first;
        if (limits || range) {
            skipSpaces();
            second = NumberReader.read(text, at);
            if (second.trouble().isPresent()) {
                return new QuantityResult.Bad(second.trouble().get());
            }
            at = second.end();
            skipSpaces();
        }
        String unitText = text.substring(at).stripTrailing();
        Unit unit = Unit.ONE;
        if (!unitText.isEmpty()) {
            UnitResult result = Units.parse(unitText);
            if (result instanceof UnitResult.Bad bad) {
                return new QuantityResult.Bad(bad.trouble().shifted(at));
            }
            unit = ((UnitResult.Ok) result).unit();
        }
        if (range && second.value() <= first.value()) {
            return new QuantityResult.Bad(new QuantityTrouble.RangeBackwards(text.strip(),
                    second.number() + " to " + first.number() + (unitText.isEmpty() ? "" : " " + unit.symbol()), 0, text.length()));
        }
        if (difference && !unit.fromZero()) {
            unit = new Unit(unit.symbol(), unit.dimension(), unit.factor());
        }
        Typed typed = new Typed(first.number(), first.value(), unit, !unitText.isEmpty(),
                limits ? OptionalDouble.of(second.value()) : OptionalDouble.empty(),
                range ? OptionalDouble.of(second.value()) : OptionalDouble.empty(),
                Math.max(first.decimals(), second.decimals()), first.significant());
        return unit.fromZero() ? new QuantityResult.Ok(typed) : requireDimension(typed, text, Dimension.TEMPERATURE);
    }

    private boolean skip(Pattern pattern) {
        Matcher matcher = pattern.matcher(text).region(at, text.length());
        if (matcher.lookingAt()) {
            at = matcher.end();
            return true;
        }
        return false;
    }

    private void skipSpaces() {
        skip(SPACE);
    }
}
