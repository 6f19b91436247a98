package tarewright.quantity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tarewright.quantity.NearUnit.Reason;

/** What an unknown unit may stand for: known mistakes by rule, then letters in another case, then likeness of spelling. */
final class NearUnits {
    private static final int MOST = 5;
    private static final int LONGEST = 20;

    /** Abbreviations and names in use, in lower case without full stops. Common practice, no source. */
    private static final Map<String, NearUnit> KNOWN = Map.ofEntries(
            known("l", "L", Reason.LETTER_CASE), known("ml", "mL", Reason.LETTER_CASE),
            known("gm", "g", Reason.ABBREVIATION), known("gms", "g", Reason.ABBREVIATION),
            known("gr", "g", Reason.ABBREVIATION), known("grs", "g", Reason.ABBREVIATION),
            known("gg", "g", Reason.SPELLING), known("kgs", "kg", Reason.ABBREVIATION),
            known("gram", "g", Reason.NAME), known("grams", "g", Reason.NAME), known("gramme", "g", Reason.NAME),
            known("grammes", "g", Reason.NAME), known("milligram", "mg", Reason.NAME), known("milligrams", "mg", Reason.NAME),
            known("kilogram", "kg", Reason.NAME), known("kilograms", "kg", Reason.NAME),
            known("mcg", "µg", Reason.ABBREVIATION), known("mcl", "µL", Reason.ABBREVIATION),
            known("litre", "L", Reason.NAME), known("litres", "L", Reason.NAME), known("liter", "L", Reason.NAME),
            known("liters", "L", Reason.NAME), known("ltr", "L", Reason.ABBREVIATION),
            known("millilitre", "mL", Reason.NAME), known("millilitres", "mL", Reason.NAME),
            known("milliliter", "mL", Reason.NAME), known("milliliters", "mL", Reason.NAME),
            known("mls", "mL", Reason.ABBREVIATION), known("cc", "cm³", Reason.ABBREVIATION),
            known("ccm", "cm³", Reason.ABBREVIATION), known("lambda", "µL", Reason.NAME),
            known("sec", "s", Reason.ABBREVIATION), known("secs", "s", Reason.ABBREVIATION),
            known("second", "s", Reason.NAME), known("seconds", "s", Reason.NAME),
            known("mins", "min", Reason.ABBREVIATION), known("minute", "min", Reason.NAME),
            known("minutes", "min", Reason.NAME), known("hr", "h", Reason.ABBREVIATION),
            known("hrs", "h", Reason.ABBREVIATION), known("hour", "h", Reason.NAME), known("hours", "h", Reason.NAME),
            known("day", "d", Reason.NAME), known("days", "d", Reason.NAME),
            known("c", "°C", Reason.ABBREVIATION), known("°", "°C", Reason.ABBREVIATION),
            known("deg", "°C", Reason.ABBREVIATION), known("degrees", "°C", Reason.NAME),
            known("deg c", "°C", Reason.ABBREVIATION), known("degrees c", "°C", Reason.NAME),
            known("° c", "°C", Reason.SPELLING), known("oc", "°C", Reason.SPELLING),
            known("celsius", "°C", Reason.NAME), known("centigrade", "°C", Reason.NAME),
            known("f", "°F", Reason.ABBREVIATION), known("fahrenheit", "°F", Reason.NAME),
            known("°k", "K", Reason.SPELLING), known("degk", "K", Reason.SPELLING), known("kelvin", "K", Reason.NAME),
            known("mole", "mol", Reason.NAME), known("moles", "mol", Reason.NAME), known("mols", "mol", Reason.ABBREVIATION),
            known("millimole", "mmol", Reason.NAME), known("millimoles", "mmol", Reason.NAME),
            known("molar", "mol/L", Reason.NAME), known("mol/l", "mol/L", Reason.LETTER_CASE),
            known("percent", "%", Reason.NAME), known("per cent", "%", Reason.NAME), known("pct", "%", Reason.ABBREVIATION),
            known("metre", "m", Reason.NAME), known("meter", "m", Reason.NAME), known("metres", "m", Reason.NAME),
            known("meters", "m", Reason.NAME), known("centimetre", "cm", Reason.NAME),
            known("centimetres", "cm", Reason.NAME), known("micron", "µm", Reason.NAME),
            known("microns", "µm", Reason.NAME), known("inch", "in", Reason.NAME), known("inches", "in", Reason.NAME),
            known("foot", "ft", Reason.NAME), known("feet", "ft", Reason.NAME), known("lbs", "lb", Reason.ABBREVIATION),
            known("gtt", "drops", Reason.ABBREVIATION), known("drps", "drops", Reason.SPELLING),
            known("atmosphere", "atm", Reason.NAME), known("atmospheres", "atm", Reason.NAME),
            known("joule", "J", Reason.NAME), known("joules", "J", Reason.NAME), known("kilojoule", "kJ", Reason.NAME),
            known("kilojoules", "kJ", Reason.NAME), known("calorie", "cal", Reason.NAME),
            known("calories", "cal", Reason.NAME));

    /** The units that a message offers for a kind; the table's own order otherwise. */
    private static final Map<Dimension, List<String>> USUAL = Map.of(
            Dimension.MASS, List.of("g", "mg", "kg"),
            Dimension.VOLUME, List.of("mL", "L", "cm³", "dm³"),
            Dimension.LENGTH, List.of("cm", "mm", "m"),
            Dimension.TIME, List.of("min", "s", "h"),
            Dimension.TEMPERATURE, List.of("°C", "K"),
            Dimension.AMOUNT, List.of("mol", "mmol"),
            Dimension.CONCENTRATION, List.of("mol/L", "mmol/L"),
            Dimension.DENSITY, List.of("g/mL", "g/cm³", "g/L", "kg/m³"),
            Dimension.MOLAR_MASS, List.of("g/mol"),
            Dimension.LINEAR_DENSITY, List.of("g/m"));

    private NearUnits() {
    }

    static List<String> usual(Dimension wanted) {
        List<String> known = USUAL.get(wanted);
        return known != null ? known : UnitTable.symbols().values().stream().map(UnitTable.Entry::unit)
                .filter(unit -> unit.dimension().equals(wanted)).map(Unit::symbol).limit(MOST).toList();
    }

    static List<NearUnit> find(Optional<Dimension> wanted, String typed) {
        if (typed.isEmpty() || typed.length() > LONGEST) {
            return List.of();
        }
        List<NearUnit> found = new ArrayList<>();
        String folded = fold(typed);
        if (typed.equals("Ml")) {
            found.add(new NearUnit("mL", Reason.MILLI_NOT_MEGA));
        }
        sameLetters(typed, found);
        NearUnit known = KNOWN.get(folded);
        if (known != null) {
            add(found, known);
        }
        if (found.isEmpty()) {
            alike(folded, wanted, found);
        }
        return found.stream().filter(near -> wanted.isEmpty() || fits(near.symbol(), wanted.get())).limit(MOST).toList();
    }

    static boolean isKnownMistake(String typed) {
        return KNOWN.containsKey(fold(typed));
    }

    private static boolean fits(String symbol, Dimension wanted) {
        return UnitTable.spellings().get(symbol).unit().dimension().equals(wanted);
    }

    /** Units with the same letters in another case. Where there is more than one, or one with a prefix M that m would undo, both. */
    private static void sameLetters(String typed, List<NearUnit> found) {
        List<String> same = UnitTable.symbols().keySet().stream()
                .filter(symbol -> fold(symbol).equals(fold(typed)) && !symbol.equals(typed)).toList();
        for (String symbol : same) {
            add(found, new NearUnit(symbol, same.size() > 1 ? Reason.CASE_DECIDES : Reason.LETTER_CASE));
        }
        if (typed.equals("Mg")) {
            // Megagram is a tonne: both are offered, since nothing in the text says which.
            found.clear();
            found.add(new NearUnit("mg", Reason.CASE_DECIDES));
            found.add(new NearUnit("t", Reason.CASE_DECIDES));
        }
    }

    private static void alike(String folded, Optional<Dimension> wanted, List<NearUnit> found) {
        if (folded.length() < 2) {
            return;
        }
        UnitTable.symbols().values().stream().map(UnitTable.Entry::unit)
                .filter(unit -> wanted.isEmpty() || unit.dimension().equals(wanted.get()))
                .map(Unit::symbol)
                .filter(symbol -> symbol.length() >= 2 && distance(fold(symbol), folded) <= 1)
                .sorted(Comparator.comparingInt(symbol -> distance(fold(symbol), folded)))
                .forEach(symbol -> add(found, new NearUnit(symbol, Reason.SPELLING)));
    }

    private static void add(List<NearUnit> found, NearUnit near) {
        if (found.stream().noneMatch(other -> other.symbol().equals(near.symbol()))) {
            found.add(near);
        }
    }

    private static String fold(String text) {
        String plain = text.strip().replace(".", "").replace('\u00A0', ' ').replace('\u03BC', '\u00B5');
        return plain.toLowerCase(Locale.ROOT);
    }

    /** Insertions, deletions, substitutions and exchanges of neighbours between two short texts. */
    private static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                cost[i][j] = Math.min(cost[i - 1][j - 1] + change, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        return cost[a.length()][b.length()];
    }

    private static Map.Entry<String, NearUnit> known(String text, String symbol, Reason reason) {
        return Map.entry(text, new NearUnit(symbol, reason));
    }
}
