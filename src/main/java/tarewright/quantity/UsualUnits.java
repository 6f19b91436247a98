package tarewright.quantity;

import java.util.Map;

/** The unit in which a laboratory would show a figure that nobody typed a unit for. */
public final class UsualUnits {
    private static final Unit GRAM = unit("g");
    private static final Unit KELVIN = unit("K");
    private static final Unit KILOPASCAL = unit("kPa");

    /** Kinds with one usual unit at any size. */
    private static final Map<Dimension, Unit> FIXED = Map.ofEntries(
            Map.entry(Dimension.NONE, Unit.ONE),
            Map.entry(Dimension.MASS, GRAM),
            Map.entry(Dimension.TEMPERATURE, KELVIN),
            Map.entry(Dimension.PRESSURE, KILOPASCAL),
            Map.entry(Dimension.AREA, unit("cm²")),
            Map.entry(Dimension.CONCENTRATION, unit("mol/L")),
            Map.entry(Dimension.MOLAR_MASS, unit("g/mol")),
            Map.entry(Dimension.MOLAR_VOLUME, unit("L/mol")),
            Map.entry(Dimension.LINEAR_DENSITY, unit("g/m")),
            Map.entry(Dimension.AMOUNT.over(Dimension.MASS), unit("mol/kg")),
            Map.entry(Dimension.ENERGY.over(Dimension.AMOUNT), unit("kJ/mol")),
            Map.entry(Dimension.ENERGY.over(Dimension.MASS), unit("kJ/g")),
            Map.entry(Dimension.ENERGY.over(Dimension.TEMPERATURE), unit("J/K")),
            Map.entry(Dimension.ENERGY.over(Dimension.MASS).over(Dimension.TEMPERATURE), unit("J/(g K)")),
            Map.entry(Dimension.ENERGY.over(Dimension.AMOUNT).over(Dimension.TEMPERATURE), unit("J/(mol K)")),
            Map.entry(Dimension.ENERGY.over(Dimension.TIME), unit("W")),
            Map.entry(Dimension.CONCENTRATION.over(Dimension.TIME), unit("mol/(L s)")),
            Map.entry(Dimension.VOLUME.over(Dimension.TIME), unit("mL/s")),
            Map.entry(Dimension.MASS.over(Dimension.TIME), unit("g/s")),
            Map.entry(Dimension.AMOUNT.over(Dimension.TIME), unit("mol/s")));

    /** Kinds shown in a smaller unit below a limit. */
    private static final Map<Dimension, Pair> BY_SIZE = Map.of(
            Dimension.VOLUME, new Pair(unit("mL"), unit("L"), 1e-3),
            Dimension.AMOUNT, new Pair(unit("mmol"), unit("mol"), 0.1),
            // A liquid or a solid has a density in g/mL; a gas, or a solute in its solution, is less than a tenth of that.
            Dimension.DENSITY, new Pair(unit("g/L"), unit("g/mL"), 100),
            Dimension.LENGTH, new Pair(unit("cm"), unit("m"), 1),
            Dimension.TIME, new Pair(unit("s"), unit("min"), 120),
            Dimension.ENERGY, new Pair(unit("J"), unit("kJ"), 1000));

    private UsualUnits() {
    }

    private record Pair(Unit small, Unit large, double from) {
    }

    /**
     * The usual unit for a figure; the coherent SI unit for a kind that has none of its own. A percentage is never chosen, nor is
     * a degree Celsius: whether a figure in kelvin is a temperature or a difference cannot be told from its dimension.
     *
     * @param si the figure in the coherent SI unit, whose size may decide; its sign does not matter
     */
    public static Unit of(Dimension dimension, double si) {
        Unit fixed = FIXED.get(dimension);
        if (fixed != null) {
            return fixed;
        }
        Pair pair = BY_SIZE.get(dimension);
        if (pair != null) {
            return Math.abs(si) < pair.from() ? pair.small() : pair.large();
        }
        return new Unit(Kinds.siUnit(dimension), dimension, 1);
    }

    private static Unit unit(String symbol) {
        if (Units.parse(symbol) instanceof UnitResult.Ok ok) {
            return ok.unit();
        }
        throw new IllegalStateException("no unit " + symbol);
    }
}
