package tarewright.quantity;

import java.util.List;
import java.util.Optional;

/**
 * Reads a quantity: a decimal number, a space and a unit ({@code 0.20 g}), a range ({@code 5 to 10 mL}) or limits
 * ({@code 0.20 ± 0.01 g}). The decimal mark is a point or a comma; digits may be grouped by spaces, never by commas. Any text at
 * all is read in bounded time.
 */
public final class QuantityText {
    /** Arithmetic in doubles may miss absolute zero by this much; in K. */
    private static final double AT_ZERO = 1e-9;

    private QuantityText() {
    }

    /** Reads a quantity of any kind. A temperature in °C or °F is held to be one, not a difference. */
    public static QuantityResult parse(String text) {
        return new QuantityReader(text, Optional.empty(), false).read();
    }

    /** Reads a quantity of the wanted kind, a temperature where {@link Dimension#TEMPERATURE} is wanted. */
    public static QuantityResult parse(String text, Dimension wanted) {
        QuantityResult result = new QuantityReader(text, Optional.of(wanted), false).read();
        return result instanceof QuantityResult.Ok ok ? requireDimension(ok.typed(), text, wanted) : result;
    }

    /** As {@link #parse(String, Dimension)}, for a kind that is more than nothing: a mass, a volume, a time. */
    public static QuantityResult parsePositive(String text, Dimension wanted) {
        QuantityResult result = parse(text, wanted);
        return result instanceof QuantityResult.Ok ok ? requirePositive(ok.typed(), text) : result;
    }

    /** Reads a difference of temperatures: in {@code K}, or in {@code °C} or {@code °F}, whose zero then plays no part. */
    public static QuantityResult parseDifference(String text) {
        QuantityResult result = new QuantityReader(text, Optional.of(Dimension.TEMPERATURE), true).read();
        return result instanceof QuantityResult.Ok ok ? requireKind(ok.typed(), text, Dimension.TEMPERATURE) : result;
    }

    /** Reads a part of a whole, such as a purity or a yield: above 0 % to 100 %. The unit must stand, since 0.9 may be 0.9 %. */
    public static QuantityResult parseFraction(String text) {
        QuantityResult result = parsePositive(text, Dimension.NONE);
        if (!(result instanceof QuantityResult.Ok ok)) {
            return result;
        }
        if (!ok.typed().explicitUnit()) {
            return bad(new QuantityTrouble.MissingUnit(Blanks.strip(text), Dimension.NONE, List.of("%"), 0, text.length()));
        }
        double most = ok.typed().upToSi().orElse(ok.typed().si());
        return most > 1 ? bad(new QuantityTrouble.PercentOver100(Blanks.strip(text), most * 100, 0, text.length())) : result;
    }

    /**
     * The quantity, if it is of the wanted kind; else missing-unit, wrong-dimension or, of a temperature of 0 K or less,
     * below-absolute-zero.
     *
     * @param text the text that the quantity was read from, at which a trouble points
     */
    public static QuantityResult requireDimension(Typed typed, String text, Dimension wanted) {
        QuantityResult result = requireKind(typed, text, wanted);
        if (result instanceof QuantityResult.Ok && wanted.equals(Dimension.TEMPERATURE) && typed.si() <= AT_ZERO) {
            return bad(new QuantityTrouble.BelowAbsoluteZero(Blanks.strip(text), typed.si() - 273.15, 0, text.length()));
        }
        return result;
    }

    /** The quantity, if it is above zero; else not-positive. */
    public static QuantityResult requirePositive(Typed typed, String text) {
        return typed.value() > 0 ? new QuantityResult.Ok(typed)
                : bad(new QuantityTrouble.NotPositive(Blanks.strip(text), 0, text.length()));
    }

    private static QuantityResult requireKind(Typed typed, String text, Dimension wanted) {
        if (typed.dimension().equals(wanted)) {
            return new QuantityResult.Ok(typed);
        }
        return bad(typed.explicitUnit()
                ? new QuantityTrouble.WrongDimension(Blanks.strip(text), wanted, typed.dimension(), typed.unit().symbol(),
                        Units.of(wanted), 0, text.length())
                : new QuantityTrouble.MissingUnit(Blanks.strip(text), wanted, Units.of(wanted), 0, text.length()));
    }

    private static QuantityResult bad(QuantityTrouble trouble) {
        return new QuantityResult.Bad(trouble);
    }
}
