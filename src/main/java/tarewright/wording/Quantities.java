package tarewright.wording;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.derivation.Symbol;

/** The names of the quantities that letters stand for: {@code n} is the amount of substance. */
public final class Quantities {
    private final MessageFile names;

    private Quantities(MessageFile names) {
        this.names = names;
    }

    /** @param language BCP 47 */
    public static Quantities in(String language) {
        return new Quantities(MessageFile.of("quantities", language));
    }

    /** What a letter stands for; empty for words, which stand for themselves. */
    public Optional<String> name(String letter) {
        return names.find("letter." + letter);
    }

    private static final List<Pattern> COMPOSED = List.of(Pattern.compile("(?<key>answer) (?<a>.+)(?<b>)"),
            Pattern.compile("(?<key>mean) of (?<a>.+)(?<b>)"), Pattern.compile("(?<key>ratio) of (?<a>.+) to (?<b>.+)"));

    /** A symbol whose words are our own, in this language; what the author named stays as it is. */
    public Symbol said(Symbol symbol) {
        String of = symbol.kind() == Symbol.Kind.NAME ? names.find("of." + key(symbol.of())).orElse(symbol.of()) : symbol.of();
        return new Symbol(words(symbol.letter()), of, symbol.kind());
    }

    private String words(String english) {
        for (Pattern pattern : COMPOSED) {
            Matcher matcher = pattern.matcher(english);
            if (matcher.matches()) {
                return names.get("composed." + matcher.group("key")).replace("{a}", matcher.group("a")).replace("{b}", matcher.group("b"));
            }
        }
        return names.find("words." + key(english)).orElse(english);
    }

    private static String key(String english) {
        return english.replace(' ', '-');
    }

    /** The words for a relation that is not a product or a sum; its lasting name where there are none. */
    String relation(String name) {
        return names.find("relation." + key(name)).orElse(name);
    }

    String smallestOf() {
        return names.get("smallest-of");
    }

    String largestOf() {
        return names.get("largest-of");
    }

    /** What stands between a relation and the values it is taken at. */
    String at() {
        return names.get("at");
    }
}
