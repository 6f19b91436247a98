package tarewright.chemistry;

import java.util.Optional;
import tarewright.exact.Rational;

/** Numbers as they are typed before a formula: {@code 2}, {@code 1/2}, {@code 0.5}, {@code ½}, {@code 2½}. */
final class Fractions {
    private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static final int[][] VALUES = {{1, 2}, {1, 3}, {2, 3}, {1, 4}, {3, 4}, {1, 5}, {2, 5}, {3, 5}, {4, 5},
            {1, 6}, {5, 6}, {1, 8}, {3, 8}, {5, 8}, {7, 8}};

    private Fractions() {
    }

    private static boolean isVulgar(char c) {
        return VULGAR.indexOf(c) >= 0;
    }

    /** {@code ½} where there is such a character, else {@code 8/3} or {@code 5}. */
    static String unicode(Rational number) {
        for (int i = 0; i < VALUES.length; i++) {
            if (number.equals(Rational.of(VALUES[i][0], VALUES[i][1]))) {
                return VULGAR.substring(i, i + 1);
            }
        }
        return number.toString();
    }

    static Optional<Rational> parse(String text) {
        int last = text.length() - 1;
        if (last < 0 || !isVulgar(text.charAt(last))) {
            return Rational.parse(text);
        }
        int[] value = VALUES[VULGAR.indexOf(text.charAt(last))];
        Rational part = Rational.of(value[0], value[1]);
        return last == 0 ? Optional.of(part) : Rational.parse(text.substring(0, last)).filter(Rational::isWhole).map(part::plus);
    }
}
