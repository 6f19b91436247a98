package tarewright.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the strength of a solution: {@code 1.0 mol/L}, {@code 5.0 % w/w}, {@code 3 % w/v as CuSO4}, {@code 20 vol}. */
public final class StrengthText {
    private static final int LONGEST = 200;
    private static final Pattern AS = Pattern.compile("\\s++as(?:\\s++|$)");
    private static final Pattern BASIS = Pattern.compile("(?<=[0-9\\s\\u00A0\\u202F\\u2009])(?:%\\s?+\\(?(w/w|m/m|by mass|w/v|m/v|v/v|vol|by volume)\\)?|"
            + "(wt\\s?+%|vol\\s?+%)|(vol(?:ume)?s?))$");
    private static final Unit PERCENT_WV = new Unit("% w/v", Dimension.DENSITY, 10);
    private static final Unit VOLUMES = new Unit("vol", Dimension.NONE, 1);
    private static final Unit PERCENT = new Unit("%", Dimension.NONE, 0.01);
    private static final List<String> NOTATIONS = List.of("mol/L", "% w/w", "% w/v", "% v/v", "g/L", "vol");

    private enum Basis { MASS, MASS_PER_VOLUME, VOLUME, VOLUMES_OF_OXYGEN }

    private StrengthText() {
    }

    public static StrengthResult parse(String text) {
        if (text.length() > LONGEST) {
            return bad(new NumberTrouble.NotANumber(text.substring(0, LONGEST), 0, text.length()));
        }
        Matcher as = AS.matcher(text);
        boolean counted = as.find();
        String amount = counted ? text.substring(0, as.start()) : text;
        Optional<String> formula = counted ? Optional.of(text.substring(as.end()).strip()) : Optional.empty();
        if (formula.isPresent() && (formula.get().isEmpty() || formula.get().chars().anyMatch(Character::isWhitespace))) {
            return bad(new StrengthTrouble.BadAs(formula.get(), as.start(), text.length()));
        }
        String shown = amount.strip();
        Matcher basis = BASIS.matcher(amount.stripTrailing());
        if (basis.find()) {
            return withBasis(amount, basis, formula);
        }
        QuantityResult result = QuantityText.parse(amount);
        if (result instanceof QuantityResult.Bad trouble) {
            return bad(trouble.trouble());
        }
        return plain(((QuantityResult.Ok) result).typed(), shown, amount.length(), formula);
    }

    private static StrengthResult plain(Typed typed, String shown, int to, Optional<String> formula) {
        String symbol = typed.unit().symbol();
        Dimension dimension = typed.dimension();
        if (typed.explicitUnit() && dimension.equals(Dimension.CONCENTRATION)) {
            return positive(new Strength.Molar(typed, formula), shown, to);
        }
        if (dimension.equals(Dimension.DENSITY)) {
            return positive(new Strength.MassPerVolume(typed, formula), shown, to);
        }
        if (List.of("%", "‰").contains(symbol)) {
            String number = shown.substring(0, shown.lastIndexOf(symbol)).strip();
            return bad(new StrengthTrouble.AmbiguousPercent(shown, List.of(number + " " + symbol + " w/w",
                    number + " " + symbol + " w/v", number + " " + symbol + " v/v"), 0, to));
        }
        if (List.of("ppm", "ppb").contains(symbol)) {
            String number = shown.substring(0, shown.lastIndexOf(symbol)).strip();
            String gram = symbol.equals("ppm") ? "mg" : "µg";
            return bad(new StrengthTrouble.AmbiguousPercent(shown, List.of(number + " " + gram + "/kg",
                    number + " " + gram + "/L"), 0, to));
        }
        if (typed.explicitUnit() && isMassRatio(symbol)) {
            return positive(new Strength.MassFraction(typed, formula), shown, to);
        }
        if (!typed.explicitUnit()) {
            return bad(new QuantityTrouble.MissingUnit(shown, Dimension.CONCENTRATION, NOTATIONS, 0, to));
        }
        return bad(new StrengthTrouble.NotAStrength(shown, symbol, NOTATIONS, 0, to));
    }

    private static boolean isMassRatio(String symbol) {
        int stroke = symbol.indexOf('/');
        return stroke > 0 && List.of(symbol.substring(0, stroke), symbol.substring(stroke + 1)).stream()
                .allMatch(part -> Units.symbol(part).filter(unit -> unit.dimension().equals(Dimension.MASS)).isPresent());
    }

    private static StrengthResult withBasis(String amount, Matcher matcher, Optional<String> formula) {
        String shown = amount.strip();
        QuantityResult result = QuantityText.parse(amount.substring(0, matcher.start()));
        if (result instanceof QuantityResult.Bad trouble) {
            return bad(trouble.trouble());
        }
        Typed number = ((QuantityResult.Ok) result).typed();
        if (number.explicitUnit()) {
            return bad(new StrengthTrouble.NotAStrength(shown, number.unit().symbol(), NOTATIONS, 0, amount.length()));
        }
        Typed typed = new Typed(number.number(), number.value(), Unit.ONE, true, number.plusMinus(), number.upTo(),
                number.decimals(), number.significantDigits());
        Strength strength = switch (basis(matcher)) {
            case MASS -> new Strength.MassFraction(typed.in(PERCENT), formula);
            case MASS_PER_VOLUME -> new Strength.MassPerVolume(typed.in(PERCENT_WV), formula);
            case VOLUME -> new Strength.VolumeFraction(typed.in(PERCENT), formula);
            case VOLUMES_OF_OXYGEN -> new Strength.VolumeStrength(typed.in(VOLUMES), formula);
        };
        return positive(strength, shown, amount.length());
    }

    private static Basis basis(Matcher matcher) {
        if (matcher.group(3) != null) {
            return Basis.VOLUMES_OF_OXYGEN;
        }
        String words = (matcher.group(1) != null ? matcher.group(1) : matcher.group(2)).toLowerCase(Locale.ROOT);
        return switch (words.charAt(0)) {
            case 'w', 'm' -> words.endsWith("v") ? Basis.MASS_PER_VOLUME : Basis.MASS;
            case 'v' -> Basis.VOLUME;
            default -> words.endsWith("mass") ? Basis.MASS : Basis.VOLUME;
        };
    }

    private static StrengthResult positive(Strength strength, String shown, int to) {
        Typed typed = strength.typed();
        if (typed.value() <= 0) {
            return bad(new StrengthTrouble.NotPositive(shown, 0, to));
        }
        double greatest = typed.upToSi().orElse(typed.si());
        boolean fraction = strength instanceof Strength.MassFraction || strength instanceof Strength.VolumeFraction;
        if (fraction && greatest > 1) {
            return bad(new StrengthTrouble.PercentOver100(shown, greatest * 100, 0, to));
        }
        return new StrengthResult.Ok(strength);
    }

    private static StrengthResult bad(QuantityTrouble trouble) {
        return new StrengthResult.Bad(trouble);
    }
}
