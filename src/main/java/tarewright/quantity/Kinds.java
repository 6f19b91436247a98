package tarewright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What a dimension measures, by name: a key for the words, which is the English term of the IUPAC Green Book where it has one.
 */
public final class Kinds {
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final Map<Dimension, String> NAMES = Map.ofEntries(
            Map.entry(Dimension.NONE, "number"),
            Map.entry(Dimension.LENGTH, "length"),
            Map.entry(Dimension.AREA, "area"),
            Map.entry(Dimension.VOLUME, "volume"),
            Map.entry(Dimension.MASS, "mass"),
            Map.entry(Dimension.TIME, "time"),
            Map.entry(Dimension.TEMPERATURE, "temperature"),
            Map.entry(Dimension.AMOUNT, "amount of substance"),
            Map.entry(Dimension.PRESSURE, "pressure"),
            Map.entry(Dimension.ENERGY, "energy"),
            Map.entry(Dimension.ENERGY.over(Dimension.TIME), "power"),
            Map.entry(Dimension.ENERGY.over(Dimension.AMOUNT), "molar energy"),
            Map.entry(Dimension.ENERGY.over(Dimension.TEMPERATURE), "heat capacity"),
            Map.entry(Dimension.ENERGY.over(Dimension.MASS).over(Dimension.TEMPERATURE), "specific heat capacity"),
            Map.entry(Dimension.CONCENTRATION, "concentration"),
            Map.entry(Dimension.AMOUNT.over(Dimension.MASS), "molality"),
            Map.entry(Dimension.DENSITY, "density"),
            Map.entry(Dimension.LINEAR_DENSITY, "mass per length"),
            Map.entry(Dimension.MOLAR_MASS, "molar mass"),
            Map.entry(Dimension.MOLAR_VOLUME, "molar volume"));

    private Kinds() {
    }

    /** The name of the kind; for a dimension without a name of its own, its coherent SI unit, such as {@code m/s}. */
    public static String name(Dimension dimension) {
        String name = NAMES.get(dimension);
        return name != null ? name : siUnit(dimension);
    }

    /** The coherent SI unit in base units: {@code kg/(m s²)}; empty for a plain number. */
    public static String siUnit(Dimension dimension) {
        List<String> above = new ArrayList<>();
        List<String> below = new ArrayList<>();
        base("kg", dimension.mass(), above, below);
        base("m", dimension.length(), above, below);
        base("mol", dimension.amount(), above, below);
        base("K", dimension.temperature(), above, below);
        base("s", dimension.time(), above, below);
        if (below.isEmpty()) {
            return String.join(" ", above);
        }
        String head = above.isEmpty() ? "1" : String.join(" ", above);
        return head + "/" + (below.size() == 1 ? below.get(0) : "(" + String.join(" ", below) + ")");
    }

    private static void base(String symbol, int power, List<String> above, List<String> below) {
        if (power != 0) {
            StringBuilder raised = new StringBuilder(symbol);
            if (Math.abs(power) != 1) {
                Integer.toString(Math.abs(power)).chars().forEach(digit -> raised.append(SUPERSCRIPTS.charAt(digit - '0')));
            }
            (power > 0 ? above : below).add(raised.toString());
        }
    }
}
