package tarewright.chemistry;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Other capitals for a text whose letters are right but for their case: {@code nacl}, {@code NACL}, {@code co2}. */
final class Capitals {
    private static final int MOST = 3;
    private static final int TRIED = 24;

    private final String text;
    private final Set<Integer> deadEnds = new HashSet<>();
    private final List<String> found = new ArrayList<>();

    private Capitals(String text) {
        this.text = text;
    }

    /** The formulas that other capitals would make of it, those that change fewest letters first; at most three. */
    static List<String> alternatives(String text) {
        if (text.length() > Formula.LONGEST) {
            return List.of();
        }
        Capitals search = new Capitals(text);
        search.from(0, new StringBuilder());
        return search.found.stream()
                .filter(each -> !each.equals(text) && FormulaReader.isFormula(each))
                .sorted((one, other) -> changes(one, text) - changes(other, text))
                .limit(MOST)
                .toList();
    }

    /** Tries a symbol of two letters, then of one, at each place; a place from which no way leads on is tried once. */
    private boolean from(int at, StringBuilder written) {
        if (found.size() >= TRIED) {
            return true;
        }
        if (at == text.length()) {
            found.add(written.toString());
            return true;
        }
        if (deadEnds.contains(at)) {
            return false;
        }
        int before = written.length();
        boolean anyWay = false;
        if (!isLetter(text.charAt(at))) {
            anyWay = from(at + 1, written.append(text.charAt(at)));
            written.setLength(before);
        } else {
            for (int length = 2; length >= 1; length--) {
                String symbol = capitalised(at, length);
                if (Symbols.isElement(symbol)) {
                    anyWay |= from(at + length, written.append(symbol));
                    written.setLength(before);
                }
            }
        }
        if (!anyWay) {
            deadEnds.add(at);
        }
        return anyWay;
    }

    private String capitalised(int at, int length) {
        if (at + length > text.length()) {
            return "";
        }
        return text.substring(at, at + 1).toUpperCase(Locale.ROOT) + text.substring(at + 1, at + length).toLowerCase(Locale.ROOT);
    }

    private static boolean isLetter(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
    }

    private static int changes(String one, String other) {
        int changes = 0;
        for (int i = 0; i < one.length(); i++) {
            changes += one.charAt(i) == other.charAt(i) ? 0 : 1;
        }
        return changes;
    }
}
