package tarewright.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/**
 * A unit within a compound of units, to a power.
 *
 * @param symbol without its power: {@code cm} of {@code cm³}
 * @param power below zero if it stands under the stroke
 * @param struck whether it cancels against the same unit in the line
 */
public record UnitPart(String symbol, int power, boolean struck) {
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /** The parts of a unit as it is printed; one part for what is no plain compound, none for the plain number. */
    static List<UnitPart> of(Unit unit) {
        String symbol = unit.symbol();
        int stroke = symbol.indexOf('/');
        boolean whole = stroke < 0 && (Units.symbol(symbol).isPresent() && !endsRaised(symbol) || symbol.startsWith("°"));
        String below = stroke < 0 ? "" : symbol.substring(stroke + 1).replaceAll("[()]", "");
        if (symbol.isEmpty()) {
            return List.of();
        }
        if (whole || !below.isEmpty() && Character.isDigit(below.charAt(0))) {
            return List.of(new UnitPart(symbol, 1, false));
        }
        List<UnitPart> parts = new ArrayList<>();
        String above = stroke < 0 ? symbol : symbol.substring(0, stroke);
        add(parts, above.equals("1") ? "" : above, 1);
        add(parts, below, -1);
        return parts;
    }

    /** {@code J/(mol K)}, struck parts included. */
    static String plain(List<UnitPart> parts) {
        String above = joined(parts, 1);
        String below = joined(parts, -1);
        if (below.isEmpty()) {
            return above;
        }
        long under = parts.stream().filter(p -> p.power < 0).count();
        return (above.isEmpty() ? "1" : above) + "/" + (under > 1 ? "(" + below + ")" : below);
    }

    UnitPart cancelled() {
        return new UnitPart(symbol, power, true);
    }

    private static String joined(List<UnitPart> parts, int sign) {
        return parts.stream().filter(p -> Integer.signum(p.power) == sign).map(UnitPart::raised).collect(Collectors.joining(" "));
    }

    private String raised() {
        int size = Math.abs(power);
        return size == 1 ? symbol : symbol + SUPERSCRIPTS.charAt(size);
    }

    private static void add(List<UnitPart> parts, String units, int sign) {
        for (String unit : units.isEmpty() ? new String[0] : units.split(" ")) {
            int last = unit.length() - 1;
            int power = endsRaised(unit) ? SUPERSCRIPTS.indexOf(unit.charAt(last)) : 1;
            parts.add(new UnitPart(power == 1 ? unit : unit.substring(0, last), sign * power, false));
        }
    }

    private static boolean endsRaised(String unit) {
        return !unit.isEmpty() && SUPERSCRIPTS.indexOf(unit.charAt(unit.length() - 1)) >= 0;
    }
}
