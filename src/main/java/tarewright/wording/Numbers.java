package tarewright.wording;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.OptionalInt;
import tarewright.derivation.Figure;
import tarewright.quantity.Digits;
import tarewright.quantity.Unit;

/**
 * Numbers and figures as text. In print: the decimal mark of the language, a true minus sign, a narrow no-break space
 * between number and unit (SI Brochure, 9th edition, 5.4.3: a space always stands there, before % too), powers of ten for
 * what is very large or very small. Plain: a decimal point, an ordinary space, {@code 6.02e23}, whatever the language.
 *
 * <p>A figure is shown to the decimals that are fixed for it, else to the place of the first digit of its standard
 * uncertainty, else to four significant figures without zeros at the end.
 */
public final class Numbers {
    /** Between a number and its unit, where no line may break. */
    public static final char NARROW_SPACE = '\u202F';

    private static final int MOST_FIGURES = 6;
    private static final int FIGURES = 4;
    private static final double LARGE = 1e6;
    private static final double SMALL = 1e-4;
    /** Decimals beyond which a small number was typed as a power of ten. */
    private static final int MOST_TYPED_DECIMALS = 7;
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /** The one unit that is a word; every other symbol is the same in all languages (SI Brochure, 9th edition, 5.1). */
    private static final String DROPS = "drops";

    private final char mark;
    private final String drops;

    private Numbers(char mark, String drops) {
        this.mark = mark;
        this.drops = drops;
    }

    /**
     * @param language BCP 47; the decimal mark is that of the language where it is spoken: {@code es} a comma, {@code es-MX}
     * a point
     */
    public static Numbers in(String language) {
        char mark = DecimalFormatSymbols.getInstance(Locale.forLanguageTag(language)).getDecimalSeparator();
        String drops = language.startsWith("en") ? DROPS : MessageFile.of("quantities", language).get("unit." + DROPS);
        return new Numbers(mark == ',' ? ',' : '.', drops);
    }

    /** A figure with its unit, plain: {@code 0.079 g}. */
    public String plain(Figure figure) {
        return plainUnit(digits(figure), figure.unit());
    }

    /** A figure with its unit, as printed. */
    public String printed(Figure figure) {
        return withSymbol(printedNumber(figure), figure.unit());
    }

    /** A figure's number in its unit, as printed, without the unit. */
    public String printedNumber(Figure figure) {
        return localised(digits(figure));
    }

    /** A figure with its unit, plain but for the language's decimal mark. */
    public String plainIn(Figure figure) {
        return plain(figure).replace('.', mark);
    }

    /** A value in a unit to a number of decimals, plain. @param value in the unit */
    public String plain(double value, Unit unit, int decimals) {
        return plainUnit(unsigned(Digits.decimals(value, decimals)), unit);
    }

    /** A value in a unit to a number of decimals, as printed. @param value in the unit */
    public String printed(double value, Unit unit, int decimals) {
        return withSymbol(localised(unsigned(Digits.decimals(value, decimals))), unit);
    }

    /** A bare number of which nothing more is known, plain: at most six figures, no zeros at its end. */
    public String plainNumber(double value) {
        return free(value, MOST_FIGURES);
    }

    /** A bare number of which nothing more is known, as printed. */
    public String printedNumber(double value) {
        return localised(plainNumber(value));
    }

    /** Digits in the plain form, such as an author typed or {@link Digits} gives, as printed. */
    public String localised(String digits) {
        int e = digits.indexOf('e');
        String mantissa = (e < 0 ? digits : digits.substring(0, e)).replace('-', '\u2212').replace('.', mark);
        if (e < 0) {
            return mantissa;
        }
        String power = raised(Integer.parseInt(digits.substring(e + 1)));
        return mantissa.equals("1") ? "10" + power : mantissa + NARROW_SPACE + "×" + NARROW_SPACE + "10" + power;
    }

    /** A printed number with a unit behind it; a space within the unit does not break either. */
    public static String withUnit(String number, Unit unit) {
        return withUnit(number, unit.symbol());
    }

    private static String withUnit(String number, String symbol) {
        return symbol.isEmpty() ? number : number + NARROW_SPACE + symbol.replace(' ', NARROW_SPACE);
    }

    /** One drop is no drops. */
    private String withSymbol(String number, Unit unit) {
        String symbol = symbol(unit.symbol());
        return withUnit(number, symbol.equals(drops) && number.equals("1") ? symbol.replaceFirst("s$", "") : symbol);
    }

    /** A unit's symbol as it is printed. */
    public String symbol(String symbol) {
        return symbol.equals(DROPS) ? drops : symbol;
    }

    /** A quantity as the author typed it, with the decimal mark of the language where she typed the other one. */
    public String typed(String text) {
        return mark == ',' ? text.replaceAll("(?<=[0-9])\\.(?=[0-9])", ",") : text;
    }

    /** The decimals to which a figure is shown in its unit. */
    public static int decimals(Figure figure) {
        if (figure.decimals().isPresent()) {
            return figure.decimals().getAsInt();
        }
        double value = figure.shownValue();
        double uncertainty = figure.standardUncertainty() / figure.unit().factor();
        if (!(uncertainty > 0)) {
            return decimalsOf(free(value, FIGURES));
        }
        int most = Digits.decimalsOfSignificant(value, MOST_FIGURES);
        int least = value == 0 ? Integer.MIN_VALUE : Digits.decimalsOfSignificant(value, 1);
        return Math.max(least, Math.min(most, Digits.decimalsFor(uncertainty)));
    }

    private static String digits(Figure figure) {
        double value = figure.shownValue();
        OptionalInt fixed = figure.decimals();
        double size = Math.abs(value);
        int decimals = decimals(figure);
        boolean large = size >= LARGE && (fixed.isEmpty() || fixed.getAsInt() < 0);
        boolean small = size > 0 && size < SMALL && (fixed.isEmpty() || fixed.getAsInt() > MOST_TYPED_DECIMALS);
        if (fixed.isEmpty() && figure.standardUncertainty() == 0) {
            return free(value, FIGURES);
        }
        if (!large && !small) {
            return unsigned(Digits.decimals(value, decimals));
        }
        int figures = decimals - Digits.decimalsOfSignificant(value, 1) + 1;
        return figures < 1 ? "0" : Digits.scientific(value, figures);
    }

    /** So many significant figures, less the zeros at the end; a whole number in full. */
    private static String free(double value, int figures) {
        double size = Math.abs(value);
        if (size < LARGE && Math.abs(value - Math.rint(value)) <= 1e-9 * size) {
            return unsigned(Digits.decimals(value, 0));
        }
        if (size >= LARGE || size > 0 && size < SMALL) {
            String scientific = Digits.scientific(value, figures);
            int e = scientific.indexOf('e');
            return trimmed(scientific.substring(0, e)) + scientific.substring(e);
        }
        return unsigned(trimmed(Digits.significant(value, figures)));
    }

    private static String trimmed(String digits) {
        return digits.contains(".") ? digits.replaceAll("\\.?0+$", "") : digits;
    }

    /** Minus nothing is nothing. */
    private static String unsigned(String digits) {
        return digits.startsWith("-") && digits.chars().noneMatch(c -> c >= '1' && c <= '9') ? digits.substring(1) : digits;
    }

    private static int decimalsOf(String digits) {
        int e = digits.indexOf('e');
        String mantissa = e < 0 ? digits : digits.substring(0, e);
        int point = mantissa.indexOf('.');
        return (point < 0 ? 0 : mantissa.length() - point - 1) - (e < 0 ? 0 : Integer.parseInt(digits.substring(e + 1)));
    }

    private static String plainUnit(String digits, Unit unit) {
        return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
    }

    private static String raised(int power) {
        StringBuilder raised = new StringBuilder(power < 0 ? "⁻" : "");
        Integer.toString(Math.abs(power)).chars().forEach(c -> raised.append(SUPERSCRIPTS.charAt(c - '0')));
        return raised.toString();
    }
}
