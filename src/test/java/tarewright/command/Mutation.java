package tarewright.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Spoils a text by chance as a hand, an editor or a bad copy does: characters, tokens, whole blocks, fields and units. */
final class Mutation {
    private static final String SCRAPS = "{}()[]`|*_#-+>=^/\\:;,.·→⇌±%°\"'<&\0\t\r\n \u00a0\u2212\ud83e\u0301\ufeff09";
    private static final List<String> UNITS = List.of("mL", "L", "g", "kg", "mg", "mol/L", "M", "mol", "%", "% w/w", "vol",
            "°C", "K", "kPa", "atm", "min",
            "cm3", "g/mL", "g/L", "ppm", "J/g", "mol/L/s", "µL", "m3");
    private static final List<String> WORDS = List.of("0", "-1", "1e999", "99999999999999999999", "0.000000000000000000001",
            "all", "none", "per group",
            "NaOH", "H2O", "e-", "(aq)", "->", "value:", "```", "```solid x", "---", "unknown", "volume of", "{mass of x}", "limiting:");

    private final SplittableRandom random;
    private final List<String> others;

    /** @param others texts to take blocks and lines from */
    Mutation(SplittableRandom random, List<String> others) {
        this.random = random;
        this.others = List.copyOf(others);
    }

    /** One to four changes. */
    String of(String text) {
        String changed = text;
        for (int times = 1 + random.nextInt(4); times > 0; times--) {
            changed = once(changed);
        }
        return changed;
    }

    private String once(String text) {
        return switch (random.nextInt(9)) {
            case 0, 1 -> character(text);
            case 2 -> token(text, "[\\w.]+", pick(WORDS));
            case 3 -> token(text, "\\d[\\d.]*", pick(WORDS));
            case 4 -> token(text, "(?<=\\d )[^\\s;,|`]+", pick(UNITS));
            case 5 -> pieces(text, "(?<=\n)");
            case 6 -> pieces(text, "(?<=\n\n)");
            case 7 -> token(text, "(?m)^[a-z ]+(?=:)", token(pick(others), "(?m)^[a-z ]+:", "").lines().findFirst().orElse(""));
            default -> text.substring(0, random.nextInt(text.length() + 1));
        };
    }

    private String character(String text) {
        int at = random.nextInt(text.length() + 1);
        int end = Math.min(text.length(), at + random.nextInt(3));
        char scrap = random.nextInt(8) == 0 ? (char) random.nextInt(0x10000) : SCRAPS.charAt(random.nextInt(SCRAPS.length()));
        return text.substring(0, at) + (random.nextInt(3) == 0 ? "" : scrap) + text.substring(end);
    }

    private String token(String text, String pattern, String instead) {
        var places = java.util.regex.Pattern.compile(pattern).matcher(text).results().toList();
        if (places.isEmpty()) {
            return text + instead;
        }
        var place = places.get(random.nextInt(places.size()));
        return text.substring(0, place.start()) + instead + text.substring(place.end());
    }

    /** A line or a block is lost, doubled, moved, or comes from another procedure. */
    private String pieces(String text, String between) {
        List<String> pieces = new ArrayList<>(Arrays.asList(text.split(between)));
        int at = random.nextInt(pieces.size());
        switch (random.nextInt(4)) {
            case 0 -> pieces.remove(at);
            case 1 -> pieces.add(at, pieces.get(at));
            case 2 -> pieces.add(random.nextInt(pieces.size()), pieces.remove(at));
            default -> pieces.add(at, pick(Arrays.asList(pick(others).split(between))));
        }
        return String.join("", pieces);
    }

    private String pick(List<String> from) {
        return from.get(random.nextInt(from.size()));
    }
}
