package tarewright.quantity;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tarewright.quantity.NearUnit.Reason;

/** Abbreviations and names of units that are in use in place of their symbols. Common practice, no source. */
final class KnownMistakes {
    private static final Map<String, NearUnit> ALL = all();

    private KnownMistakes() {
    }

    /** The unit that is meant by a spelling that is not in the table, whatever its case and without regard to full stops. */
    static Optional<NearUnit> find(String typed) {
        return Optional.ofNullable(ALL.get(fold(typed)));
    }

    /** In small letters, with plain spaces and one micro sign, without full stops. */
    static String fold(String text) {
        return Blanks.strip(text).replace(".", "").replace('\u00A0', ' ').replace('\u202F', ' ').replace('\u03BC', '\u00B5')
                .toLowerCase(Locale.ROOT);
    }

    private static Map<String, NearUnit> all() {
        Map<String, NearUnit> all = new HashMap<>();
        put(all, Reason.ABBREVIATION, "g", "gm gms gr grs");
        put(all, Reason.ABBREVIATION, "kg", "kgs kilo kilos");
        put(all, Reason.ABBREVIATION, "mg", "mgs mgm");
        put(all, Reason.ABBREVIATION, "µg", "mcg");
        put(all, Reason.ABBREVIATION, "µL", "mcl lambda");
        put(all, Reason.ABBREVIATION, "L", "ltr ltrs lt");
        put(all, Reason.ABBREVIATION, "mL", "mls");
        put(all, Reason.ABBREVIATION, "cm³", "cc ccm ccs");
        put(all, Reason.ABBREVIATION, "drops", "gtt drp drps");
        put(all, Reason.ABBREVIATION, "s", "sec secs");
        put(all, Reason.ABBREVIATION, "min", "mins");
        put(all, Reason.ABBREVIATION, "h", "hr hrs");
        put(all, Reason.ABBREVIATION, "°C", "c deg ° oc");
        put(all, Reason.ABBREVIATION, "°F", "f");
        put(all, Reason.ABBREVIATION, "mol", "mols");
        put(all, Reason.ABBREVIATION, "mmol", "mmols");
        put(all, Reason.ABBREVIATION, "lb", "lbs");
        put(all, Reason.ABBREVIATION, "%", "pct");
        put(all, Reason.SPELLING, "g", "gg");
        put(all, Reason.SPELLING, "K", "°k degk");
        put(all, Reason.NAME, "g", "gram grams gramme grammes");
        put(all, Reason.NAME, "mg", "milligram milligrams");
        put(all, Reason.NAME, "kg", "kilogram kilograms");
        put(all, Reason.NAME, "t", "tonne tonnes");
        put(all, Reason.NAME, "L", "litre litres liter liters");
        put(all, Reason.NAME, "mL", "millilitre millilitres milliliter milliliters");
        put(all, Reason.NAME, "µL", "microlitre microlitres microliter microliters");
        put(all, Reason.NAME, "m", "metre metres meter meters");
        put(all, Reason.NAME, "cm", "centimetre centimetres centimeter centimeters");
        put(all, Reason.NAME, "mm", "millimetre millimetres millimeter millimeters");
        put(all, Reason.NAME, "µm", "micron microns micrometre micrometres");
        put(all, Reason.NAME, "in", "inch inches");
        put(all, Reason.NAME, "ft", "foot feet");
        put(all, Reason.NAME, "s", "second seconds");
        put(all, Reason.NAME, "min", "minute minutes");
        put(all, Reason.NAME, "h", "hour hours");
        put(all, Reason.NAME, "d", "day days");
        put(all, Reason.NAME, "°C", "celsius centigrade degrees degree");
        put(all, Reason.NAME, "°F", "fahrenheit");
        put(all, Reason.NAME, "K", "kelvin kelvins");
        put(all, Reason.NAME, "mol", "mole moles");
        put(all, Reason.NAME, "mmol", "millimole millimoles");
        put(all, Reason.NAME, "mol/L", "molar");
        put(all, Reason.NAME, "mmol/L", "millimolar");
        put(all, Reason.NAME, "atm", "atmosphere atmospheres");
        put(all, Reason.NAME, "J", "joule joules");
        put(all, Reason.NAME, "kJ", "kilojoule kilojoules");
        put(all, Reason.NAME, "cal", "calorie calories");
        put(all, Reason.NAME, "%", "percent");
        put(all, Reason.NAME, "drops", "droplet droplets");
        all.put("deg c", new NearUnit("°C", Reason.ABBREVIATION));
        all.put("degrees c", new NearUnit("°C", Reason.NAME));
        all.put("degrees celsius", new NearUnit("°C", Reason.NAME));
        all.put("° c", new NearUnit("°C", Reason.SPELLING));
        all.put("deg f", new NearUnit("°F", Reason.ABBREVIATION));
        all.put("° f", new NearUnit("°F", Reason.SPELLING));
        all.put("mm hg", new NearUnit("mmHg", Reason.SPELLING));
        all.put("in hg", new NearUnit("inHg", Reason.SPELLING));
        all.put("per cent", new NearUnit("%", Reason.NAME));
        return Map.copyOf(all);
    }

    private static void put(Map<String, NearUnit> all, Reason reason, String symbol, String spellings) {
        for (String spelling : spellings.split(" ")) {
            all.put(spelling, new NearUnit(symbol, reason));
        }
    }
}
