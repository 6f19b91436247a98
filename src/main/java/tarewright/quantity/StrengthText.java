package tarewright.quantity;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the strength of a solution: {@code 1.0 mol/L}, {@code 5.0 % w/w}, {@code 3 % w/v as CuSO4}, {@code 20 vol}. */
public final class StrengthText {
    private static final int LONGEST = 200;
    private static final Pattern AS = Pattern.compile("(?<=\\s)as(?:\\s++|$)");
    /** Groups, each a basis in the order of {@link Basis}. */
    private static final Pattern BASIS = Pattern.compile("(?i)(?<![a-z])(?:"
            + "(%\\s*+(?:w/w|\\(w/w\\)|m/m|\\(m/m\\)|by mass)|wt\\s*+%)|"
            + "(%\\s*+(?:w/v|\\(w/v\\)|m/v|\\(m/v\\)))|"
            + "(%\\s*+(?:v/v|\\(v/v\\)|vol\\.?|by volume)|vol\\s*+%)|"
            + "(vol(?:ume)?s?)"
            + ")$");
    private static final Unit PERCENT = new Unit("%", Dimension.NONE, 0.01);
    /** One gram in 100 mL. */
    private static final Unit PERCENT_WV = new Unit("% w/v", Dimension.DENSITY, 10);
    private static final Unit VOLUMES = new Unit("vol", Dimension.NONE, 1);
    private static final List<String> NOTATIONS = List.of("mol/L", "% w/w", "% w/v", "% v/v", "g/L", "vol");
    private static final Pattern RATIO = Pattern.compile("([^/ ]+)/(?:10+ )?([^/ ]+)");

    private enum Basis { MASS, MASS_PER_VOLUME, VOLUME, VOLUMES_OF_OXYGEN }

    private StrengthText() {
    }

    /** The strength, or why it is none. A strength is above zero; a fraction by mass or by volume is at most 100 %. */
    public static StrengthResult parse(String text) {
        if (text.length() > LONGEST) {
            return bad(new NumberTrouble.NotANumber(text.substring(0, LONGEST), Optional.empty(), 0, text.length()));
        }
        Matcher as = AS.matcher(text);
        boolean counted = as.find();
        Optional<String> formula = counted ? Optional.of(Blanks.strip(text.substring(as.end()))) : Optional.empty();
        if (formula.isPresent() && (formula.get().isEmpty() || formula.get().chars().anyMatch(Character::isWhitespace))) {
            return bad(new StrengthTrouble.BadAs(formula.get(), as.start(), text.length()));
        }
        String amount = counted ? text.substring(0, as.start()) : text;
        Matcher basis = BASIS.matcher(amount.stripTrailing());
        if (basis.find()) {
            return withBasis(amount, basis, formula);
        }
        QuantityResult result = QuantityText.parse(amount);
        return result instanceof QuantityResult.Bad trouble ? bad(trouble.trouble())
                : withUnit(((QuantityResult.Ok) result).typed(), amount, formula);
    }

    private static StrengthResult withBasis(String amount, Matcher matcher, Optional<String> formula) {
        QuantityResult result = QuantityText.parse(amount.substring(0, matcher.start()));
        if (result instanceof QuantityResult.Bad trouble) {
            return bad(trouble.trouble());
        }
        Typed number = ((QuantityResult.Ok) result).typed();
        if (number.explicitUnit()) {
            return notAStrength(amount);
        }
        return checked(switch (basis(matcher)) {
            case MASS -> new Strength.MassFraction(number.in(PERCENT), formula);
            case MASS_PER_VOLUME -> new Strength.MassPerVolume(number.in(PERCENT_WV), formula);
            case VOLUME -> new Strength.VolumeFraction(number.in(PERCENT), formula);
            case VOLUMES_OF_OXYGEN -> new Strength.VolumeStrength(number.in(VOLUMES), formula);
        }, amount);
    }

    private static Basis basis(Matcher matcher) {
        int group = 1;
        while (matcher.group(group) == null) {
            group++;
        }
        return Basis.values()[group - 1];
    }

    private static StrengthResult withUnit(Typed typed, String amount, Optional<String> formula) {
        if (!typed.explicitUnit()) {
            return bad(new QuantityTrouble.MissingUnit(Blanks.strip(amount), Dimension.CONCENTRATION, NOTATIONS, 0,
                    amount.length()));
        }
        Dimension dimension = typed.dimension();
        String symbol = typed.unit().symbol();
        if (dimension.equals(Dimension.CONCENTRATION)) {
            return checked(new Strength.Molar(typed, formula), amount);
        }
        if (dimension.equals(Dimension.DENSITY)) {
            return checked(new Strength.MassPerVolume(typed, formula), amount);
        }
        if (isRatioOf(Dimension.MASS, symbol)) {
            return checked(new Strength.MassFraction(typed, formula), amount);
        }
        if (isRatioOf(Dimension.VOLUME, symbol)) {
            return checked(new Strength.VolumeFraction(typed, formula), amount);
        }
        return switch (symbol) {
            case "%" -> ambiguous(amount, symbol, "% w/w", "% w/v", "% v/v");
            case "‰" -> ambiguous(amount, symbol, "g/kg", "g/L", "mL/L");
            case "ppm" -> ambiguous(amount, symbol, "mg/kg", "mg/L");
            case "ppb" -> ambiguous(amount, symbol, "µg/kg", "µg/L");
            default -> notAStrength(amount);
        };
    }

    private static StrengthResult ambiguous(String amount, String symbol, String... readings) {
        String shown = Blanks.strip(amount);
        String number = Blanks.strip(shown.substring(0, shown.lastIndexOf(symbol)));
        List<String> written = List.of(readings).stream().map(unit -> number + " " + unit).toList();
        return bad(new StrengthTrouble.AmbiguousPercent(shown, written, 0, amount.length()));
    }

    /** Whether a unit is one of a kind over another, or over a power of ten of it: {@code g/kg}, {@code g/100 g}. */
    private static boolean isRatioOf(Dimension kind, String symbol) {
        Matcher ratio = RATIO.matcher(symbol);
        return ratio.matches() && List.of(ratio.group(1), ratio.group(2)).stream()
                .allMatch(part -> Units.symbol(part).filter(unit -> unit.dimension().equals(kind)).isPresent());
    }

    private static StrengthResult checked(Strength strength, String amount) {
        if (strength.typed().value() <= 0) {
            return bad(new QuantityTrouble.NotPositive(Blanks.strip(amount), 0, amount.length()));
        }
        double greatest = strength.typed().upToSi().orElse(strength.typed().si());
        boolean fraction = strength instanceof Strength.MassFraction || strength instanceof Strength.VolumeFraction;
        return fraction && greatest > 1
                ? bad(new QuantityTrouble.PercentOver100(Blanks.strip(amount), greatest * 100, 0, amount.length()))
                : new StrengthResult.Ok(strength);
    }

    private static StrengthResult notAStrength(String amount) {
        return bad(new StrengthTrouble.NotAStrength(Blanks.strip(amount), NOTATIONS, 0, amount.length()));
    }

    private static StrengthResult bad(QuantityTrouble trouble) {
        return new StrengthResult.Bad(trouble);
    }
}
