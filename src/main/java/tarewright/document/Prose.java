package tarewright.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.Formula;
import tarewright.chemistry.ShownFormula;
import tarewright.chemistry.State;
import tarewright.quantity.Units;
import tarewright.wording.Numbers;

/**
 * Running text of the author's, with the formulas that the procedure uses set as formulas wherever they stand as words of their
 * own and cannot be mistaken for something else: they hold a digit, a bracket or a charge.
 */
final class Prose {
    private static final String BELOW = "₀₁₂₃₄₅₆₇₈₉";
    private static final String ABOVE = "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻";
    private static final String LINE = "0123456789+-";
    private static final Pattern AMOUNT = Pattern.compile("(?<=[0-9]) ([^\\s,.;:()]+)(?![^\\s,.;:()])");

    /** As people write the dot of a hydrate. */
    private static final List<String> DOTS = List.of(".", "·", "•", "∙", "⋅", "*", " . ", " · ", " • ", " ∙ ", " ⋅ ", " * ");

    private final Map<String, Text.Chemical> spellings = new HashMap<>();
    /** What must not be read, by each of its spellings, and what is shown in its place. */
    private final Map<String, String> veils = new HashMap<>();
    private final int longest;

    /** @param disguise what stands in the place of a formula whose number is to be found out */
    Prose(Iterable<Formula> formulas, Iterable<ShownFormula> shown, Typeset.Disguise disguise, Typeset typeset) {
        formulas.forEach(f -> disguise.of(f).ifPresent(s -> veil(f, s, typeset.shown(s))));
        formulas.forEach(f -> enter(f.plain(), f.unicode(), typeset.formula(f)));
        shown.forEach(f -> enter(f.plain(), f.unicode(), typeset.shown(f)));
        longest = spellings.keySet().stream().mapToInt(String::length).max().orElse(0);
    }

    private void veil(Formula formula, ShownFormula shown, Text.Chemical set) {
        for (String spelling : List.of(formula.plain(), formula.unicode(), onTheLine(formula.unicode()))) {
            String[] parts = spelling.split("[.·]");
            for (String dot : DOTS) {
                for (String gap : List.of("", " ")) {
                    String each = String.join(dot, parts).replaceAll("(?<=[.·•∙⋅* ]|^)([0-9]+)(?=[A-Z\\[(])", "$1" + gap);
                    spellings.put(each, set);
                    veils.put(each, shown.unicode());
                }
            }
        }
    }

    /** Text that is printed as it stands, what must not be read in it replaced. */
    String veiled(String text) {
        StringBuilder shown = new StringBuilder();
        int at = 0;
        while (at < text.length()) {
            Optional<String> found = veils.isEmpty() || !startsWord(text, at) ? Optional.empty() : formulaAt(text, at).filter(veils::containsKey);
            shown.append(found.map(veils::get).orElse(text.substring(at, at + 1)));
            at += found.map(String::length).orElse(1);
        }
        return shown.toString();
    }

    private void enter(String plain, String unicode, Text.Chemical set) {
        if (plain.chars().allMatch(Character::isLetter)) {
            return;
        }
        String dotted = plain.replace('.', '·');
        for (String spelling : List.of(plain, dotted, unicode, onTheLine(unicode))) {
            for (String each : List.of(spelling, spelling.replace("^", ""), spelling.replace('-', '−'), bracketed(spelling))) {
                spellings.putIfAbsent(each, set);
            }
        }
    }

    /** {@code Fe^3+} as {@code Fe(3+)}. */
    private static String bracketed(String plain) {
        int caret = plain.indexOf('^');
        return caret < 0 ? plain : plain.substring(0, caret) + "(" + plain.substring(caret + 1) + ")";
    }

    /** Subscripts brought up to the line, charges left above it: {@code SO4²⁻}. */
    private static String onTheLine(String unicode) {
        StringBuilder line = new StringBuilder();
        unicode.chars().forEach(c -> line.append(BELOW.indexOf(c) >= 0 ? LINE.charAt(BELOW.indexOf(c)) : (char) c));
        return line.toString();
    }

    List<Text> of(String text) {
        List<Text> set = new ArrayList<>();
        int from = 0;
        int at = 0;
        while (at < text.length()) {
            Optional<String> found = startsWord(text, at) ? formulaAt(text, at) : Optional.empty();
            if (found.isPresent()) {
                Typeset.join(set, amountsKeptTogether(text.substring(from, at)));
                Text.Chemical formula = spellings.get(found.get());
                at += found.get().length();
                String state = stateAt(text, at);
                set.add(state.isEmpty() ? formula : withState(formula, state));
                at += state.length();
                from = at;
            } else {
                at++;
            }
        }
        Typeset.join(set, amountsKeptTogether(text.substring(from)));
        return List.copyOf(set);
    }

    /** No line breaks between a number and its unit, and the unit's power stands above the line. The number stays as typed. */
    private static String amountsKeptTogether(String text) {
        return AMOUNT.matcher(text).replaceAll(found -> Matcher.quoteReplacement(Units.symbol(found.group(1)).isPresent()
                ? Numbers.NARROW_SPACE + Typeset.unit(found.group(1)) : found.group()));
    }

    private Optional<String> formulaAt(String text, int at) {
        char first = text.charAt(at);
        if (!(first >= 'A' && first <= 'Z' || first == '[' || first == '(' || first == 'e')) {
            return Optional.empty();
        }
        for (int length = Math.min(longest, text.length() - at); length > 0; length--) {
            String candidate = text.substring(at, at + length);
            if (spellings.containsKey(candidate) && endsWord(text, at + length)) {
                return Optional.of(candidate);
            }
        }
        return Optional.empty();
    }

    private static boolean startsWord(String text, int at) {
        if (at == 0) {
            return true;
        }
        char before = text.charAt(at - 1);
        boolean joined = Character.isLetterOrDigit(before) || BELOW.indexOf(before) >= 0 || ABOVE.indexOf(before) >= 0
                || before == ')' || before == ']';
        boolean dot = (before == '.' || before == '·') && at > 1
                && (Character.isLetterOrDigit(text.charAt(at - 2)) || text.charAt(at - 2) == ')');
        return !joined && !dot;
    }

    private static boolean endsWord(String text, int at) {
        if (at >= text.length()) {
            return true;
        }
        char after = text.charAt(at);
        char next = at + 1 < text.length() ? text.charAt(at + 1) : ' ';
        if (Character.isLetterOrDigit(after) || BELOW.indexOf(after) >= 0 || ABOVE.indexOf(after) >= 0 || after == '^'
                || after == '+' || after == '[') {
            return false;
        }
        if (after == '(') {
            return !stateAt(text, at).isEmpty();
        }
        if (after == '-' || after == '−') {
            return Character.isLetter(next);
        }
        return after != '.' && after != '·' || !Character.isLetterOrDigit(next);
    }

    private static String stateAt(String text, int at) {
        for (State state : State.values()) {
            String letters = "(" + state.letters() + ")";
            if (text.startsWith(letters, at)) {
                return letters;
            }
        }
        return "";
    }

    private static Text.Chemical withState(Text.Chemical formula, String state) {
        List<Text> pieces = new ArrayList<>(formula.pieces());
        Typeset.join(pieces, state);
        return new Text.Chemical(pieces, formula.spoken());
    }
}
