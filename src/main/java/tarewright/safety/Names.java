package tarewright.safety;

import java.util.Locale;

/** When two names or two formulas are the same. */
final class Names {
    private Names() {
    }

    /** Without case, double spaces and the older spelling of sulfur. */
    static String plain(String name) {
        StringBuilder plain = new StringBuilder();
        for (String word : name.strip().toLowerCase(Locale.ROOT).replace('-', ' ').split("\\s+")) {
            plain.append(plain.isEmpty() ? "" : " ").append(word);
        }
        return plain.toString().replace("sulph", "sulf");
    }

    /** In plain digits, a full stop before water of crystallisation, no state. */
    static String formula(String formula) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < formula.length(); i++) {
            char c = formula.charAt(i);
            if (c >= '\u2080' && c <= '\u2089') {
                plain.append((char) ('0' + c - '\u2080'));
            } else if (c == '\u00b7' || c == '\u2022' || c == '*') {
                plain.append('.');
            } else if (!Character.isWhitespace(c)) {
                plain.append(c);
            }
        }
        String text = plain.toString();
        for (String state : new String[] {"(s)", "(l)", "(g)", "(aq)"}) {
            if (text.endsWith(state)) {
                return text.substring(0, text.length() - state.length());
            }
        }
        return text;
    }

    /** The formula without its water of crystallisation. */
    static String dry(String formula) {
        String plain = formula(formula);
        int stop = plain.indexOf('.');
        return stop > 0 && plain.endsWith("H2O") ? plain.substring(0, stop) : plain;
    }
}
